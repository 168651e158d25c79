import type { AfciPenalty } from '../facts/routing';
import type { AfciDemand } from '../facts/ruling';
import type { UnitMills } from '../facts/work';
import type { Job } from '../job/schema';
import { type Breaker, breakerItem, breakersOf } from '../loads/breakers';

/** Hours kept for one added AFCI that trips on old wiring: only in houses from before this year (common practice, no source). */
export const OLD_WIRING_BEFORE = 1990;
export const isOldWiring = (job: Job): boolean =>
  job.house.yearBuilt === 'unknown' || job.house.yearBuilt < OLD_WIRING_BEFORE;

/** What the AFCI breaker adds to the price of one breaker, whole mills; 0 where it had AFCI anyway. */
const dearer = (job: Job, unit: UnitMills, breaker: Breaker): number => {
  const plain = breakerItem(breaker);
  const guarded = breakerItem({ ...breaker, afci: true });
  if (plain === null || guarded === null || breaker.afci) return 0;
  const trouble = isOldWiring(job) ? (unit('AFCI trouble') ?? 0) * breaker.circuits.length : 0;
  return Math.max(0, (unit(guarded) ?? 0) - (unit(plain) ?? 0)) + trouble;
};

/** What routing must pay for passing the AFCI length: one entry a breaker in scope, or not known to be out of it. */
export const afciPenalties = (job: Job, demands: readonly AfciDemand[], unit: UnitMills): AfciPenalty[] => {
  const breakers = breakersOf(job);
  return demands
    .filter((d) => d.inScope !== 'no')
    .map((d) => ({
      id: d.id,
      circuits: d.circuits.map((c) => c.id),
      homeRuns: d.homeRuns,
      limitIn: d.limitIn,
      mills: breakers
        .filter((b) => b.circuits.some((c) => d.circuits.some((x) => x.id === c.id)))
        .reduce((n, b) => n + dearer(job, unit, b), 0),
      atAnyLengthIfNewHomeRun: d.atAnyLengthIfNewHomeRun,
    }));
};
