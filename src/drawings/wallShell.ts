import { cross } from '../geometry/vector';
import type { Job, Partition, Site } from '../job/schema';
import { STUD_WALL_IN } from '../job/site';
import { type In, isKnown, knownOr, type Pt } from '../units/types';
import { drawingWords as say } from '../words/en/drawings';
import { type Drawn, type Fill, type Label, type Line, path, ring, stroke } from './items';
import { alongOut, type Unrolled } from './unroll';
import { areasBefore, drawCeilings, drawFraming, INSIDE_IN, SIDEWAYS, topOf } from './wallFraming';
import { HATCHES } from './walls';

/** The slab as drawn under the floor line. Our own measure: a floor's thickness is not surveyed. */
const SLAB_IN = 4;

/** A wall covered with plywood is hatched as such: it is what things are hung on. */
const drawSurface = (wall: Unrolled, top: In): Line[] => {
  if (wall.face.build !== 'plywood board') return [];
  const [l, r] = [wall.at, wall.at + wall.face.length];
  return [
    ring(
      'joists',
      wall.face.wall,
      [
        [l, 0],
        [r, 0],
        [r, top],
        [l, top],
      ],
      null,
      'ply',
    ),
  ];
};

/** The slab cut, and what rises from it: a platform or ledge to stand on. */
const drawFloor = (site: Site, wall: Unrolled): Line[] => {
  const [l, r] = [wall.at, wall.at + wall.face.length];
  const rises = areasBefore(site, wall).flatMap(({ of, from, to }) => {
    const rise = of.state.after.floorRise;
    if (rise === 0) return [];
    const [a, b] = [wall.at + from, wall.at + to];
    return [
      ring(
        'walls',
        of.id,
        [
          [a, 0],
          [b, 0],
          [b, rise],
          [a, rise],
        ],
        stroke('object', 'ink'),
        'paper',
      ),
    ];
  });
  return [
    ring(
      'walls',
      'slab',
      [
        [l, 0],
        [r, 0],
        [r, -SLAB_IN],
        [l, -SLAB_IN],
      ],
      null,
      'concrete',
    ),
    path(
      'walls',
      'floor',
      [
        [l, 0],
        [r, 0],
      ],
      stroke('cut', 'ink'),
    ),
    ...rises,
  ];
};

/** Where a partition meets a wall it is cut: from the floor to its top, hatched as what it is made of. */
const cutAt = (wall: Unrolled, p: Partition, top: In): Line[] => {
  if (p.id === wall.face.wall || !(p.exists.now || p.exists.after)) return [];
  const length = Math.hypot(p.to[0] - p.from[0], p.to[1] - p.from[1]);
  const along: Pt = [(p.to[0] - p.from[0]) / length, (p.to[1] - p.from[1]) / length];
  const lean = Math.abs(cross(along, wall.face.along));
  if (lean < SIDEWAYS) return [];
  const thickness = knownOr(p.thickness, STUD_WALL_IN);
  const half = thickness / 2 / lean;
  const ends = [p.from, p.to]
    .map((end) => alongOut(wall.face, end))
    .filter(([s, out]) => out > -thickness && out < thickness + INSIDE_IN && s > -half && s < wall.face.length + half);
  const height = knownOr(p.height, top);
  const goes = !p.exists.after;
  const comes = !p.exists.now;
  return ends.slice(0, 1).map(([s]) => {
    const [l, r] = [wall.at + Math.max(0, s - half), wall.at + Math.min(wall.face.length, s + half)];
    const s4 = stroke('profile', goes ? 'old' : 'ink', goes ? 'away' : comes ? 'future' : null);
    const fill: Fill | null = goes ? null : isKnown(p.thickness) ? HATCHES[p.front.after.build] : 'not measured';
    return ring(
      'walls',
      p.id,
      [
        [l, 0],
        [r, 0],
        [r, height],
        [l, height],
      ],
      s4,
      fill,
    );
  });
};

const nameOf = (wall: Unrolled, top: In): Label => ({
  item: 'label',
  id: wall.face.id,
  layer: 'names',
  lines: [
    {
      say: say.wallName({ wall: wall.face.wall, side: wall.face.partition ? wall.face.face : null }),
      lettering: 'capitals',
      tone: 'ink',
      size: 12,
    },
  ],
  rank: 0,
  must: true,
  lead: null,
  places: [{ at: [wall.at + wall.face.length / 2, top], side: 'above', gap: 7 }],
});

/** Floor, corners, ceilings, joists and partitions cut, with the name of each wall lettered over it. */
export const drawShell = (job: Job, walls: readonly Unrolled[]): Drawn[] => {
  const { site } = job;
  const highest = Math.max(...walls.map((w) => topOf(site, w)));
  const room = walls.filter((w) => !w.face.partition);
  const corner = (x: In, top: In, id: string): Line =>
    path(
      'walls',
      id,
      [
        [x, 0],
        [x, top],
      ],
      stroke('thin', 'ink-2'),
    );
  return walls.flatMap((wall): Drawn[] => {
    const top = topOf(site, wall);
    const [l, r] = [wall.at, wall.at + wall.face.length];
    const last = room.at(-1) === wall || wall.face.partition;
    return [
      ...drawSurface(wall, top),
      ...drawFraming(site, wall),
      ...drawFloor(site, wall),
      corner(l, top, wall.face.id),
      ...(last ? [corner(r, top, wall.face.id)] : []),
      ...drawCeilings(site, wall),
      ...site.partitions.flatMap((p) => cutAt(wall, p, top)),
      nameOf(wall, highest),
    ];
  });
};
