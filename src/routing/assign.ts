import type { Mills } from '../units/money';
import { type Assignment, costOf, type Problem } from './choice';
import { Standing } from './standing';

/** A guess at a cable's share of its box: a fourth of the boxes of four such cables. Guides the search only. */
const boxShares = (problem: Problem): number[] =>
  problem.packer.types.map((_, i) => {
    const counts = problem.packer.types.map((_, j) => (j === i ? 4 : 0));
    return (problem.packer.pack(counts)?.mills ?? 0) / 4;
  });

/** Own price with every penalty that no other home run shares. */
const ownPrices = (problem: Problem): number[][] => {
  const sharers = problem.penalties.map(() => 0);
  for (const choices of problem.runs) for (const p of new Set(choices.flatMap((c) => c.penalties))) sharers[p]!++;
  return problem.runs.map((choices) =>
    choices.map((c) => c.mills + c.penalties.reduce((s, p) => s + problem.penalties[p]! / Math.max(1, sharers[p]!), 0)),
  );
};

interface Search {
  readonly problem: Problem;
  readonly own: readonly (readonly number[])[];
  readonly shares: readonly number[];
  /** Choice indices by run and spot; -1 = without a spot. */
  readonly bySpot: readonly ReadonlyMap<number, readonly number[]>[];
}
const prepare = (problem: Problem): Search => ({
  problem,
  own: ownPrices(problem),
  shares: boxShares(problem),
  bySpot: problem.runs.map((choices) => {
    const map = new Map<number, number[]>();
    choices.forEach((c, i) => {
      const key = c.spot ?? -1;
      map.set(key, [...(map.get(key) ?? []), i]);
    });
    return map;
  }),
});

const allowed = (s: Search, run: number, open: readonly number[]): number[] => {
  const list: number[] = [...(s.bySpot[run]!.get(-1) ?? [])];
  for (const spot of open) list.push(...(s.bySpot[run]!.get(spot) ?? []));
  return list;
};
const guess = (s: Search, run: number, i: number): number => {
  const c = s.problem.runs[run]![i]!;
  return s.own[run]![i]! + (c.load === null ? 0 : s.shares[c.load]!);
};
const cheapest = (s: Search, run: number, list: readonly number[]): number => {
  let best = -1;
  let least = Number.POSITIVE_INFINITY;
  for (const i of list) {
    const g = guess(s, run, i);
    if (g < least || (g === least && i < best)) {
      least = g;
      best = i;
    }
  }
  return best;
};

type Change = { readonly run: number; readonly to: number; readonly loss: number };

/** Applies changes one after the other and keeps as many of them as come out cheapest; none where none does. */
const tryChanges = (standing: Standing, changes: readonly Change[], least: Mills): Mills => {
  const undo: [run: number, back: number][] = [];
  let best = least;
  let keep = 0;
  for (const { run, to } of changes) {
    undo.push([run, standing.picks[run]!]);
    standing.set(run, to);
    const cost = standing.cost(best);
    if (cost === Number.POSITIVE_INFINITY) continue;
    best = cost;
    keep = undo.length;
  }
  for (const [run, back] of undo.slice(keep).reverse()) standing.set(run, back);
  return best;
};

/** Changes that lose least first. */
const inOrder = (changes: readonly Change[]): Change[] => [...changes].sort((a, b) => a.loss - b.loss || a.run - b.run);

/** Best seen first guess with only these spots open, then single and prefix moves until none saves money. */
const solveOpen = (s: Search, open: readonly number[]): Assignment | null => {
  const { problem } = s;
  const lists = problem.runs.map((_, r) => allowed(s, r, open));
  if (lists.some((l) => l.length === 0)) return null;
  const standing = new Standing(
    problem,
    open,
    lists.map((list, r) => cheapest(s, r, list)),
  );
  const { picks } = standing;
  const change = (run: number, to: number): Change[] =>
    to < 0 || to === picks[run] ? [] : [{ run, to, loss: s.own[run]![to]! - s.own[run]![picks[run]!]! }];
  let mills = standing.cost();
  for (let before = Number.NaN; before !== mills; ) {
    before = mills;
    for (let r = 0; r < picks.length; r++)
      for (const to of lists[r]!) if (to !== picks[r]) mills = tryChanges(standing, change(r, to), mills);
    for (const spot of [-1, ...open])
      mills = tryChanges(standing, inOrder(pulled(s, lists, picks, spot, change)), mills);
    for (const spot of open) mills = tryChanges(standing, inOrder(pushed(s, lists, picks, spot, change)), mills);
    for (let p = 0; p < problem.penalties.length; p++)
      mills = tryTogether(standing, withoutPenalty(s, lists, picks, p, change), mills);
  }
  return { picks: [...picks], mills: costOf(problem, picks) };
};

/** All changes or none. */
const tryTogether = (standing: Standing, changes: readonly Change[], least: Mills): Mills => {
  const back = changes.map(({ run }) => [run, standing.picks[run]!] as const);
  for (const { run, to } of changes) standing.set(run, to);
  const cost = changes.length > 0 ? standing.cost(least) : Number.POSITIVE_INFINITY;
  if (cost < Number.POSITIVE_INFINITY) return cost;
  for (const [run, to] of back) standing.set(run, to);
  return least;
};

type ChangeTo = (run: number, to: number) => Change[];

