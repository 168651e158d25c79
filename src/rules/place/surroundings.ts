import type { SpaceBlocker } from '../../calculations/spaceZone';
import type { Polygon } from '../../geometry/polygon';
import { add, dot, scale, subtract } from '../../geometry/vector';
import type { Area, Enclosure, Opening, Site } from '../../job/schema';
import { areaAt, framingAt, pointOnFace, STUD_WALL_IN, solids, type WallFace, wallFaces } from '../../job/site';
import { IN_FRONT_IN, SKY_IN, WALL_SKIN_IN } from '../../standards/editionsPlace';
import { type Id, type In, isKnown, knownOr, type Pt, type U } from '../../units/types';
import type { FactsInYear } from '../rule';

/** Everything around a panel after the finishing, in the coordinates of the wall face it hangs on. */

export const onFace =
  (face: WallFace) =>
  (p: Pt): Pt => {
    const from = subtract(p, face.from);
    return [dot(from, face.along), dot(from, face.into)];
  };

const wall = (id: Id, outline: Polygon, fromZ: In, toZ: In): SpaceBlocker => ({
  id,
  outline,
  fromZ,
  toZ,
  blocksSpace: true,
  foreign: false,
  stored: false,
});

/** A strip behind a stretch of a face: the wall itself, as thick as it has to be. */
const strip = (face: WallFace, from: In, to: In, thickness: In): Polygon => [
  pointOnFace(face, from),
  pointOnFace(face, to),
  pointOnFace(face, to, -thickness),
  pointOnFace(face, from, -thickness),
];

/** Where an opening lies along a face of its wall, whichever side it was measured from. */
export const openingAlong = (face: WallFace, opening: Opening): readonly [In, In] =>
  opening.on.face === face.face
    ? [opening.on.left, opening.on.left + opening.width]
    : [face.length - opening.on.left - opening.width, face.length - opening.on.left];

const PASSABLE: readonly Opening['kind'][] = ['door', 'cased opening'];

/** A partition as solids: what is left between its doorways, and what hangs over them. */
const partitionSolids = (site: Site, face: WallFace): SpaceBlocker[] => {
  const thickness = knownOr(face.thickness, STUD_WALL_IN);
  const top = knownOr(face.height, SKY_IN);
  const doorways = site.openings
    .filter((o) => o.on.wall === face.wall && o.exists.after && PASSABLE.includes(o.kind))
    .map((o) => ({ along: openingAlong(face, o), top: o.on.bottom + o.height }))
    .sort((a, b) => a.along[0] - b.along[0]);
  const pieces: SpaceBlocker[] = [];
  let at = 0;
  for (const { along, top: lintel } of doorways) {
    if (along[0] > at) pieces.push(wall(face.wall, strip(face, at, along[0], thickness), 0, top));
    if (top > lintel) pieces.push(wall(face.wall, strip(face, along[0], along[1], thickness), lintel, top));
    at = Math.max(at, along[1]);
  }
  if (at < face.length) pieces.push(wall(face.wall, strip(face, at, face.length, thickness), 0, top));
  return pieces;
};

const otherWalls = (site: Site, own: WallFace): SpaceBlocker[] =>
  wallFaces(site, 'after')
    .filter((f) => f.wall !== own.wall)
    .flatMap((f) => {
      if (!f.partition) return [wall(f.wall, strip(f, 0, f.length, WALL_SKIN_IN), 0, SKY_IN)];
      return f.face === 'front' ? partitionSolids(site, f) : [];
    });

/** Ceilings hang over their areas; an area that nobody measured the ceiling of has none here. */
const ceilings = (site: Site): SpaceBlocker[] =>
  site.areas.flatMap((area) => {
    const { ceiling } = area.state.after;
    return isKnown(ceiling) ? [wall(area.id, area.outline, ceiling, ceiling + SKY_IN)] : [];
  });

/** What a person and a cabinet meet, on the face's own coordinates, z from where that person stands. */
export const blockersAround = (
  facts: Pick<FactsInYear, 'option'>,
  site: Site,
  own: WallFace,
  floor: In,
): SpaceBlocker[] => {
  const things = solids(site, 'after', facts.option.moves).map(
    ({ id, outline, fromZ, toZ, blocksSpace, foreign, stored }): SpaceBlocker => ({
      id,
      outline,
      fromZ,
      toZ,
      blocksSpace,
      foreign,
      stored,
    }),
  );
  const place = onFace(own);
  return [...things, ...otherWalls(site, own), ...ceilings(site)].map((b) => ({
    ...b,
    outline: b.outline.map(place),
    fromZ: b.fromZ - floor,
    toZ: b.toZ - floor,
  }));
};

/** In plan, just before the middle of the panel. */
export const inFront = (face: WallFace, panel: Enclosure): Pt =>
  pointOnFace(face, panel.on.left + panel.size.width / 2, IN_FRONT_IN);

export const roomAt = (site: Site, face: WallFace, panel: Enclosure): Area | undefined =>
  areaAt(site, inFront(face, panel));

/** Underside of the joists over the panel; unknown where it was not measured or no framing was drawn. */
export const structureOver = (site: Site, face: WallFace, panel: Enclosure): U<In> =>
  framingAt(site, inFront(face, panel))?.underside ?? 'unknown';

/** A point of the face's coordinates back in plan. */
export const inPlan = (face: WallFace, [along, out]: Pt): Pt =>
  add(face.from, add(scale(face.along, along), scale(face.into, out)));
