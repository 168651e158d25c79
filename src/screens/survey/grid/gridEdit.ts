import type { Edit } from '../../../job/edit';
import type { Job } from '../../../job/schema';

/** The lists a grid can change. Options change where a removed cable was pinned in them. */
const LISTS = ['circuits', 'homeRuns', 'options'] as const;

/** What leads from one job to the other, as one named step; null where nothing changed. */
export const gridEdit = (before: Job, after: Job, name: string): Edit | null => {
  const values = LISTS.filter((list) => before[list] !== after[list]).map((list) => ({
    path: `/${list}`,
    value: after[list],
  }));
  return values.length === 0 ? null : { edit: 'set values', name, values };
};
