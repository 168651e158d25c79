import { insideParts } from '../geometry/polygon';
import { dot } from '../geometry/vector';
import { acrossJoists } from '../job/framing';
import type { Area, Framing, Site } from '../job/schema';
import { pointOnFace } from '../job/site';
import { type In, isKnown, knownOr, type Pt } from '../units/types';
import { type Line, path, ring, stroke } from './items';
import { type Interval, without } from './joists';
import type { Unrolled } from './unroll';

/** Dressed thickness of two-by lumber. Common practice, no source; only drawn. */
const JOIST_IN = 1.5;
/** Height of walls as drawn where neither joists nor a ceiling were measured. */
const WALL_IN = 96;
/** Framing and areas are looked up this far inside the room. */
export const INSIDE_IN = 1;
/** Joists this near to the wall's own direction show their side. Cosine of the angle across. */
export const SIDEWAYS = 0.2;

interface Stretch<T> {
  readonly of: T;
  readonly from: In;
  readonly to: In;
}
const stretchesOf = <T extends { readonly outline: readonly Pt[] | null }>(
  { face }: Unrolled,
  list: readonly T[],
): Stretch<T>[] => {
  const [a, b] = [pointOnFace(face, 0, INSIDE_IN), pointOnFace(face, face.length, INSIDE_IN)];
  return list.flatMap((of) =>
    of.outline
      ? insideParts(a, b, of.outline).map(([f, t]) => ({ of, from: f * face.length, to: t * face.length }))
      : [],
  );
};

/** Framing over a wall, left to right: a region of its own before one that covers the whole room. */
export const framingOver = (site: Site, wall: Unrolled): Stretch<Framing>[] => {
  const own = stretchesOf(wall, site.framing);
  const rest = own.map((s): Interval => [s.from, s.to]).reduce(without, [[0, wall.face.length]] as Interval[]);
  const whole = site.framing.find((f) => f.outline === null);
  return [...own, ...(whole ? rest.map(([from, to]) => ({ of: whole, from, to })) : [])];
};
export const areasBefore = (site: Site, wall: Unrolled): Stretch<Area>[] => stretchesOf(wall, site.areas);

/** Top of what is drawn of a wall: the floor over the joists, or as far up as was measured. */
export const topOf = (site: Site, wall: Unrolled): In => {
  const joists = framingOver(site, wall).flatMap(({ of: { underside, depth } }) =>
    isKnown(underside) ? [underside + knownOr(depth, 0)] : [],
  );
  const ceilings = areasBefore(site, wall).flatMap(({ of }) =>
    isKnown(of.state.after.ceiling) ? [of.state.after.ceiling] : [],
  );
  const all = [...joists, ...ceilings];
  return all.length > 0 ? Math.max(...all) : WALL_IN;
};

/** Ends of the joists where they meet the wall, their side where they lie along it. */
export const drawFraming = (site: Site, wall: Unrolled): Line[] => {
  const { face, at } = wall;
  return framingOver(site, wall).flatMap(({ of, from, to }): Line[] => {
    const { underside, depth, direction, spacing, firstJoist } = of;
    if (!isKnown(underside) || !isKnown(depth)) return [];
    const top = underside + depth;
    const floor = path(
      'joists',
      of.id,
      [
        [at + from, top],
        [at + to, top],
      ],
      stroke('object', 'ink-2'),
    );
    if (!isKnown(direction)) return [floor];
    const across = acrossJoists(direction);
    const slope = dot(face.along, across);
    if (Math.abs(slope) < SIDEWAYS)
      return [
        floor,
        path(
          'joists',
          of.id,
          [
            [at + from, underside],
            [at + to, underside],
          ],
          stroke('thin', 'ink-3'),
        ),
      ];
    if (!isKnown(spacing) || !isKnown(firstJoist)) return [floor];
    const half = JOIST_IN / 2 / Math.abs(slope);
    const station = (s: In): number => (dot(face.from, across) + s * slope - firstJoist) / spacing;
    const [low, high] = [station(from), station(to)].sort((p, q) => p - q) as [number, number];
    const ends: Line[] = [];
    for (let k = Math.ceil(low - 1e-9); k <= Math.floor(high + 1e-9); k++) {
      const s = (firstJoist + k * spacing - dot(face.from, across)) / slope;
      const [l, r] = [at + Math.max(from, s - half), at + Math.min(to, s + half)];
      ends.push(
        ring(
          'joists',
          of.id,
          [
            [l, underside],
            [r, underside],
            [r, top],
            [l, top],
          ],
          stroke('thin', 'ink-3'),
          'wood end',
        ),
      );
    }
    return [floor, ...ends];
  });
};

/** The finished ceiling of each area along the wall; open joists have none. */
export const drawCeilings = (site: Site, wall: Unrolled): Line[] =>
  areasBefore(site, wall).flatMap(({ of, from, to }) => {
    const { now, after } = of.state;
    if (after.cover === 'open joists' || !isKnown(after.ceiling)) return [];
    const dash = now.cover === after.cover ? null : 'future';
    return [
      path(
        'walls',
        of.id,
        [
          [wall.at + from, after.ceiling],
          [wall.at + to, after.ceiling],
        ],
        stroke('object', 'ink', dash),
      ),
    ];
  });
