import { surveyWords as say } from '../../../words/en/survey';
import { useJob } from '../../selected';
import { ChoiceField } from '../fields/ChoiceField';
import { CAN_WIDTH, newEnclosure, newOpening, OPENING_KINDS, type OpeningKind, openingWidth } from '../placing';
import { useSheet } from '../sheetState';
import { useAdd } from '../useAdd';
import { OnWallForm } from './OnWallForm';

/** A door, a window or a cased opening into a wall. */
export const OpeningPanel = () => {
  const job = useJob();
  const { now, set } = useSheet();
  const add = useAdd();
  return (
    <OnWallForm
      what={now.opening}
      width={openingWidth(now.opening)}
      onAdd={(on) => add('/site/openings', newOpening(job, now.opening, on))}
    >
      <ChoiceField
        spec={{ label: say.kind, unknown: false }}
        of={OPENING_KINDS.map((value) => ({ value, say: value }))}
        value={now.opening}
        onSet={(value) => {
          set({ opening: value as OpeningKind });
          return null;
        }}
      />
    </OnWallForm>
  );
};

/** An old panel onto a wall. */
export const PanelPanel = () => {
  const job = useJob();
  const add = useAdd();
  return (
    <OnWallForm
      what={say.one['/enclosures']}
      width={CAN_WIDTH}
      onAdd={(on) => add('/enclosures', newEnclosure(job, on))}
    />
  );
};
