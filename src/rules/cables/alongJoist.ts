import type { Leg } from '../../facts/result';
import { SAME_PLACE_IN } from '../../geometry/polygon';
import { framingAt } from '../../job/site';
import { type In, isKnown } from '../../units/types';
import { sitePath } from '../reading';
import type { FactsInYear } from '../rule';

const ALONG = 'joist side';

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
