import type { Job, Opening, Option, Site } from '../job/schema';
import type { In, Pt } from '../units/types';
import { hidden, SEEN_IN } from './elevation';
import { type Label, type Line, path, ring, stroke } from './items';
import { isNamed, thingLabel } from './names';
import { middle, outlineAt, type Stand, stands } from './things';
import { spread, type Unrolled, wallOf } from './unroll';
import { changeDash } from './walls';

/** A rectangle of the wall drawing, lower left corner first, counter-clockwise. */
export const box = (left: In, right: In, from: In, to: In): Pt[] => [
  [left, from],
  [right, from],
  [right, to],
  [left, to],
];

/** A thing as it is seen before one wall, in the wall drawing. */
export interface Seen {
  readonly stand: Stand;
  readonly wall: Unrolled;
  readonly left: In;
  readonly right: In;
  readonly near: In;
}

/** Before walls without the new panel only what stands at the wall is drawn, so that it can be read. Our own measure. */
const AT_WALL_IN = 12;

/**
 * What stands before each wall, the farther from the eye first: all within the depth of the drawing where the new
 * panel hangs, for it may be in its way there; else what stands at the wall.
 */
export const seenThings = (site: Site, walls: readonly Unrolled[], { moves, enclosure }: Option): Seen[] => {
  const own = wallOf(walls, enclosure.on);
  return walls.flatMap((wall) =>
    stands(site, moves)
      .flatMap((stand): Seen[] => {
        const { left, right, near, far } = spread(wall.face, stand.outline);
        const [l, r] = [Math.max(0, left), Math.min(wall.face.length, right)];
        if (r - l <= 0.01 || near >= (wall === own ? SEEN_IN : AT_WALL_IN) || far <= 0.01) return [];
        const { outline, obstacle } = stand;
        if (hidden(site, wall, middle(outline), obstacle.bottom)) return [];
        return [{ stand, wall, left: wall.at + l, right: wall.at + r, near }];
      })
      .sort((a, b) => a.near - b.near),
  );
};

/** The strokes inside a thing's outline by which it is known. A stair has none: which end is up was not surveyed. */
const strokesOf = ({ stand, left, right }: Seen): Line[] => {
  const { obstacle } = stand;
  const [from, to] = [obstacle.bottom, obstacle.bottom + obstacle.size.height];
  const thin = stroke('thin', 'ink-3', changeDash(obstacle.exists));
  const level = (z: In): Line =>
    path(
      'things',
      obstacle.id,
      [
        [left, z],
        [right, z],
      ],
      thin,
    );
  switch (obstacle.kind) {
    case 'washer':
    case 'dryer':
      return [level(to - 5)];
    case 'shelf':
      return [1, 2, 3].map((k) => level(from + ((to - from) * k) / 4));
    case 'workbench':
      return [level(to - 2)];
    case 'freezer':
      return [level(to - 4)];
    case 'sink':
      return [level(to - 12)];
    case 'furnace':
    case 'boiler':
      return [level(from + (to - from) * 0.6)];
    case 'water heater':
    case 'tank':
      return [level(from + 4), level(to - 4)];
    default:
      return [];
  }
};

const outlineOf = ({ stand: { obstacle }, left, right }: Seen): Pt[] =>
  box(left, right, obstacle.bottom, obstacle.bottom + obstacle.size.height);

const drawSeen = (seen: Seen): Line[] => {
  const { obstacle } = seen.stand;
  const outline = outlineOf(seen);
  if (obstacle.kind === 'beam' || obstacle.kind === 'duct')
    return [ring('things', obstacle.id, outline, stroke('object', 'ink-3', 'overhead'))];
  const dash = changeDash(obstacle.exists);
  const edge = stroke(obstacle.stored ? 'thin' : 'object', 'ink-2', dash);
  return [ring('things', obstacle.id, outline, edge, obstacle.stored || dash ? null : 'appliance'), ...strokesOf(seen)];
};

const openingOutline = (
  walls: readonly Unrolled[],
  o: Opening,
): { readonly wall: Unrolled; readonly outline: Pt[] }[] => {
  const own = wallOf(walls, o.on);
  const other = wallOf(walls, { wall: o.on.wall, face: o.on.face === 'front' ? 'back' : 'front' });
  return [own, other].flatMap((wall) => {
    if (!wall) return [];
    const left = wall === own ? o.on.left : wall.face.length - o.on.left - o.width;
    const l = wall.at + left;
    return [{ wall, outline: box(l, l + o.width, o.on.bottom, o.on.bottom + o.height) }];
  });
};

/** Doors and windows in their walls: a door by the dashed lines that meet at its hinges, a window by its sash. */
const drawOpening = (walls: readonly Unrolled[], o: Opening): Line[] =>
  openingOutline(walls, o).flatMap(({ wall, outline }) => {
    const dash = changeDash(o.exists);
    const frame = ring('openings', o.id, outline, stroke('object', 'ink', dash === 'away' ? 'away' : null), 'paper');
    const [a, b, c, d] = outline as [Pt, Pt, Pt, Pt];
    const thin = stroke('thin', 'ink-3', 'future');
    if (o.kind === 'window')
      return [frame, ring('openings', o.id, box(a[0] + 2, b[0] - 2, a[1] + 2, d[1] - 2), stroke('thin', 'ink-3'))];
    if (o.kind !== 'door' || (o.hinge !== 'left' && o.hinge !== 'right')) return [frame];
    const seenFromOwn = o.on.face === wall.face.face;
    const atLeft = (o.hinge === 'left') === seenFromOwn;
    const half = (a[1] + d[1]) / 2;
    const lines: Pt[] = atLeft ? [b, [a[0], half], c] : [a, [b[0], half], d];
    return [frame, path('openings', o.id, lines, thin)];
  });

export const drawWallOpenings = (site: Site, walls: readonly Unrolled[]): Line[] =>
  site.openings.filter((o) => o.exists.now || o.exists.after).flatMap((o) => drawOpening(walls, o));

/** Things in the room before each wall, with their names. */
export const drawWallThings = (job: Job, option: Option, walls: readonly Unrolled[]): (Line | Label)[] => {
  const seen = seenThings(job.site, walls, option);
  return [
    ...seen.flatMap(drawSeen),
    ...seen.filter((s) => isNamed(job, s.stand)).map((s) => thingLabel(s.stand, outlineOf(s))),
  ];
};

/** Where things that an option moves stood. */
export const movedFrom = (site: Site, walls: readonly Unrolled[], moves: Option['moves']): Line[] =>
  moves.flatMap((m) => {
    const obstacle = site.obstacles.find((o) => o.id === m.obstacle);
    if (!obstacle) return [];
    return walls.flatMap((wall): Line[] => {
      const { left, right, near, far } = spread(wall.face, outlineAt(obstacle, obstacle.corner));
      const [l, r] = [Math.max(0, left), Math.min(wall.face.length, right)];
      if (r - l <= 0.01 || near >= SEEN_IN || far <= 0.01) return [];
      const from = obstacle.bottom;
      return [
        ring(
          'things',
          obstacle.id,
          box(wall.at + l, wall.at + r, from, from + obstacle.size.height),
          stroke('old', 'old', 'away'),
        ),
      ];
    });
  });
