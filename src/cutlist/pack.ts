import type { CoilSet } from './coilSets';
import type { Coil, Whole } from './model';
import { patterns } from './patterns';

export interface Packing {
  readonly coils: readonly Coil[];
  /** Worth of the remnants that count. */
  readonly credit: number;
}
/** Steps left to the search; shared by all sets of one question, so that an answer never depends on time. */
export interface Budget {
  nodes: number;
}
const MOST_PATTERNS = 400;
/** Money is compared to a millionth of a cent: rates are fractions. */
export const NEAR = 1e-4;

/** Which coils of a set keep a remnant that counts: every choice that the leftover allows, the most promising first. */
const keepers = (
  whole: Whole,
  set: CoilSet,
  left: number,
): { readonly counts: readonly number[]; readonly most: number }[] => {
  const shortest = whole.pieces.at(-1)!.length;
  const found: { counts: readonly number[]; most: number }[] = [];
  const walk = (i: number, counts: number[], kept: number): void => {
    if (i === whole.stocks.length) {
      found.push({ counts: [...counts], most: mostOf(whole, counts, left, shortest) });
      return;
    }
    const { rate, length } = whole.stocks[i]!;
    const most = rate > 0 && length - shortest >= whole.keep ? set.counts[i]! : 0;
    for (let n = 0; n <= most && (n === 0 || kept + n * whole.keep <= left); n++) {
      counts[i] = n;
      walk(i + 1, counts, n === 0 ? kept : kept + n * whole.keep);
    }
    counts[i] = 0;
  };
  walk(
    0,
    whole.stocks.map(() => 0),
    0,
  );
  return found.sort((a, b) => b.most - a.most);
};

/** The most that remnants of `left` in all can be worth in these coils, each at least `keep` long. */
const mostOf = (whole: Whole, keeping: readonly number[], left: number, shortest: number): number => {
  const coils = keeping.map((count, i) => ({ count, ...whole.stocks[i]! })).filter((coil) => coil.count > 0);
  let rest = left - coils.reduce((sum, coil) => sum + coil.count * whole.keep, 0);
  if (rest < 0 || coils.length === 0) return coils.length === 0 ? 0 : Number.NEGATIVE_INFINITY;
  let worth = 0;
  for (const { count, length, rate } of coils.sort((a, b) => b.rate - a.rate)) {
    const put = Math.min(rest, count * (length - shortest - whole.keep));
    worth += (count * whole.keep + put) * rate;
    rest -= put;
  }
  return worth;
};

/**
 * Packs all pieces into exactly the coils of a set, for remnants worth more than `atLeast`. Coils that keep a remnant
 * are filled last, from a pool; every other coil is led by the longest piece not yet placed and filled by a pattern
 * that leaves no room for another piece, within the waste the set can afford. `complete` = nothing was left untried.
 */
