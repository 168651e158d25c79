import { bounds } from '../geometry/polygon';
import type { Pt } from '../units/types';
import { onFace } from './faces';
import { fitHeights, fitPlan } from './linesFit';
import { roundX, roundY, snap } from './networkFrame';
import { bayMiddles } from './networkFraming';
import type { Ground } from './networkGround';
import type { Spot } from './networkLocate';
import { LAYER } from './types';

/**
 * The lines of the grid (after Hanan 1966, weighted case after Davoodi, Enamzadeh and Safari, CCCG 2020): one at every
 * surface where a price or a permission changes, one through every terminal, one in the middle of every bay. Between
 * two neighboring lines the cost of a path is linear in its place, so that a cheapest path on the lines is a cheapest
 * path. Whole 1/64 in, sorted.
 */
export interface Lines {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  readonly zs: readonly number[];
  /** Segments askew to the frame that also get a node wherever a line meets them. */
  readonly skew: readonly (readonly [Pt, Pt])[];
}

const isSkew = ([a, b]: readonly [Pt, Pt]) => a[0] !== b[0] && a[1] !== b[1];
const sides = (ring: readonly Pt[]): (readonly [Pt, Pt])[] =>
  ring.map((p, i) => [p, ring[(i + 1) % ring.length]!] as const);

/** Where the middle of a bay meets a sloped wall a cable may go up into the joists: both lines through that place matter. */
const waysUp = (ground: Ground, across: 0 | 1, middles: readonly number[]): Pt[] => {
  const along = across === 0 ? 1 : 0;
  return ground.faces
    .filter((face) => face.fixed === null)
    .flatMap(({ from, to }) =>
      middles
        .map((c) => [c, (c - from[across]) / (to[across] - from[across])] as const)
        .filter(([, t]) => t > 0 && t < 1)
        .map(([c, t]): Pt => {
          const met = from[along] + (to[along] - from[along]) * t;
          return across === 0 ? [c, roundY(ground.frame, met)] : [roundX(ground.frame, met), c];
        }),
    );
};

export const drawLines = (
  ground: Ground,
  spots: readonly Spot[],
  runs: readonly (readonly [Pt, Pt])[],
  more: readonly Pt[],
): Lines => {
  const hard = [new Set<number>(), new Set<number>()] as const;
  const soft = [new Set<number>(), new Set<number>()] as const;
  const zs = new Set<number>();
  const put = (to: typeof hard, p: Pt) => {
    to[0].add(Math.round(p[0]));
    to[1].add(Math.round(p[1]));
  };
  for (const p of ground.room) put(hard, p);
  for (const spot of spots) {
    put(hard, spot.surface);
    if (spot.layer === LAYER.wall) zs.add(spot.at[2]);
  }
  ground.faces.forEach((face, i) => {
    put(hard, face.from);
    put(hard, face.to);
    if (face.top !== null) zs.add(face.top);
    for (const ring of ground.patches[i]!.flat())
      for (const [chain, z] of ring) {
        if (chain >= 0 && chain <= face.end) put(soft, onFace(face, chain));
        if (z > 0) zs.add(z);
      }
  });
  for (const areas of [...ground.bars.joists, ...ground.bars.below])
    for (const ring of areas.flat()) for (const p of ring) put(soft, p);
  const zones = [...ground.covers, ...ground.bays, ...ground.regions].flatMap((zone) => (zone.ring ? [zone.ring] : []));
  for (const ring of zones) for (const p of ring) put(hard, p);
  const room = bounds(ground.room);
  for (const region of ground.regions) {
    // where a run that goes up a wall comes to the joists it may leave it
    zs.add(region.under);
    if (region.across === null) continue;
    const box = region.ring ? bounds(region.ring) : room;
    const from = region.across === 0 ? Math.max(box.minX, room.minX) : Math.max(box.minY, room.minY);
    const to = region.across === 0 ? Math.min(box.maxX, room.maxX) : Math.min(box.maxY, room.maxY);
    const middles = bayMiddles(region, from, to);
    for (const c of middles) soft[region.across].add(c);
    for (const p of waysUp(ground, region.across, middles)) put(soft, p);
  }
  for (const p of more) put(hard, p);

  const keep = ([set, least, most]: readonly [Set<number>, number, number]) => {
    for (const c of set) if (c < least || c > most) set.delete(c);
  };
  for (const group of [hard, soft]) {
    keep([group[0], room.minX, room.maxX]);
    keep([group[1], room.minY, room.maxY]);
  }
  const bodies = ground.barriers.filter((b) => b.what === 'partition');
  const skew = [
    ...sides(ground.room),
    ...zones.flatMap(sides),
    ...ground.faces.map((f) => [f.from, f.to] as const),
    ...bodies.flatMap((b) => sides(b.outline.map((p) => snap(ground.frame, p)))),
    ...runs,
  ].filter(isSkew);
  const { xs, ys } = fitPlan(hard, soft, skew.length);
  return { xs, ys, zs: fitHeights(zs, ground.faces, xs.length + ys.length), skew };
};
