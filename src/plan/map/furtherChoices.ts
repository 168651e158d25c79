import type { Job, Option } from '../../job/schema';
import { faceOf, wallFaces } from '../../job/site';
import type { In } from '../../units/types';
import { laidAt, type Spot } from './lookAt';
import { type Position, positionsOf } from './positions';

/** Tops of the can that are tried beside the option's own, above the floor. Common practice, no source: 5 to 6-1/2 ft. */
const TOPS_IN: readonly In[] = [60, 66, 72, 78];
const SAME = 1e-6;

/** Other heights at a place, and the panel turned upside down there. */
export const furtherSpots = (option: Option, spot: Spot): Spot[] => {
  const { height } = option.enclosure.size;
  const bottoms = TOPS_IN.map((top) => top - height).filter((b) => b >= 0 && Math.abs(b - spot.on.bottom) > SAME);
  return [
    ...bottoms.map((bottom): Spot => ({ ...spot, on: { ...spot.on, bottom } })),
    { ...spot, upright: !spot.upright },
  ];
};

/** What stands at a spot of another height, in a word. */
export const whyAt = (job: Job, option: Option, spot: Spot): Position['why'] => {
  const laid = laidAt(job, option, spot);
  if (!faceOf(wallFaces(job.site, 'after'), spot.on)) return null;
  const near = positionsOf(laid.job, laid.option).filter(
    (p) => p.on.wall === spot.on.wall && p.on.face === spot.on.face,
  );
  // an end of a clear stretch at one height may lie inside or outside of one at another
  const left = near.filter((p) => p.on.left <= spot.on.left + SAME).at(-1);
  const right = near.find((p) => p.on.left >= spot.on.left - SAME);
  return left?.why === null && right?.why === null ? null : (left?.why ?? right?.why ?? null);
};
