import type { Leg } from '../../facts/result';
import { SAME_PLACE_IN } from '../../geometry/polygon';
import type { Framing } from '../../job/schema';
import { framingAt } from '../../job/site';
import { COVERED_ON_WALL } from '../../standards/editionsCables';
import { type In, isKnown, type U } from '../../units/types';
import type { FactsInYear } from '../rule';
import { homeRunIds, laid } from './cableReading';

const INSIDE: readonly string[] = ['inside box', 'inside panel'];

/** Does a leg that goes up or down lie bare on a wall below the joists? Unknown where their underside was not measured. */
export interface Drop {
  readonly bare: U<boolean>;
  readonly framing: Framing | undefined;
}
export const dropsOf = ({ job }: FactsInYear, legs: readonly Leg[]): Drop[] =>
  legs
    .filter((leg) => Math.abs(leg.from[2] - leg.to[2]) > SAME_PLACE_IN && !INSIDE.includes(leg.by))
    .flatMap((leg): Drop[] => {
      if (COVERED_ON_WALL.includes(leg.by)) return [{ bare: false, framing: undefined }];
      const framing = framingAt(job.site, [leg.from[0], leg.from[1]]);
      const underside = framing?.underside ?? 'unknown';
      if (!isKnown(underside)) return [{ bare: 'unknown', framing }];
      // what only leaves a joist for the wall under it is no drop on the wall
      return Math.min(leg.from[2], leg.to[2]) < underside - SAME_PLACE_IN ? [{ bare: true, framing }] : [];
    });

const IN_WALL = 'stud bay';
const topOf = ({ from, to }: Leg): In => Math.max(from[2], to[2]);

/** Cables laid by this job that go from the joists down into a wall, each through its top plate. */
export const platesPassed = (facts: FactsInYear): number =>
  homeRunIds(facts).filter((id) => {
    const legs = laid(facts, id)?.legs ?? [];
    return legs.some(
      (leg, i) =>
        leg.by === IN_WALL &&
        [legs[i - 1], legs[i + 1]].some(
          (next) =>
            next !== undefined &&
            next.by !== IN_WALL &&
            !INSIDE.includes(next.by) &&
            topOf(next) > topOf(leg) + SAME_PLACE_IN,
        ),
    );
  }).length;
