import { screenWords as say } from '../../words/en/screens';
import { useSelected } from '../selected';
import { CutList } from './CutList';

/** What is cut from which coil, and what is ordered. */
export const CloseoutSheet = () => {
  const selected = useSelected();
  return selected?.plan ? <CutList plan={selected.plan} at={selected.at} /> : <p>{say.notPlannedYet}</p>;
};
