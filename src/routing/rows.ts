import type { RowCable, RowLimit, RowPolicy } from '../calculations/cableRows';
import type { Leg, Row } from '../facts/result';
import { compareText } from '../units/order';
import type { Id, In, Pt3 } from '../units/types';
import { distance3 } from './cutLength';
import type { Hole } from './holes';
import { ON_BOARD } from './share';
import { type Lie, lieOf, longestTogether, type Piece, piecesOf, usersOf } from './sharing';

/** Together for more than this and cables count as a row (310.15(C)(1); 334.80). */
export const TOGETHER_IN = 24;

export interface Member {
  readonly homeRun: Id;
  readonly legs: readonly Leg[];
  readonly cable: (which: 'old' | 'new') => RowCable;
}
export interface RowRules {
  /** Do these cables, together over so many inches, hold? */
  readonly limit: (
    cables: readonly RowCable[],
    policy: Pick<RowPolicy, 'togetherIn' | 'spaced' | 'inside'>,
  ) => RowLimit;
  /** Smaller = bears less company: goes first. */
  readonly bears: (cable: RowCable) => number;
  /** Groups the user wants in one row. */
  readonly pinned: readonly (readonly Id[])[];
}
export interface RowsAnswer {
  readonly rows: readonly Omit<Row, 'holes'>[];
  readonly legs: ReadonlyMap<Id, readonly Leg[]>;
}

const LIES: readonly Lie[] = ['bundle', 'board', 'raceway'];

interface Lane {
  readonly members: Id[];
}

/**
 * Puts cables that share their way for more than 24 in into rows that hold: the ones that bear least company first,
 * each into the first row of its companions that still holds with it. A cable alone in its row gets none.
 */
export const rowsOf = (members: readonly Member[], rules: RowRules): RowsAnswer => {
  const sorted = [...members].sort((a, b) => compareText(a.homeRun, b.homeRun));
  const byId = new Map(sorted.map((m) => [m.homeRun, m]));
  const pieces = piecesOf(sorted);
  const users = usersOf(pieces);
  const rows: Omit<Row, 'holes'>[] = [];
  /** Row of a home run on pieces of a lie. */
  const rowAt = new Map<string, string>();

  for (const lie of LIES) {
    const together = companions(sorted, pieces, users, lie);
    const order = inOrder(sorted, rules, together);
    const lanes: Lane[] = [];
    for (const id of order) {
      const friends = together.get(id)!;
      const lane = lanes.find(
        (l) =>
          l.members.some((m) => friends.has(m)) && holds([...l.members, id], lie, byId, pieces, users, together, rules),
      );
      if (lane) lane.members.push(id);
      else lanes.push({ members: [id] });
    }
    for (const { members: ids } of lanes) {
      if (ids.length < 2) continue;
      const row = describeRow(ids.sort(compareText), lie, byId, pieces, users, rules);
      if (!row) continue;
      rows.push(row);
      for (const id of ids) rowAt.set(`${id}|${lie}`, row.id);
    }
  }
  const members_ = new Map(rows.map((r) => [r.id, new Set(r.homeRuns)]));
  const legs = new Map(
    sorted.map((m) => [
      m.homeRun,
      relabel(m.legs, pieces.get(m.homeRun)!, (p) => {
        const row = rowAt.get(`${m.homeRun}|${lieOf(p.by)}`);
        if (row === undefined) return null;
        const there = users.get(p.key)!.filter((id) => members_.get(row)!.has(id));
        return there.length > 1 ? row : null;
      }),
    ]),
  );
  return { rows: rows.sort((a, b) => compareText(a.id, b.id)), legs };
};

type Pieces = ReadonlyMap<Id, readonly Piece[]>;
type Users = ReadonlyMap<string, readonly Id[]>;
type Together = ReadonlyMap<Id, ReadonlyMap<Id, In>>;

/** With whom each cable lies together for more than 24 in, and how long. */
const companions = (members: readonly Member[], pieces: Pieces, users: Users, lie: Lie): Together =>
  new Map(
    members.map(({ homeRun }) => {
      const own = pieces.get(homeRun)!;
      const met = new Set(own.flatMap((p) => (lieOf(p.by) === lie ? users.get(p.key)! : [])));
      met.delete(homeRun);
      const far = new Map<Id, In>();
      for (const other of [...met].sort(compareText)) {
        const length = longestTogether(own, other, lie, users);
        if (length > TOGETHER_IN) far.set(other, length);
      }
      return [homeRun, far];
    }),
  );

const inOrder = (members: readonly Member[], rules: RowRules, together: Together): Id[] => {
  const pinRank = (id: Id) => {
    const at = rules.pinned.findIndex((group) => group.includes(id));
    return at < 0 ? rules.pinned.length : at;
  };
  const least = new Map(members.map((m) => [m.homeRun, Math.min(...cablesOf(m).map(rules.bears))]));
  return members
    .map((m) => m.homeRun)
    .filter((id) => together.get(id)!.size > 0)
    .sort((a, b) => pinRank(a) - pinRank(b) || least.get(a)! - least.get(b)! || compareText(a, b));
};

