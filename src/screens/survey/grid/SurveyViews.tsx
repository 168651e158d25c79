import { gridWords as say } from '../../../words/en/grid';
import parts from '../../parts/parts.module.css';
import { InViews } from '../../Slots';
import { goToSheet, useSheetPart } from '../../sheetHash';

/** The part of the address under which the survey shows its grid. */
export const CIRCUITS = 'circuits';
export const useShowsCircuits = (): boolean => useSheetPart() === CIRCUITS;

/** The two ways to look at a survey: the room drawn, and its circuits as rows. */
export const SurveyViews = () => {
  const circuits = useShowsCircuits();
  return (
    <InViews>
      <button type="button" className={parts.tool} aria-pressed={!circuits} onClick={() => goToSheet('survey')}>
        {say.roomView}
      </button>
      <button
        type="button"
        className={parts.tool}
        aria-pressed={circuits}
        onClick={() => goToSheet('survey', CIRCUITS)}
      >
        {say.circuitsView}
      </button>
    </InViews>
  );
};