/** Home runs that could come to a spot. */
const pulled = (s: Search, lists: readonly number[][], picks: readonly number[], spot: number, change: ChangeTo) =>
  lists.flatMap((list, run) => {
    const at = (i: number) => s.problem.runs[run]![i]!.spot ?? -1;
    if (at(picks[run]!) === spot) return [];
    return change(
      run,
      cheapest(
        s,
        run,
        list.filter((i) => at(i) === spot),
      ),
    );
  });

/** Home runs that could go from a spot to their next best. */
const pushed = (s: Search, lists: readonly number[][], picks: readonly number[], spot: number, change: ChangeTo) =>
  lists.flatMap((list, run) => {
    const at = (i: number) => s.problem.runs[run]![i]!.spot ?? -1;
    if (at(picks[run]!) !== spot) return [];
    return change(
      run,
      cheapest(
        s,
        run,
        list.filter((i) => at(i) !== spot),
      ),
    );
  });

/** All home runs of a penalty to their cheapest choice that does not bring it. */
const withoutPenalty = (s: Search, lists: readonly number[][], picks: readonly number[], p: number, change: ChangeTo) =>
  picks.flatMap((_, run) => {
    const choices = s.problem.runs[run]!;
    if (!choices.some((c) => c.penalties.includes(p))) return [];
    return change(
      run,
      cheapest(
        s,
        run,
        lists[run]!.filter((i) => !choices[i]!.penalties.includes(p)),
      ),
    );
  });

/** A bound from below on anything with just these spots open: every run at its own cheapest, spots and boxes free. */
const floorOf = (s: Search, open: readonly number[]): number => {
  let sum = 0;
  for (let r = 0; r < s.problem.runs.length; r++) {
    let least = Number.POSITIVE_INFINITY;
    for (const i of allowed(s, r, open)) least = Math.min(least, s.problem.runs[r]![i]!.mills);
    sum += least;
  }
  return sum;
};

/** Up to this many sets of open spots all are looked at (most fall to their bound at once); beyond it, a local search. */
const MOST_SETS = 2500;

const choose = (n: number, k: number): number => {
  let c = 1;
  for (let i = 0; i < k; i++) c = (c * (n - i)) / (i + 1);
  return c;
};
/** All sets of at most `most` of n spots, small ones first, in a fixed order. */
const setsOf = (n: number, most: number): number[][] => {
  let layer: number[][] = [[]];
  const all: number[][] = [[]];
  for (let k = 1; k <= most; k++) {
    layer = layer.flatMap((set) => {
      const next: number[][] = [];
      for (let j = (set.at(-1) ?? -1) + 1; j < n; j++) next.push([...set, j]);
      return next;
    });
    all.push(...layer);
  }
  return all;
};

/**
 * Ways, spots and boxes chosen together for the least money. Few spots: every set of open spots is looked at, cheapest
 * bound first. Many: sets are grown, swapped and closed one spot at a time. Inside a set, single moves and prefix moves
 * against the true objective. Cold and deterministic.
 */
export const assign = (problem: Problem): Assignment | null => {
  const s = prepare(problem);
  const count = problem.spots.length;
  const solved = new Set<string>();
  let best: Assignment | null = null;
  let bestOpen: readonly number[] = [];
  const consider = (open: readonly number[]): boolean => {
    const sorted = [...open].sort((a, b) => a - b);
    const key = sorted.join();
    if (solved.has(key)) return false;
    solved.add(key);
    if (best && floorOf(s, sorted) >= best.mills) return false;
    const found = solveOpen(s, sorted);
    if (!found || found.mills === Number.POSITIVE_INFINITY || (best && found.mills >= best.mills)) return false;
    best = found;
    bestOpen = sorted;
    return true;
  };
  const most = Math.min(problem.maxSpots, count);
  let sets = 0;
  for (let k = 0; k <= most; k++) sets += choose(count, k);
  if (sets <= MOST_SETS) {
    const all = setsOf(count, most).map((open) => ({ open, floor: floorOf(s, open) }));
    all.sort((a, b) => a.floor - b.floor);
    for (const { open } of all) consider(open);
    return best;
  }
  const forced = forcedSpots(problem);
  if (!forced) return null;
  consider(forced);
  for (let j = 0; j < count; j++) consider([j]);
  for (let improved = true; improved; ) {
    improved = false;
    const base = bestOpen;
    if (base.length < problem.maxSpots)
      for (let j = 0; j < count; j++) if (!base.includes(j)) improved = consider([...base, j]) || improved;
    for (const gone of base) {
      const rest = base.filter((k) => k !== gone);
      improved = consider(rest) || improved;
      for (let j = 0; j < count; j++) if (!base.includes(j)) improved = consider([...rest, j]) || improved;
    }
  }
  return best;
};

/** Spots needed so that every home run has some choice at all: greedy cover, most runs first. null = there is no way. */
const forcedSpots = (problem: Problem): number[] | null => {
  const open: number[] = [];
  for (;;) {
    const stuck = problem.runs.filter((choices) => !choices.some((c) => c.spot === null || open.includes(c.spot)));
    if (stuck.length === 0) return open.length <= problem.maxSpots ? open : null;
    const votes = problem.spots.map((_, j) => stuck.filter((choices) => choices.some((c) => c.spot === j)).length);
    const most = Math.max(0, ...votes);
    if (most === 0) return null;
    open.push(votes.indexOf(most));
  }
};
