import { holeCentersApart } from '../calculations/holes';
import { insideParts, type Polygon } from '../geometry/polygon';
import { add, dot, scale, turnAbout } from '../geometry/vector';
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

/** Longer than any room. */
const FAR_IN = 24_000;
/** What a drill needs between the middle of a hole and the wall a joist ends on. Common practice, no source. */
const FROM_WALL_IN = 2;

/**
 * How far along its joist a hole may be set: inside the room, for a drill has no way to the joist's end over the wall.
 * Never less than where the cables cross as it is.
 */
const roomAlong = <T>(outline: Polygon, way: Pt, holes: readonly Placed<T>[]): [from: In, to: In] => {
  const along = holes.map((h) => h.along);
  const [low, high] = [Math.min(...along), Math.max(...along)];
  const { at } = holes[0]!.hole;
  const zero = add([at[0], at[1]], scale(way, -holes[0]!.along));
  const parts = insideParts(add(zero, scale(way, -FAR_IN)), add(zero, scale(way, FAR_IN)), outline).map((part) =>
    part.map((t) => (2 * t - 1) * FAR_IN),
  );
  const middle = (low + high) / 2;
  const part = parts.find((p) => p[0]! <= middle && middle <= p[1]!);
  if (!part) return [low, high];
  return [
    Math.min(low, Math.ceil((part[0]! + FROM_WALL_IN) * 16) / 16),
    Math.max(high, Math.floor((part[1]! - FROM_WALL_IN) * 16) / 16),
  ];
};

/**
 * Holes of one joist set apart along it: each as near to where its cables cross as its neighbors and the walls allow.
 * Neighbors that would come too near are set side by side about their common middle.
 */
const setApart = <T>(holes: readonly Placed<T>[], [from, to]: readonly [In, In]): (readonly [Placed<T>, In])[] => {
  const clusters: Cluster<T>[] = [];
  const sorted = [...holes].sort((a, b) => a.along - b.along);
  for (const hole of sorted) {
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
  const set = clusters.flatMap((c) => {
    const start = c.members.length > 1 ? sixteenth(c.start) : c.start;
    return c.members.map((m, i) => [m, start + c.offsets[i]!] as const);
  });
  // least shift into bounds: places less the room their neighbors before them need never fall, so they are clamped as they are
  let before = 0;
  const needed = sorted.map((h, i) => {
    before += i > 0 ? gap(sorted[i - 1]!, h) : 0;
    return before;
  });
  const last = Math.max(from, to - before);
  return set.map(([hole, at], i) => {
    const free = at - needed[i]!;
    return [hole, free < from ? from + needed[i]! : free > last ? last + needed[i]! : at] as const;
  });
};

/** Gives every hole a place of its own in its joist, centers apart (IRC R502.8.1 and the crew's 3 in), order kept. */
export const spreadHoles = <T extends { readonly hole: Hole }>(
  network: Pick<Network, 'frame' | 'framing'>,
  outline: Polygon,
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
    for (const [{ item, hole, along }, to] of setApart(holes, roomAlong(outline, ways.get(holes[0]!.item)!, holes))) {
      const [dx, dy] = ways.get(item)!;
      const by = to - along;
      const at: Pt3 = by === 0 ? hole.at : [hole.at[0] + dx * by, hole.at[1] + dy * by, hole.at[2]];
      moved.set(item, { ...item, hole: { ...hole, at } });
    }
  return list.map((item) => moved.get(item)!);
};
