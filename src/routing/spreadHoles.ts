import { holeCentersApart } from '../calculations/holes';
import { dot, turnAbout } from '../geometry/vector';
import type { In, Pt, Pt3 } from '../units/types';
import type { Hole } from './holes';
import { toFrame } from './networkFrame';
import { regionAt } from './networkFraming';
import type { Network } from './types';

interface Placed<T> {
  readonly item: T;
  readonly hole: Hole;
  /** Where the cables cross the joist, inches along it. */
  readonly along: In;
}
interface Cluster<T> {
  readonly members: readonly Placed<T>[];
  /** Offsets of the members' centers from the first one's. */
  readonly offsets: readonly In[];
  readonly start: In;
}

const middleOf = <T>(members: readonly Placed<T>[], offsets: readonly In[]): In =>
  members.reduce((sum, m, i) => sum + m.along - offsets[i]!, 0) / members.length;

const gap = <T>(a: Placed<T>, b: Placed<T>): In => holeCentersApart(a.hole.diameter, b.hole.diameter);
const sixteenth = (x: In) => Math.round(x * 16) / 16;

/**
 * Holes of one joist set apart along it: each as near to where its cables cross as its neighbors allow. Neighbors that
 * would come too near are set side by side about their common middle.
 */
const setApart = <T>(holes: readonly Placed<T>[]): (readonly [Placed<T>, In])[] => {
  const clusters: Cluster<T>[] = [];
  for (const hole of [...holes].sort((a, b) => a.along - b.along)) {
    let now: Cluster<T> = { members: [hole], offsets: [0], start: hole.along };
    for (let before = clusters.at(-1); before; before = clusters.at(-1)) {
      const last = before.members.at(-1)!;
      const end = before.start + before.offsets.at(-1)!;
      const apart = gap(last, now.members[0]!);
      if (end + apart <= now.start + 1e-9) break;
      clusters.pop();
      const base = before.offsets.at(-1)! + apart;
      const members = [...before.members, ...now.members];
      const offsets = [...before.offsets, ...now.offsets.map((o) => base + o)];
      now = { members, offsets, start: middleOf(members, offsets) };
    }
    clusters.push(now);
  }
  return clusters.flatMap((c) => {
    const start = c.members.length > 1 ? sixteenth(c.start) : c.start;
    return c.members.map((m, i) => [m, start + c.offsets[i]!] as const);
  });
};

/** Gives every hole a place of its own in its joist, centers apart (IRC R502.8.1 and the crew's 3 in), order kept. */
export const spreadHoles = <T extends { readonly hole: Hole }>(
  network: Pick<Network, 'frame' | 'framing'>,
  list: readonly T[],
): T[] => {
  const joists = new Map<string, Placed<T>[]>();
  const ways = new Map<T, Pt>();
  for (const item of list) {
    const { at } = item.hole;
    const p = toFrame(network.frame, [at[0], at[1]]);
    const index = regionAt(network.framing, p);
    const region = network.framing[index]!;
    const k = Math.round((dot(region.normal, p) - region.first) / region.spacing);
    const inJob = turnAbout(region.normal, [0, 0], -network.frame.turn);
    const way: Pt = [-inJob[1], inJob[0]];
    ways.set(item, way);
    const key = `${index}|${k}|${Math.round(at[2] * 64)}`;
    const along = at[0] * way[0] + at[1] * way[1];
    joists.set(key, [...(joists.get(key) ?? []), { item, hole: item.hole, along }]);
  }
  const moved = new Map<T, T>();
  for (const holes of joists.values())
    for (const [{ item, hole, along }, to] of setApart(holes)) {
      const [dx, dy] = ways.get(item)!;
      const by = to - along;
      const at: Pt3 = by === 0 ? hole.at : [hole.at[0] + dx * by, hole.at[1] + dy * by, hole.at[2]];
      moved.set(item, { ...item, hole: { ...hole, at } });
    }
  return list.map((item) => moved.get(item)!);
};
