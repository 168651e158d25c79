import { edges } from '../geometry/polygon';
import { add, cross, rightOf, scale, subtract, unit } from '../geometry/vector';
import type { Build, Partition, Site } from '../job/schema';
import { STUD_WALL_IN } from '../job/site';
import { isKnown, knownOr, type Pt, type U } from '../units/types';
import { type Dash, type Hatch, type Line, path, ring, stroke } from './items';

/** An outline wall whose thickness nobody measured is drawn this thick, and dotted. Common practice, no source. */
export const OUTLINE_WALL_IN = 8;

/** How a wall that is cut is hatched, by what it is made of. */
export const HATCHES: Readonly<Record<U<Build>, Hatch>> = {
  poured: 'concrete',
  block: 'block',
  furred: 'block',
  'open studs': 'stud',
  'finished studs': 'stud',
  'plywood board': 'ply',
  unknown: 'not measured',
};

const outward = ([a, b]: readonly [Pt, Pt]): Pt => scale(rightOf(unit(subtract(b, a))), -1);

/** Where the outer faces of two walls that meet at a corner meet: one point, or the end of each where they run on. */
const outerCorner = (corner: Pt, before: Wall, after: Wall): { readonly end: Pt; readonly start: Pt } => {
  const end = add(corner, scale(before.out, before.thickness));
  const start = add(corner, scale(after.out, after.thickness));
  const turn = cross(before.along, after.along);
  if (Math.abs(turn) < 1e-6) return { end, start };
  const t = cross(subtract(start, end), after.along) / turn;
  const meet = add(end, scale(before.along, t));
  return { end: meet, start: meet };
};

interface Wall {
  readonly id: string;
  readonly from: Pt;
  readonly to: Pt;
  readonly along: Pt;
  readonly out: Pt;
  readonly thickness: number;
  readonly hatch: Hatch;
}
const wallsOf = (site: Site): Wall[] =>
  edges(site.outline.map((c) => c.at)).map(([from, to], i) => {
    const corner = site.outline[i]!;
    return {
      id: corner.id,
      from,
      to,
      along: unit(subtract(to, from)),
      out: outward([from, to]),
      thickness: knownOr(corner.thickness, OUTLINE_WALL_IN),
      hatch: isKnown(corner.thickness) ? HATCHES[corner.face.now.build] : 'not measured',
    };
  });

/** Each outline wall as a quadrilateral: inner from, inner to, outer to, outer from. */
export const wallQuads = (
  site: Site,
): { readonly id: string; readonly quad: readonly Pt[]; readonly hatch: Hatch }[] => {
  const walls = wallsOf(site);
  const corners = walls.map((wall, i) => outerCorner(wall.from, walls.at(i - 1)!, wall));
  return walls.map((wall, i) => ({
    id: wall.id,
    hatch: wall.hatch,
    quad: [wall.from, wall.to, corners[(i + 1) % corners.length]!.end, corners[i]!.start],
  }));
};

/** The room's walls where the drawing cuts them: hatched, with a heavy line inside and outside. */
export const drawOutline = (site: Site): Line[] => {
  const quads = wallQuads(site);
  return [
    ...quads.map(({ id, quad, hatch }) => ring('walls', id, quad, null, hatch)),
    ring(
      'walls',
      'outline',
      site.outline.map((c) => c.at),
      stroke('cut', 'ink'),
    ),
    ring(
      'walls',
      'outline',
      quads.flatMap(({ quad }) => [quad[3]!, quad[2]!]),
      stroke('cut', 'ink'),
    ),
  ];
};

/** A partition from face to face. */
export const partitionQuad = (p: Pick<Partition, 'from' | 'to' | 'thickness'>): Pt[] => {
  const right = scale(rightOf(unit(subtract(p.to, p.from))), knownOr(p.thickness, STUD_WALL_IN) / 2);
  return [add(p.from, right), add(p.to, right), subtract(p.to, right), subtract(p.from, right)];
};

/** How a thing that comes or goes with the finishing is drawn; null where it stays as it is. */
export const changeDash = (exists: { readonly now: boolean; readonly after: boolean }): Dash | null =>
  exists.now ? (exists.after ? null : 'away') : 'future';

export const drawPartitions = (site: Site): Line[] =>
  site.partitions
    .filter((p) => p.exists.now || p.exists.after)
    .map((p) => {
      const dash = changeDash(p.exists);
      const quad = partitionQuad(p);
      if (dash === 'away') return ring('walls', p.id, quad, stroke('old', 'old', dash));
      if (dash === 'future') return ring('walls', p.id, quad, stroke('profile', 'ink-2', dash), 'paper');
      return ring('walls', p.id, quad, stroke('profile', 'ink'), isKnown(p.thickness) ? 'stud' : 'not measured');
    });

/** A line across a wall at one end of an opening. */
export const jamb = (id: string, a: Pt, b: Pt, dash: Dash | null): Line =>
  path('openings', id, [a, b], stroke('profile', 'ink', dash));
