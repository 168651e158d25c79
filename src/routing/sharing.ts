import type { Leg, LegBy } from '../facts/result';
import type { Id, In, Pt3 } from '../units/types';
import { distance3 } from './cutLength';

/** How cables that share a place lie there. Side by side on a board with a cable's width between is not together. */
export type Lie = 'bundle' | 'board' | 'raceway' | 'apart';
export const lieOf = (by: LegBy): Lie => {
  switch (by) {
    case 'running board':
    case 'wall board':
    case 'joist underside':
      return 'board';
    case 'raceway':
      return 'raceway';
    case 'sleeve': // one sleeve a cable
    case 'inside box':
    case 'inside panel':
      return 'apart';
    default:
      return 'bundle';
  }
};

/** A stretch of a leg over which the same cables run. `key` is the same for every cable on it. */
export interface Piece {
  readonly key: string;
  readonly leg: number;
  readonly from: Pt3;
  readonly to: Pt3;
  readonly length: In;
  readonly by: LegBy;
  readonly cable: 'old' | 'new';
}
export interface Routed {
  readonly homeRun: Id;
  readonly legs: readonly Leg[];
}

const ROUND = 1000; // thousandths of an inch: far over float noise, far under 1/64
const near = (x: number): number => Math.round(x * ROUND) + 0;

interface OnLine {
  readonly line: string;
  readonly from: number;
  readonly to: number;
}

/** The straight line a leg lies on, as a key, and where on it the leg starts and ends. */
const onLine = (leg: Leg): OnLine => {
  const length = distance3(leg.from, leg.to);
  const raw = [0, 1, 2].map((k) => (leg.to[k]! - leg.from[k]!) / length);
  const leading = raw.find((x) => Math.abs(x) > 1e-9) ?? 1;
  const d = raw.map((x) => (leading < 0 ? -x : x));
  const along = (p: Pt3) => p[0] * d[0]! + p[1] * d[1]! + p[2] * d[2]!;
  const t = along(leg.from);
  const foot = [0, 1, 2].map((k) => near(leg.from[k]! - t * d[k]!));
  return { line: [...d.map((x) => near(x * 100)), ...foot].join(), from: t, to: along(leg.to) };
};

/** Cuts every leg where any cable on its line starts or ends, so that equal keys mean the same place in space. */
export const piecesOf = (routes: readonly Routed[]): ReadonlyMap<Id, readonly Piece[]> => {
  const lines = new Map<string, number[]>();
  const located = routes.map((r) =>
    r.legs.map((leg) => {
      if (distance3(leg.from, leg.to) === 0) return null;
      const on = onLine(leg);
      const stops = lines.get(on.line) ?? [];
      stops.push(on.from, on.to);
      lines.set(on.line, stops);
      return on;
    }),
  );
  for (const stops of lines.values()) stops.sort((a, b) => a - b);
  return new Map(
    routes.map((r, i) => [
      r.homeRun,
      r.legs.flatMap((leg, j) => {
        const on = located[i]![j];
        return on ? cutAt(leg, j, on, lines.get(on.line)!) : [];
      }),
    ]),
  );
};

const cutAt = (leg: Leg, index: number, on: OnLine, stops: readonly number[]): Piece[] => {
  const low = Math.min(on.from, on.to);
  const high = Math.max(on.from, on.to);
  const marks = [low];
  for (const s of stops) if (s < high && near(s) > near(marks.at(-1)!) && near(s) < near(high)) marks.push(s);
  marks.push(high);
  if (on.to < on.from) marks.reverse();
  const at = (t: number): Pt3 => {
    if (t === on.from) return leg.from;
    if (t === on.to) return leg.to;
    const share = (t - on.from) / (on.to - on.from);
    return [0, 1, 2].map((k) => leg.from[k]! + (leg.to[k]! - leg.from[k]!) * share) as unknown as Pt3;
  };
  return marks.slice(1).map((t, k) => {
    const from = marks[k]!;
    const ends = [near(from), near(t)].sort((a, b) => a - b);
    return {
      key: `${on.line}|${ends.join()}|${lieOf(leg.by)}`,
      leg: index,
      from: at(from),
      to: at(t),
      length: Math.abs(t - from),
      by: leg.by,
      cable: leg.cable,
    };
  });
};

/** Which cables lie on each piece, ids sorted. */
export const usersOf = (pieces: ReadonlyMap<Id, readonly Piece[]>): ReadonlyMap<string, readonly Id[]> => {
  const users = new Map<string, Set<Id>>();
  for (const [homeRun, list] of pieces)
    for (const p of list) users.set(p.key, (users.get(p.key) ?? new Set()).add(homeRun));
  return new Map([...users].map(([key, set]) => [key, [...set].sort()]));
};

/** The longest unbroken stretch over which two cables lie together in the same manner, inches. */
export const longestTogether = (
  a: readonly Piece[],
  with_: Id,
  lie: Lie,
  users: ReadonlyMap<string, readonly Id[]>,
): In => {
  let best = 0;
  let now = 0;
  for (const p of a) {
    now = lieOf(p.by) === lie && users.get(p.key)!.includes(with_) ? now + p.length : 0;
    best = Math.max(best, now);
  }
  return best;
};
