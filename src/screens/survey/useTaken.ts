import type { Pt3 } from '../../units/types';
import { surveyWords as say } from '../../words/en/survey';
import { useJob } from '../selected';
import { useActions } from '../session';
import type { Entry } from './placing';
import { part } from './ref';
import { type Taken, useSheet } from './sheetState';
import { LEAST, recordOf, twoEnds } from './taken';
import { useAdd } from './useAdd';

/** Taking points one after the other, by the pointer or typed, until they make a thing. */
export const useTaken = () => {
  const job = useJob();
  const { now, set } = useSheet();
  const { edit } = useActions();
  const add = useAdd();
  const { taken } = now;

  const finish = (made: Taken): void => {
    if (made.points.length < LEAST[made.what]) return;
    if (made.what === 'feeder') {
      const values = [
        { path: '/feeder/entersAt', value: made.points[0] },
        { path: '/feeder/path', value: made.points },
      ];
      const done = edit({ edit: 'set values', name: say.drawFeeder, values });
      if (done) set({ selected: part('/feeder'), tool: 'select', taken: null });
      return;
    }
    const found = recordOf(job, made, now.group);
    if (found) add(found.list, found.record);
  };
  return {
    taken,
    start: (what: Taken['what'], points: readonly Pt3[] = []) => set({ taken: { what, points }, selected: null }),
    take: (point: Pt3): void => {
      if (!taken) return;
      const more = { ...taken, points: [...taken.points, point] };
      if (twoEnds(taken.what) && more.points.length === 2) finish(more);
      else set({ taken: more });
    },
    back: () => taken && set({ taken: { ...taken, points: taken.points.slice(0, -1) } }),
    finish: () => taken && finish(taken),
    cancel: () => set({ taken: null }),
    /** The can and side the group being drawn comes out of. */
    comeOutOf: (group: { readonly enclosure: string; readonly entry: Entry }) => set({ group }),
  };
};
