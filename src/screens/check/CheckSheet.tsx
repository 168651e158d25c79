import { screenWords as say } from '../../words/en/screens';
import { AfterNotes } from '../SheetFrame';
import { useSelected } from '../selected';
import { Checked } from './Checked';

/** What was checked and holds, what could not be told, what no rule looked at; findings stand in the right column. */
export const CheckSheet = () => {
  const selected = useSelected();
  return (
    <AfterNotes label={say.sheets.check}>
      {selected?.plan ? <Checked plan={selected.plan} at={selected.at} /> : say.notPlannedYet}
    </AfterNotes>
  );
};
