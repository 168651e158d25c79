import { turnAbout } from '../geometry/vector';
import type { Job, Option } from '../job/schema';
import { enclosureOnFace, faceOf, wallFaces } from '../job/site';
import type { In, Pt, Pt3 } from '../units/types';
import { regionAt } from './networkFraming';
import { LAYER, type Network } from './types';

/** Between two boxes of a bank: locknuts and a hand with a screwdriver. Common practice, no source. */
export const BETWEEN_BOXES_IN: In = 1;
/** Up to this many boxes every order is tried; in a longer bank they hang in the order they were filled. */
const MOST_ORDERED = 4;

/** Where the boxes of a bank hang, in the order they were packed: the middle of each. */
export type Layout = readonly Pt3[];

type Axis = readonly [x: number, y: number, z: number];
const along = (p: Pt3, axis: Axis, s: In): Pt3 =>
  s === 0 ? p : [p[0] + axis[0] * s, p[1] + axis[1] * s, p[2] + axis[2] * s];

/** Directions in which boxes may hang beside each other: along a wall, then above each other; along the joists, and under them across too. */
const axesAt = (network: Network, node: number, job: Job): Axis[] => {
  const face = network.face[node]!;
  if (face >= 0) {
    const { id } = network.faces[face]!;
    const on = [...wallFaces(job.site, 'now'), ...wallFaces(job.site, 'after')].find((f) => f.id === id)!;
    return [
      [on.along[0], on.along[1], 0],
      [0, 0, 1],
    ];
  }
  const { framing, frame } = network;
  const region = framing[regionAt(framing, [network.x[node]!, network.y[node]!])]!;
  const across: Pt = turnAbout(region.normal, [0, 0], -frame.turn);
  const joist: Axis = [-across[1], across[0], 0];
  return network.layer[node] === LAYER.below ? [joist, [across[0], across[1], 0]] : [joist];
};

/** Middles of boxes that hang in a line in this order, one of them at 0. */
const inLine = (widths: readonly In[], order: readonly number[], at0: number): In[] => {
  const middles = widths.map(() => 0);
  let edge = 0;
  for (const i of order) {
    middles[i] = edge + widths[i]! / 2;
    edge += widths[i]! + BETWEEN_BOXES_IN;
  }
  const zero = middles[at0]!;
  return middles.map((m) => m - zero);
};

const ordersOf = (n: number): number[][] => {
  const all = Array.from({ length: n }, (_, i) => i);
  if (n > MOST_ORDERED) return [all, [...all].reverse()];
  const go = (left: readonly number[]): number[][] =>
    left.length === 0 ? [[]] : left.flatMap((i) => go(left.filter((k) => k !== i)).map((rest) => [i, ...rest]));
  return go(all);
};

/** Every way to hang boxes of these widths beside each other, one of them at the spot itself; nearest to the spot first. */
export const layoutsAt = (network: Network, node: number, at: Pt3, widths: readonly In[]): Layout[] => {
  const found = new Map<string, { layout: Layout; reach: In; rank: number }>();
  axesAt(network, node, network.made.job).forEach((axis, rank) => {
    for (const order of ordersOf(widths.length))
      for (let at0 = 0; at0 < widths.length; at0++) {
        const middles = inLine(widths, order, at0);
        const layout = middles.map((s) => along(at, axis, s));
        const key = layout.map((p) => p.map((x) => x.toFixed(4)).join()).join(';');
        const reach = middles.reduce((n, s) => n + Math.abs(s), 0);
        if (!found.has(key)) found.set(key, { layout, reach, rank });
      }
  });
  return [...found.values()].sort((a, b) => a.rank - b.rank || a.reach - b.reach).map((f) => f.layout);
};

interface Standing {
  readonly at: Pt3;
  readonly width: In;
}
/** Do two boxes leave each other their room? */
export const apart = (a: Standing, b: Standing): boolean =>
  Math.max(...a.at.map((x, k) => Math.abs(x - b.at[k]!))) >= (a.width + b.width) / 2;

/** On its wall a box keeps off the wall's ends, openings and panels; elsewhere nothing of this bars it. */
export const clearOnWall = (job: Job, option: Option, faceId: string | null, { at, width }: Standing): boolean => {
  const face = [...wallFaces(job.site, 'now'), ...wallFaces(job.site, 'after')].find((f) => f.id === faceId);
  if (!face) return true;
  const u = (at[0] - face.from[0]) * face.along[0] + (at[1] - face.from[1]) * face.along[1];
  const half = width / 2;
  if (u < half || u > face.length - half) return false;
  const over = (left: In, right: In, bottom: In, top: In) =>
    u + half > left && u - half < right && at[2] + half > bottom && at[2] - half < top;
  const opening = job.site.openings.some((o) => {
    if (o.on.wall !== face.wall || !(o.exists.now || o.exists.after)) return false;
    const left = o.on.face === face.face ? o.on.left : face.length - o.on.left - o.width;
    return over(left, left + o.width, o.on.bottom, o.on.bottom + o.height);
  });
  const panel = [...job.enclosures, option.enclosure].some((e) => {
    if (faceOf([face], e.on) === undefined) return false;
    const on = enclosureOnFace(e);
    return over(on.left, on.left + e.size.width, on.bottom, on.top);
  });
  return !opening && !panel;
};
