import { bestPattern } from './knapsack';
import type { Whole } from './model';
import type { Budget } from './remnants';

/** A pattern and how often the relaxed answer uses it. */
export interface Use {
  readonly stock: number;
  readonly counts: readonly number[];
  readonly times: number;
}
export interface Relaxed {
  /** No way of cutting has a smaller net (hundredths of a cent). */
  readonly bound: number;
  readonly uses: readonly Use[];
}
interface Column {
  readonly cost: number;
  readonly rows: readonly number[];
  readonly use: Omit<Use, 'times'> | null;
}

const STEPS = 3000;
const MOST_ROWS = 150;
const KNAPSACK_NODES = 4_000_000;
const EPSILON = 1e-9;
/** Dearer than any pattern: a piece placed nowhere. Costs are scaled so that the dearest stock is 1. */
const NOWHERE = 1e4;

/**
 * The cutting problem with fractions of coils allowed (Gilmore and Gomory, 1961: the linear program over all patterns,
 * patterns made as needed by a knapsack on the prices of the pieces). Its value is a lower bound, nearly always within
 * one coil of the truth. null = not solved within its steps.
 */
export const relaxed = (whole: Whole): Relaxed | null => {
  const { pieces, stocks } = whole;
  const many = pieces.reduce((sum, piece) => sum + piece.count, 0);
  const limited = stocks.map((stock, i) => ({ stock, i })).filter(({ stock }) => stock.have < many);
  const rowOf = new Map(limited.map(({ i }, k) => [i, pieces.length + k]));
  const size = pieces.length + limited.length;
  if (size > MOST_ROWS) return null;
  const budget: Budget = { nodes: KNAPSACK_NODES };
  const scale = Math.max(...stocks.map((stock) => stock.price), 1);
  const have = [...pieces.map((piece) => piece.count), ...limited.map(({ stock }) => stock.have)];
  const unit = (row: number, sign: number): number[] => Array.from({ length: size }, (_, k) => (k === row ? sign : 0));

  const basis: Column[] = have.map((_, row) => ({
    cost: row < pieces.length ? NOWHERE : 0,
    rows: unit(row, 1),
    use: null,
  }));
  const amount = [...have];
  const inverse = have.map((_, row) => unit(row, 1));

  for (let step = 0; step < STEPS; step++) {
    const price = have.map((_, k) => basis.reduce((sum, column, row) => sum + column.cost * inverse[row]![k]!, 0));
    const entering = bestColumn(whole, price, rowOf, scale, unit, budget);
    if (entering === null) return null;
    if (entering === 'none') {
      const value = price.reduce((sum, y, k) => sum + y * have[k]!, 0);
      if (basis.some((column, row) => column.cost === NOWHERE && amount[row]! > 1e-7)) return null;
      // Every coil may be cheaper than its price by the tolerance.
      return {
        bound: (value - 1e-7 * (1 + many)) * scale,
        uses: basis.flatMap((column, row) =>
          column.use && amount[row]! > 1e-9 ? [{ ...column.use, times: amount[row]! }] : [],
        ),
      };
    }
    const change = inverse.map((row) => row.reduce((sum, value, k) => sum + value * entering.rows[k]!, 0));
    let leaving = -1;
    let ratio = Number.POSITIVE_INFINITY;
    for (let row = 0; row < size; row++)
      if (change[row]! > EPSILON && amount[row]! / change[row]! < ratio - 1e-12) {
        ratio = amount[row]! / change[row]!;
        leaving = row;
      }
    if (leaving < 0) return null;
    const pivot = change[leaving]!;
    const lead = inverse[leaving]!;
    for (let k = 0; k < size; k++) lead[k]! /= pivot;
    for (let row = 0; row < size; row++) {
      const factor = change[row]!;
      if (row === leaving || factor === 0) continue;
      const line = inverse[row]!;
      for (let k = 0; k < size; k++) line[k]! -= factor * lead[k]!;
      amount[row] = Math.max(0, amount[row]! - factor * ratio);
    }
    amount[leaving] = ratio;
    basis[leaving] = entering;
  }
  return null;
};

/** The column that lowers the cost most: a pattern, or slack of a row. null = the knapsack gave up. */
const bestColumn = (
  whole: Whole,
  price: readonly number[],
  rowOf: ReadonlyMap<number, number>,
  scale: number,
  unit: (row: number, sign: number) => number[],
  budget: Budget,
): Column | 'none' | null => {
  const { pieces, stocks, keep } = whole;
  let best: Column | null = null;
  let gain = 1e-8;
  const offer = (cost: number, reduced: number, rows: () => number[], use: Column['use']): void => {
    if (-reduced <= gain) return;
    gain = -reduced;
    best = { cost, rows: rows(), use };
  };
  for (let k = 0; k < price.length; k++) {
    const sign = k < pieces.length ? -1 : 1;
    offer(0, -sign * price[k]!, () => unit(k, sign), null);
  }
  for (const [i, stock] of stocks.entries()) {
    const row = rowOf.get(i);
    const rent = row === undefined ? 0 : price[row]!;
    // Without a remnant, or with one: then every unit of length used costs its rate.
    const cases = [
      { room: stock.length, rate: 0, cost: stock.price },
      { room: stock.length - keep, rate: stock.rate, cost: stock.price - stock.rate * stock.length },
    ];
    for (const { room, rate, cost } of cases) {
      if (!(room > 0)) continue;
      const values = pieces.map((piece, k) => price[k]! - (rate * piece.length) / scale);
      const found = bestPattern(pieces, values, room, budget);
      if (!found) return null;
      const used = found.counts.reduce((sum, count, k) => sum + count * pieces[k]!.length, 0);
      const own = (cost + rate * used) / scale;
      offer(
        own,
        cost / scale - found.value - rent,
        () => {
          const rows = unit(row ?? 0, row === undefined ? 0 : 1);
          for (const [k, count] of found.counts.entries()) rows[k] = count;
          return rows;
        },
        { stock: i, counts: found.counts },
      );
    }
  }
  return best ?? 'none';
};
