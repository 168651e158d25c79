import { screenWords as say } from '../../words/en/screens';
import { PlanView } from '../drawing/PlanView';
import { AfterNotes } from '../SheetFrame';
import { useSelected } from '../selected';
import { HomeRuns } from './HomeRuns';

/** The selected option drawn, and the way of every home run in it. */
export const LayoutSheet = () => {
  const selected = useSelected();
  return (
    <>
      <PlanView />
      {selected?.plan && (
        <AfterNotes label={say.runsTitle}>
          <HomeRuns plan={selected.plan} at={selected.at} />
        </AfterNotes>
      )}
    </>
  );
};