const cablesOf = (m: Member): RowCable[] =>
  (['old', 'new'] as const).filter((which) => m.legs.some((l) => l.cable === which)).map(m.cable);

/** Does every cross-section of a row hold, for the length its cables stay together? */
const holds = (
  ids: readonly Id[],
  lie: Lie,
  byId: ReadonlyMap<Id, Member>,
  pieces: Pieces,
  users: Users,
  together: Together,
  rules: RowRules,
): boolean => {
  if (lie === 'board' && ids.length > ON_BOARD) return false;
  const seen = new Set<string>();
  for (const id of ids)
    for (const p of pieces.get(id)!) {
      if (lieOf(p.by) !== lie) continue;
      const there = users.get(p.key)!.filter((other) => ids.includes(other));
      if (there.length < 2) continue;
      const cables = there.map((other) => cableOn(byId.get(other)!, pieces.get(other)!, p.key));
      const key = there.join() + cables.map((c) => c.cable.insulation).join();
      if (seen.has(key)) continue;
      seen.add(key);
      const length = Math.max(...there.map((a) => Math.max(0, ...there.map((b) => together.get(a)?.get(b) ?? 0))));
      if (!rules.limit(cables, policyFor(lie, length)).fits) return false;
    }
  return true;
};

const policyFor = (lie: Lie, length: In): Pick<RowPolicy, 'togetherIn' | 'spaced' | 'inside'> => ({
  togetherIn: length,
  spaced: lie === 'board',
  ...(lie === 'raceway' ? { inside: 'raceway' as const } : {}),
});

const cableOn = (m: Member, own: readonly Piece[], key: string): RowCable =>
  m.cable(own.find((p) => p.key === key)!.cable);

/** The longest unbroken stretch of a row, and what its fullest cross-section carries. */
const describeRow = (
  ids: readonly Id[],
  lie: Lie,
  byId: ReadonlyMap<Id, Member>,
  pieces: Pieces,
  users: Users,
  rules: RowRules,
): Omit<Row, 'holes'> | null => {
  let best: Piece[] = [];
  let bestLength = 0;
  let fullest: { there: Id[]; key: string } | null = null;
  for (const id of ids) {
    let run: Piece[] = [];
    for (const p of [...pieces.get(id)!, null]) {
      const there = p && lieOf(p.by) === lie ? users.get(p.key)!.filter((other) => ids.includes(other)) : [];
      if (p && there.length > 1) {
        run.push(p);
        if (!fullest || there.length > fullest.there.length) fullest = { there, key: p.key };
        continue;
      }
      const length = run.reduce((s, q) => s + q.length, 0);
      if (length > bestLength) {
        best = run;
        bestLength = length;
      }
      run = [];
    }
  }
  if (!fullest || bestLength <= TOGETHER_IN) return null;
  const { there, key } = fullest;
  const limit = rules.limit(
    there.map((id) => cableOn(byId.get(id)!, pieces.get(id)!, key)),
    policyFor(lie, bestLength),
  );
  return {
    id: `row-${lie === 'bundle' ? '' : `${lie}-`}${ids[0]}`,
    by: lie === 'bundle' ? 'loose' : lie === 'board' ? 'board' : 'raceway',
    length: bestLength,
    path: corners(best),
    homeRuns: ids,
    conductors: limit.conductors,
    factor: limit.factor,
    limit: limit.limit,
  };
};

const NEAR = 1e-6;
/** Points of consecutive pieces without the ones in the middle of a straight line. */
const corners = (run: readonly Piece[]): Pt3[] => {
  const points: Pt3[] = run.length > 0 ? [run[0]!.from, ...run.map((p) => p.to)] : [];
  return points.filter((p, i) => {
    const a = points[i - 1];
    const b = points[i + 1];
    return !a || !b || Math.abs(distance3(a, p) + distance3(p, b) - distance3(a, b)) > NEAR;
  });
};

/** The legs again, cut where their row begins or ends and marked with it. */
const relabel = (legs: readonly Leg[], pieces: readonly Piece[], rowOf: (p: Piece) => Id | null): Leg[] => {
  const marked: Leg[] = [];
  legs.forEach((leg, i) => {
    const own = pieces.filter((p) => p.leg === i);
    if (own.length === 0) {
      marked.push(leg);
      return;
    }
    for (const p of own) {
      const row = rowOf(p);
      const last = marked.at(-1);
      if (last && p !== own[0] && last.row === row) marked[marked.length - 1] = { ...last, to: p.to };
      else marked.push({ ...leg, from: p.from, to: p.to, row });
    }
  });
  return marked;
};

/** A row with the holes its cables take: bored where there are any. */
export const withHoles = (row: Omit<Row, 'holes'>, holes: readonly Hole[]): Row => ({
  ...row,
  by: row.by === 'loose' && holes.length > 0 ? 'bored' : row.by,
  holes,
});
