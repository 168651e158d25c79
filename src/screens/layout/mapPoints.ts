import { MAP_BAND, PLAN_MARK_IN } from '../../drawings/drawMap';
import { ownHeight } from '../../drawings/mapModel';
import { alongOut, type Unrolled, wallOf } from '../../drawings/unroll';
import { OUTLINE_WALL_IN } from '../../drawings/walls';
import type { Place } from '../../facts/result';
import type { Option } from '../../job/schema';
import { faceOf, pointOnFace, type WallFace } from '../../job/site';
import { type In, knownOr, type Pt } from '../../units/types';

/** Where places of the map are marked in the drawings, and which is meant by a point there. */

const half = (option: Option): In => option.enclosure.size.width / 2;

/** Places of the option's own height as the arrow keys go through them: along the unrolled walls. */
export const orderOf = (walls: readonly Unrolled[], option: Option, places: readonly Place[]): Place[] =>
  walls.flatMap(({ face }) =>
    ownHeight(option, places)
      .filter((p) => p.on.wall === face.wall && p.on.face === face.face)
      .sort((a, b) => a.on.left - b.on.left),
  );

/** Under the wall drawing, in the middle of the map's band. */
export const placeOnWall = (walls: readonly Unrolled[], option: Option, { on }: Place): Pt | null => {
  const wall = wallOf(walls, on);
  return wall ? [wall.at + on.left + half(option), (MAP_BAND.from + MAP_BAND.to) / 2] : null;
};

const least = <T>(list: readonly T[], far: (one: T) => number, within: number): T | null => {
  let best: { one: T; far: number } | null = null;
  for (const one of list) {
    const d = far(one);
    if (d <= within && (best === null || d < best.far)) best = { one, far: d };
  }
  return best?.one ?? null;
};

/** `within` inches above or below the band; along it the nearest. */
export const nearestOnWall = (
  walls: readonly Unrolled[],
  option: Option,
  order: readonly Place[],
  p: Pt,
  within: number,
): Place | null => {
  const off = Math.max(0, p[1] - MAP_BAND.over, MAP_BAND.to - p[1]);
  if (off > within) return null;
  return least(order, (place) => Math.abs((placeOnWall(walls, option, place)?.[0] ?? Number.NaN) - p[0]), Infinity);
};

const outOf = (face: WallFace): In =>
  face.partition ? PLAN_MARK_IN / 2 : -knownOr(face.thickness, OUTLINE_WALL_IN) - PLAN_MARK_IN;

/** Outside the wall in plan, before a partition. */
export const placeInPlan = (faces: readonly WallFace[], option: Option, { on }: Place): Pt | null => {
  const face = faceOf(faces, on);
  return face ? pointOnFace(face, on.left + half(option), outOf(face)) : null;
};

/** `within` inches of where it is marked, or of the wall there. */
export const nearestInPlan = (
  faces: readonly WallFace[],
  option: Option,
  order: readonly Place[],
  p: Pt,
  within: number,
): Place | null =>
  least(
    order,
    (place) => {
      const face = faceOf(faces, place.on);
      if (!face) return Number.NaN;
      const [along, out] = alongOut(face, p);
      const aside = Math.abs(along - place.on.left - half(option));
      return Math.hypot(aside, out - outOf(face));
    },
    within,
  );
