import { dot } from '../geometry/vector';
import type { Id, Pt, Pt3 } from '../units/types';
import { stepsOf } from './legs';
import { pointOf } from './network';
import { type CablePrices, EDGE, type Network } from './types';

/** A hole that a path needs. `of`: framing region or wall of the member. */
export interface Member {
  readonly kind: 'joist' | 'stud' | 'plate';
  readonly of: Id;
  readonly at: Pt3;
}

const WHOLE = 1e-6;
const isWhole = (x: number) => Math.abs(x - Math.round(x)) < WHOLE;
const ACROSS: ReadonlySet<number> = new Set([EDGE.throughJoists, EDGE.throughJoistsOverTile, EDGE.closedAcross]);
const ALONG: ReadonlySet<number> = new Set([EDGE.joistSide, EDGE.joistSideOverTile, EDGE.closedAlong]);
const STUDS: ReadonlySet<number> = new Set([EDGE.studAcross, EDGE.closedWallAcross, EDGE.unknownWallAcross]);

interface StudStretch {
  readonly face: number;
  readonly from: Pt3;
  readonly to: Pt3;
  readonly length64: number;
}

/**
 * The members a path bores, in order. A joist counts when its centerline lies strictly inside a stretch, or when the
 * cable comes to it from one side and leaves it on the other; one that a path only begins or ends on does not. A plate
 * counts on the way out of the top of a stud wall. Along a stud wall every begun stud spacing counts one stud, since
 * the places of studs are not surveyed.
 */
export const membersCrossed = (network: Network, path: readonly number[], prices: CablePrices): Member[] => {
  const found: Member[] = [];
  let arrived: { readonly node: number; readonly side: number } | null = null;
  let studs: StudStretch | null = null;
  const closeStuds = (stretch: StudStretch | null): void => {
    if (!stretch) return;
    const { from, to, length64 } = stretch;
    const { studs64, wall } = network.faces[stretch.face]!;
    const count = Math.ceil(length64 / studs64 - WHOLE);
    for (let i = 0; i < count; i++) {
      const t = (i + 0.5) / count;
      found.push({ kind: 'stud', of: wall, at: from.map((c, k) => c + (to[k]! - c) * t) as unknown as Pt3 });
    }
  };
  for (const { from, to, edge } of stepsOf(network, path, prices)) {
    const cls = network.cls[edge]!;
    const face = network.face[from]!;
    if (STUDS.has(cls) && face >= 0 && network.faces[face]!.studs64 > 0) {
      if (studs && studs.face !== face) {
        closeStuds(studs);
        studs = null;
      }
      const start: StudStretch = studs ?? { face, from: pointOf(network, from), to: pointOf(network, to), length64: 0 };
      studs = { ...start, to: pointOf(network, to), length64: start.length64 + network.len[edge]! };
      continue;
    }
    closeStuds(studs);
    studs = null;
    if (ACROSS.has(cls)) {
      const region = network.framing[network.region[edge]!]!;
      if (region.boring === 'free') continue;
      const place = (n: number): Pt => [network.x[n]!, network.y[n]!];
      const a = (dot(region.normal, place(from)) - region.first) / region.spacing;
      const b = (dot(region.normal, place(to)) - region.first) / region.spacing;
      const side = Math.sign(b - a);
      const at = (k: number): Pt3 => {
        const t = (k - a) / (b - a);
        const [p, q] = [pointOf(network, from), pointOf(network, to)];
        return [p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t, p[2]];
      };
      if (arrived && arrived.side === side) found.push({ kind: 'joist', of: region.id, at: pointOf(network, from) });
      arrived = null;
      const first = side > 0 ? Math.floor(a + WHOLE) + 1 : Math.ceil(a - WHOLE) - 1;
      for (let k = first; side > 0 ? k < b - WHOLE : k > b + WHOLE; k += side)
        found.push({ kind: 'joist', of: region.id, at: at(k) });
      if (side !== 0 && isWhole(b)) arrived = { node: to, side };
      continue;
    }
    if (!(ALONG.has(cls) && network.z[from] === network.z[to])) arrived = null;
    if ((cls === EDGE.joistSide || cls === EDGE.corner) && network.halves[edge]! > 0) {
      const wallEnd = network.face[from]! >= 0 ? from : to;
      found.push({ kind: 'plate', of: network.faces[network.face[wallEnd]!]!.wall, at: pointOf(network, wallEnd) });
    }
  }
  closeStuds(studs);
  return found;
};
