import type { HoldPoint } from '../facts/result';
import type { Work } from '../facts/work';
import { timeWords as say } from '../words/en/time';

/** Inspections of a job that is moved: boxes and cables are seen before they are covered, and all of it at the end. */
const WITH_ROUGH_IN = 2;

/** Where work waits for somebody who must have seen it. Common practice, no source; the inspector's own order counts. */
export const holdPoints = (work: readonly Work[]): HoldPoint[] => {
  const count = (item: string): number =>
    work.filter((piece) => piece.item === item).reduce((all, { quantity }) => all + quantity, 0);
  const covers = count('patch') > 0;
  const rough = count('inspection') >= WITH_ROUGH_IN;
  return [
    ...(count('permit') > 0 ? [{ id: 'permit', when: 'before outage' as const, say: say.holds.permit }] : []),
    ...(rough || covers
      ? [{ id: 'rough-in', when: 'after' as const, say: covers ? say.holds.beforeDrywall : say.holds.roughIn }]
      : []),
    ...(count('utility pull') > 0 ? [{ id: 'release', when: 'outage' as const, say: say.holds.release }] : []),
    { id: 'final', when: 'after', say: say.holds.final },
  ];
};
