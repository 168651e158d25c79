import type { Leg } from '../../facts/result';
import { SAME_PLACE_IN } from '../../geometry/polygon';
import type { Framing } from '../../job/schema';
import { framingAt } from '../../job/site';
import { COVERED_ON_WALL } from '../../standards/editionsCables';
import { type In, isKnown, type U } from '../../units/types';
import { sitePath } from '../reading';
import type { FactsInYear } from '../rule';

const ALONG = 'joist side';
const INSIDE: readonly string[] = ['inside box', 'inside panel'];

/** A level leg lies along the joist; one that drops off it only crosses its edge. */
export const isAlong = (leg: Leg): boolean => leg.by === ALONG && Math.abs(leg.from[2] - leg.to[2]) <= SAME_PLACE_IN;

/** From a leg's middle line to the nearer nail edge of its joist, in; else the fields that were not measured. */
export const edgeOf = ({ job }: FactsInYear, { from, to }: Leg): In | readonly string[] => {
  const framing = framingAt(job.site, [from[0], from[1]]);
  if (!framing) return ['/site/framing'];
  const { underside, depth } = framing;
  if (!isKnown(underside) || !isKnown(depth))
    return (['underside', 'depth'] as const).flatMap((key) =>
      isKnown(framing[key]) ? [] : [sitePath(job, 'framing', framing.id, key)],
    );
  return Math.min(...[from, to].flatMap((p) => [p[2] - underside, underside + depth - p[2]]));
};

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
