import { applyEdit } from '../../job/applyEdit';
import type { Edit } from '../../job/edit';
import { useJob } from '../selected';
import { useActions } from '../session';

/** Carries an edit out; the reason where it cannot be, so that a field can keep what was typed and say why. */
export const useChange = (): ((edit: Edit) => string | null) => {
  const job = useJob();
  const { edit: carryOut } = useActions();
  return (edit) => {
    const tried = applyEdit(job, edit);
    if (!tried.ok) return tried.error.error.say;
    carryOut(edit);
    return null;
  };
};