export const packSet = (
  whole: Whole,
  set: CoilSet,
  atLeast: number,
  budget: Budget,
): { readonly best: Packing | null; readonly complete: boolean } => {
  const lengths = whole.pieces.map((piece) => piece.length);
  const shortest = lengths.at(-1)!;
  const left = set.capacity - whole.total;
  let best: Packing | null = null;
  let bar = atLeast;
  let complete = true;
  const take = (packing: Packing): void => {
    best = packing;
    bar = packing.credit;
  };

  for (const { counts: keeping, most } of keepers(whole, set, left)) {
    if (most <= bar + NEAR) continue;
    const none = keeping.every((count) => count === 0);
    const free = set.counts.map((count, i) => count - keeping[i]!);
    const remaining = whole.pieces.map((piece) => piece.count);
    const pool = lengths.map(() => 0);
    const room = keeping.reduce((sum, count, i) => sum + count * Math.max(0, whole.stocks[i]!.length - whole.keep), 0);
    const needed = (counts: readonly number[]): number =>
      counts.reduce((sum, count, i) => sum + count * lengths[i]!, 0);
    const roomIn = (counts: readonly number[]): number =>
      counts.reduce((sum, count, i) => sum + count * whole.stocks[i]!.length, 0);
    const kept = keeping.reduce((sum, count) => sum + count, 0);
    const done: Coil[] = [];
    const failed = new Map<string, number>();
    // Only sets with a remnant gain by wasting less; elsewhere the waste is what it is.
    const limits = none ? [left] : wasteSteps(left - whole.keep);

    for (const limit of limits) {
      /** Answers false where the budget ended inside. */
      const place = (wasted: number, pooled: number, lead: number): boolean => {
        if (budget.nodes-- <= 0) return false;
        if (mostOf(whole, keeping, left - wasted, shortest) <= bar + NEAR) return true;
        if (needed(remaining) + pooled > roomIn(free) + room) return true;
        const first = remaining.findIndex((count) => count > 0);
        const coilsLeft = free.some((count) => count > 0);
        if (first < 0 || !coilsLeft) {
          // A coil without a piece belongs to a smaller set.
          if (coilsLeft) return true;
          const rest = remaining.map((count, i) => count + pool[i]!);
          const closed = keepRemnants(whole, keeping, rest, budget, bar);
          if (closed.best) take({ coils: [...done, ...closed.best.coils], credit: closed.best.credit });
          return closed.complete;
        }
        const key = `${remaining.join()}|${free.join()}|${kept > 1 ? pool.join() : pooled}|${lead}`;
        const tried = failed.get(key);
        if (tried !== undefined && tried <= wasted) return true;
        const before = bar;
        let through = true;
        const length = lengths[first]!;
        // Into the pool first, and not again once a coil was led by this length: the same choice would come twice.
        if (lead !== first && pooled + length <= room) {
          remaining[first]!--;
          pool[first]!++;
          through = place(wasted, pooled + length, lead) && through;
          remaining[first]!++;
          pool[first]!--;
        }
        for (let i = 0; i < free.length; i++) {
          const coil = whole.stocks[i]!.length;
          if (free[i]! === 0 || coil < length) continue;
          remaining[first]!--;
          const { list, whole: all } = patterns(
            lengths,
            remaining,
            first,
            coil - length,
            limit - wasted,
            MOST_PATTERNS,
          );
          if (!all) through = false;
          free[i]!--;
          for (const { counts, left: spare } of list) {
            for (let k = first; k < counts.length; k++) remaining[k]! -= counts[k]!;
            done.push({ stock: i, counts: counts.map((count, k) => count + (k === first ? 1 : 0)) });
            through = place(wasted + spare, pooled, first) && through;
            done.pop();
            for (let k = first; k < counts.length; k++) remaining[k]! += counts[k]!;
            if (none && best) break;
            if (budget.nodes <= 0) {
              through = false;
              break;
            }
          }
          free[i]!++;
          remaining[first]!++;
          if ((none && best) || budget.nodes <= 0) break;
        }
        if (budget.nodes <= 0) return false;
        if (through && bar === before) failed.set(key, wasted);
        return through;
      };
      const through = place(0, 0, -1);
      if (limit === limits.at(-1) && !through) complete = false;
      if (budget.nodes <= 0) complete = false;
      if (most <= bar + NEAR || budget.nodes <= 0) break;
      failed.clear();
    }
    if (none && best) break;
  }
  return { best, complete };
};

/** No waste at all, then a little, then twice as much, up to all that may be wasted. */
const wasteSteps = (most: number): number[] => {
  const steps = [0];
  for (let step = Math.ceil(most / 64); step > 0 && step < most; step *= 2) steps.push(step);
  return most > 0 ? [...steps, most] : steps;
};

/** Pieces into the coils that keep a remnant: longest first, into each different coil in turn. */
const keepRemnants = (
  whole: Whole,
  keeping: readonly number[],
  pieces: readonly number[],
  budget: Budget,
  bar: number,
): { readonly best: Packing | null; readonly complete: boolean } => {
  const coils = keeping.flatMap((count, stock) =>
    Array.from({ length: count }, () => ({
      stock,
      room: whole.stocks[stock]!.length - whole.keep,
      counts: pieces.map(() => 0),
      any: false,
    })),
  );
  const list = pieces.flatMap((count, i) => Array.from({ length: count }, () => i));
  const total = list.reduce((sum, i) => sum + whole.pieces[i]!.length, 0);
  if (coils.length === 0) return { best: list.length === 0 ? { coils: [], credit: 0 } : null, complete: true };
  const left = coils.reduce((sum, { stock }) => sum + whole.stocks[stock]!.length, 0) - total;
  const most = mostOf(whole, keeping, left, 0);
  let best: Packing | null = null;
  let goal = bar;
  const walk = (k: number): boolean => {
    if (goal >= most - NEAR) return true;
    if (k === list.length) {
      if (coils.some((coil) => !coil.any)) return true;
      const credit = coils.reduce((sum, { stock, room }) => sum + (room + whole.keep) * whole.stocks[stock]!.rate, 0);
      if (credit > goal + NEAR) {
        goal = credit;
        best = { coils: coils.map(({ stock, counts }) => ({ stock, counts: [...counts] })), credit };
      }
      return true;
    }
    if (budget.nodes-- <= 0) return false;
    const piece = list[k]!;
    const length = whole.pieces[piece]!.length;
    let through = true;
    const seen = new Set<string>();
    for (const coil of coils) {
      const same = `${coil.stock}|${coil.room}`;
      if (coil.room < length || seen.has(same)) continue;
      seen.add(same);
      const was = coil.any;
      coil.room -= length;
      coil.counts[piece]!++;
      coil.any = true;
      through = walk(k + 1) && through;
      coil.room += length;
      coil.counts[piece]!--;
      coil.any = was;
    }
    return through;
  };
  const complete = walk(0);
  return { best, complete };
};
