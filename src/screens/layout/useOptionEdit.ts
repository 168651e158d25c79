import { applyEdit } from '../../job/applyEdit';
import type { Edit } from '../../job/edit';
import type { Job, Option } from '../../job/schema';
import { useJob } from '../selected';
import { useActions } from '../session';

/** JSON pointer of an option's key. */
export const optionPath = (job: Job, option: Option, key: string): string =>
  `/options/${job.options.findIndex((o) => o.id === option.id)}/${key}`;

/** Edits of the open job that a field can refuse: null when taken, else why not. */
export const useTryEdit = (): ((edit: Edit) => string | null) => {
  const job = useJob();
  const { edit } = useActions();
  return (change) => {
    const tried = applyEdit(job, change);
    if (!tried.ok) return tried.error.error.say;
    edit(change);
    return null;
  };
};
