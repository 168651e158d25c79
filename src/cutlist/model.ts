import { roundHalfAway } from '../units/money';
import type { In } from '../units/types';

/** One length there is to cut from: a coil on sale, or a piece in the truck (costs nothing, one of each). */
export interface Stock {
  readonly id: string;
  readonly length: In;
  readonly dollars: number;
  /** null = any number can be bought. */
  readonly have: number | null;
}
export interface CutAsk {
  readonly stocks: readonly Stock[];
  readonly pieces: readonly { readonly length: In; readonly count: number }[];
  /** A remnant at least this long is worth `remnantShare` of what it cost; null = none is. */
  readonly keepFrom: In | null;
  readonly remnantShare: number;
}
/** One stock length used, and the pieces cut from it, longest first. */
export interface CutStock {
  readonly stock: Stock;
  readonly pieces: readonly In[];
}

/**
 * The same in whole numbers: lengths in `unit`ths shared by all of them, so that sums compare exactly; money in
 * hundredths of a cent. Types longest first; piece types longest first with their counts.
 */
export interface Whole {
  readonly stocks: readonly {
    readonly length: number;
    readonly price: number;
    readonly have: number;
    readonly rate: number;
  }[];
  readonly pieces: readonly { readonly length: number; readonly count: number }[];
  readonly total: number;
  /** Infinity = no remnant is worth anything. */
  readonly keep: number;
}

/** A millionth of an inch: both 1/64 in and four decimals are whole in it. */
const PER_INCH = 1_000_000;
/** Prices have at most four decimals. */
export const PER_DOLLAR = 10_000;

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/** Stocks that cannot hold the shortest piece and counts above the number of pieces change nothing and are left out. */
export const toWhole = (ask: CutAsk, order: readonly Stock[]): Whole => {
  const grains = (inches: In): number => roundHalfAway(inches * PER_INCH);
  const pieces = ask.pieces.filter((piece) => piece.count > 0);
  const all = [...order.map((stock) => grains(stock.length)), ...pieces.map((piece) => grains(piece.length))];
  const grain = all.reduce(gcd, 0) || 1;
  const units = (inches: In): number => grains(inches) / grain;
  const counts = new Map<number, number>();
  for (const piece of pieces) counts.set(units(piece.length), (counts.get(units(piece.length)) ?? 0) + piece.count);
  const lengths = [...counts.keys()].sort((a, b) => b - a);
  const many = pieces.reduce((sum, piece) => sum + piece.count, 0);
  // Every leftover is whole, so the least that counts is whole too.
  const keep =
    ask.keepFrom === null || ask.remnantShare === 0
      ? Number.POSITIVE_INFINITY
      : Math.ceil(grains(ask.keepFrom) / grain);
  return {
    stocks: order.map((stock) => {
      const length = units(stock.length);
      const price = roundHalfAway(stock.dollars * PER_DOLLAR);
      return { length, price, have: Math.min(stock.have ?? many, many), rate: (ask.remnantShare * price) / length };
    }),
    pieces: lengths.map((length) => ({ length, count: counts.get(length)! })),
    total: lengths.reduce((sum, length) => sum + length * counts.get(length)!, 0),
    keep,
  };
};

/** One coil used: its stock and how many of each piece type. */
export interface Coil {
  readonly stock: number;
  readonly counts: readonly number[];
}
/** What a packing costs in hundredths of a cent, every remnant of `keep` or more counted. */
export const netOf = (whole: Whole, coils: readonly Coil[]): number =>
  coils.reduce((sum, { stock, counts }) => {
    const { length, price, rate } = whole.stocks[stock]!;
    const left = length - counts.reduce((used, count, i) => used + count * whole.pieces[i]!.length, 0);
    return sum + price - (left >= whole.keep ? left * rate : 0);
  }, 0);
