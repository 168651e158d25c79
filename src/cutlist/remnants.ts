import type { CoilSet } from './coilSets';
import type { Coil, Whole } from './model';

/** Coils packed, and the worth of the remnants that count. */
export interface Packing {
  readonly coils: readonly Coil[];
  readonly credit: number;
}
/** Steps left to the search, never time: the same question always has the same answer. */
export interface Budget {
  nodes: number;
}
/** `complete` = nothing was left untried. */
export interface Tried {
  readonly best: Packing | null;
  readonly complete: boolean;
}
/** Money is compared to a millionth of a cent: rates are fractions. */
export const NEAR = 1e-4;

/** Which coils of a set keep a remnant that counts, and the most those can be worth. */
export interface Keeping {
  readonly counts: readonly number[];
  readonly most: number;
}

/** The most that remnants of `left` in all can be worth in these coils, each at least `keep` long and none a whole coil. */
export const mostWorth = (whole: Whole, keeping: readonly number[], left: number): number => {
  const coils = keeping.map((count, i) => ({ count, ...whole.stocks[i]! })).filter((coil) => coil.count > 0);
  if (coils.length === 0) return 0;
  const shortest = whole.pieces.at(-1)!.length;
  let rest = left - coils.reduce((sum, coil) => sum + coil.count * whole.keep, 0);
  if (rest < 0) return Number.NEGATIVE_INFINITY;
  let worth = 0;
  for (const { count, length, rate } of coils.sort((a, b) => b.rate - a.rate)) {
    const put = Math.min(rest, count * (length - shortest - whole.keep));
    worth += (count * whole.keep + put) * rate;
    rest -= put;
  }
  return worth;
};

/** More choices than this are never looked at; then nothing is proven. */
const MOST_KEEPINGS = 400;

/** Every choice of coils that keep a remnant, as far as the leftover allows, the most promising first. */
export const keepings = (
  whole: Whole,
  set: CoilSet,
  left: number,
): { readonly list: readonly Keeping[]; readonly all: boolean } => {
  const shortest = whole.pieces.at(-1)!.length;
  const found: Keeping[] = [];
  let all = true;
  const walk = (i: number, counts: readonly number[], kept: number): void => {
    if (found.length >= MOST_KEEPINGS) {
      all = false;
      return;
    }
    if (i === whole.stocks.length) {
      found.push({ counts, most: mostWorth(whole, counts, left) });
      return;
    }
    const { rate, length } = whole.stocks[i]!;
    const most = rate > 0 && length - shortest >= whole.keep ? set.counts[i]! : 0;
    walk(i + 1, [...counts, 0], kept);
    for (let n = 1; n <= most && kept + n * whole.keep <= left; n++) walk(i + 1, [...counts, n], kept + n * whole.keep);
  };
  walk(0, [], 0);
  return { list: found.sort((a, b) => b.most - a.most), all };
};

/** All the given pieces into the coils that keep a remnant, for more than `bar`: longest first, into each different coil in turn. */
export const fillKeepers = (
  whole: Whole,
  keeping: readonly number[],
  pieces: readonly number[],
  budget: Budget,
  bar: number,
): Tried => {
  const coils = keeping.flatMap((count, stock) =>
    Array.from({ length: count }, () => ({
      stock,
      room: whole.stocks[stock]!.length - whole.keep,
      counts: pieces.map(() => 0),
      pieces: 0,
    })),
  );
  const list = pieces.flatMap((count, i) => Array.from({ length: count }, () => i));
  if (coils.length === 0) return { best: list.length === 0 ? { coils: [], credit: 0 } : null, complete: true };
  const length = (i: number): number => whole.pieces[i]!.length;
  const left =
    coils.reduce((sum, { stock }) => sum + whole.stocks[stock]!.length, 0) -
    list.reduce((sum, i) => sum + length(i), 0);
  const most = mostWorth(whole, keeping, left);
  let best: Packing | null = null;
  let goal = bar;
  const walk = (k: number): boolean => {
    if (most <= goal + NEAR) return true;
    if (k === list.length) {
      // A coil without a piece belongs to a smaller set.
      if (coils.some((coil) => coil.pieces === 0)) return true;
      const credit = coils.reduce((sum, { stock, room }) => sum + (room + whole.keep) * whole.stocks[stock]!.rate, 0);
      if (credit > goal + NEAR) {
        goal = credit;
        best = { coils: coils.map(({ stock, counts }) => ({ stock, counts: [...counts] })), credit };
      }
      return true;
    }
    if (budget.nodes-- <= 0) return false;
    const piece = list[k]!;
    let through = true;
    const seen = new Set<string>();
    for (const coil of coils) {
      const same = `${coil.stock}|${coil.room}`;
      if (coil.room < length(piece) || seen.has(same)) continue;
      seen.add(same);
      coil.room -= length(piece);
      coil.counts[piece]!++;
      coil.pieces++;
      through = walk(k + 1) && through;
      coil.room += length(piece);
      coil.counts[piece]!--;
      coil.pieces--;
    }
    return through;
  };
  const complete = walk(0);
  return { best, complete };
};
