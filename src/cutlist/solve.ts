import { firstAnswer } from './bestFit';
import { type CoilSet, coilSets } from './coilSets';
import { dive } from './dive';
import { type Coil, type CutAsk, type CutStock, netOf, PER_DOLLAR, type Stock, toWhole, type Whole } from './model';
import { packSet } from './pack';
import { relaxed } from './relaxation';
import { type Budget, NEAR } from './remnants';

export interface CutAnswer {
  readonly used: readonly CutStock[];
  /** Dollars paid, and less what the remnants are worth. */
  readonly outlay: number;
  readonly net: number;
  /** No way of cutting has a smaller net. */
  readonly bound: number;
  readonly proven: boolean;
}
/** Why there is no answer: a piece longer than every stock · not enough stock · the search ended before it knew. */
export type NoCut = 'too long' | 'too little' | 'undecided';

/** Steps of the search, never time, so that the same question always has the same answer. */
const SET_NODES = 60_000;
const QUICK = { nodes: 40_000, nodesASet: 12_000 };
const LONG = { nodes: 150_000, nodesASet: 60_000 };

/** The stocks longest first, and all of it in whole numbers. */
export const prepared = (ask: CutAsk): { readonly order: readonly Stock[]; readonly whole: Whole } => {
  const order = ask.stocks
    .filter((stock) => stock.have !== 0)
    .map((stock, i) => ({ stock, i }))
    .sort((a, b) => b.stock.length - a.stock.length || a.stock.dollars - b.stock.dollars || a.i - b.i)
    .map(({ stock }) => stock);
  return { order, whole: toWhole(ask, order) };
};

/**
 * The cheapest way to cut all pieces: bought less usable remnants. Coil sets are tried in order of the least they can
 * cost; the first that cannot beat the best packing found proves it.
 */
export const solveCut = (ask: CutAsk): CutAnswer | NoCut => {
  const { whole } = prepared(ask);
  if (whole.pieces.length === 0) return { used: [], outlay: 0, net: 0, bound: 0, proven: true };
  const longest = Math.max(...whole.stocks.map((stock) => stock.length));
  if (!(longest >= whole.pieces[0]!.length)) return 'too long';
  if (whole.stocks.reduce((sum, stock) => sum + stock.length * stock.have, 0) < whole.total) return 'too little';

  let found = search(whole, firstAnswer(whole), Number.NEGATIVE_INFINITY, QUICK);
  const known = found.unresolved;
  if (found.unresolved < found.net - NEAR) {
    const relaxation = relaxed(whole);
    if (relaxation) {
      const dived = dive(
        whole,
        relaxation.uses,
        (rest) => search(rest, firstAnswer(rest), Number.NEGATIVE_INFINITY, QUICK).best,
      );
      const better = dived && netOf(whole, dived) < found.net - NEAR ? dived : found.best;
      found = search(whole, better, relaxation.bound, LONG);
    }
  }
  const { best, net, unresolved } = found;
  if (!best) return Number.isFinite(unresolved) ? 'undecided' : 'too little';
  // Both searches bound the answer; the higher bound holds.
  return answered(ask, best, Math.min(net, Math.max(known, unresolved)));
};

/** A packing in the lengths that were asked for; `bound` in hundredths of a cent. */
export const answered = (ask: CutAsk, best: readonly Coil[], bound: number): CutAnswer => {
  const { order, whole } = prepared(ask);
  const net = netOf(whole, best);
  return {
    used: usedStocks(whole, order, ask, best),
    outlay: best.reduce((sum, { stock }) => sum + whole.stocks[stock]!.price, 0) / PER_DOLLAR,
    net: net / PER_DOLLAR,
    bound: bound / PER_DOLLAR,
    proven: bound >= net - NEAR,
  };
};

interface Found {
  readonly best: readonly Coil[] | null;
  readonly net: number;
  /** The least that a coil set left open could cost. */
  readonly unresolved: number;
}

/** Coil sets in order of their bound, each packed or shown not to do; `floor` is a bound known from elsewhere. */
const search = (
  whole: Whole,
  start: readonly Coil[] | null,
  floor: number,
  limit: { readonly nodes: number; readonly nodesASet: number },
): Found => {
  let best = start;
  let net = best ? netOf(whole, best) : Number.POSITIVE_INFINITY;
  let unresolved = Number.POSITIVE_INFINITY;
  // A step takes longer with more different pieces.
  const effort = Math.max(1, whole.pieces.length / 40);
  let nodes = limit.nodes / effort;
  const leaveOpen = (bound: number): void => {
    unresolved = Math.min(unresolved, Math.max(bound, floor));
  };
  const sets = coilSets(whole, SET_NODES);
  while (floor < net - NEAR) {
    const next = sets.next();
    if (next.done) {
      leaveOpen(next.value.bound);
      break;
    }
    const set: CoilSet = next.value;
    if (set.bound >= net - NEAR) break;
    // Without remnants a set costs its price, and what costs less than the floor cannot hold the pieces.
    if (!Number.isFinite(whole.keep) && set.price < floor - NEAR) continue;
    if (nodes <= 0) {
      leaveOpen(set.bound);
      break;
    }
    const budget: Budget = { nodes: Math.ceil(Math.min(nodes, limit.nodesASet / effort)) };
    const given = budget.nodes;
    const packed = packSet(whole, set, set.price - net, budget);
    nodes -= given - Math.max(0, budget.nodes);
    if (packed.best) {
      best = packed.best.coils;
      net = netOf(whole, best);
    }
    if (!packed.complete) leaveOpen(set.bound);
  }
  return { best, net, unresolved };
};

/** Back to the asked lengths; longest stock first, then fullest, so that equal answers print alike. */
const usedStocks = (whole: Whole, order: readonly Stock[], ask: CutAsk, coils: readonly Coil[]): CutStock[] => {
  const asked = [...new Set(ask.pieces.filter((piece) => piece.count > 0).map((piece) => piece.length))].sort(
    (a, b) => b - a,
  );
  // Two asked lengths closer than a millionth of an inch are one length here.
  const grain = whole.pieces.map((piece) => piece.length);
  const unit = asked[0]! / grain[0]!;
  const lengthOf = grain.map(
    (units) => asked.find((length) => Math.abs(length - units * unit) < unit / 2) ?? units * unit,
  );
  return coils
    .map(({ stock, counts }) => ({
      stock: order[stock]!,
      pieces: counts.flatMap((count, i) => Array.from({ length: count }, () => lengthOf[i]!)),
    }))
    .sort(
      (a, b) =>
        b.stock.length - a.stock.length ||
        b.pieces.reduce((sum, piece) => sum + piece, 0) - a.pieces.reduce((sum, piece) => sum + piece, 0),
    );
};
