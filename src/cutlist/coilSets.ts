import type { Whole } from './model';

/** How many of each stock, and what the set costs at least: its price less the most its leftover can be worth. */
export interface CoilSet {
  readonly counts: readonly number[];
  readonly price: number;
  readonly capacity: number;
  readonly bound: number;
}
interface Node extends CoilSet {
  /** Types before this one are decided; at the end the bound is the set's own. */
  readonly type: number;
  readonly done: boolean;
}

/** What a leftover of `left` can be worth at most, put into the dearest of the given coils. No remnant leaves its coil empty. */
export const mostCredit = (whole: Whole, counts: readonly number[], left: number): number => {
  if (left < whole.keep) return 0;
  const shortest = whole.pieces.at(-1)!.length;
  let credit = 0;
  let rest = left;
  const dearest = counts
    .map((count, i) => ({ count, ...whole.stocks[i]! }))
    .filter((coil) => coil.count > 0)
    .sort((a, b) => b.rate - a.rate);
  for (const { count, length, rate } of dearest) {
    const put = Math.min(rest, count * Math.max(0, length - shortest));
    credit += put * rate;
    rest -= put;
  }
  return credit;
};

/** A smallest-first queue; ties by larger capacity, then by order of arrival, so that the answer never depends on luck. */
class Queue {
  private readonly heap: { readonly node: Node; readonly turn: number }[] = [];
  private turns = 0;
  private before(a: number, b: number): boolean {
    const x = this.heap[a]!;
    const y = this.heap[b]!;
    if (x.node.bound !== y.node.bound) return x.node.bound < y.node.bound;
    return x.node.capacity !== y.node.capacity ? x.node.capacity > y.node.capacity : x.turn < y.turn;
  }
  private swap(a: number, b: number): void {
    [this.heap[a], this.heap[b]] = [this.heap[b]!, this.heap[a]!];
  }
  push(node: Node): void {
    this.heap.push({ node, turn: this.turns++ });
    for (let i = this.heap.length - 1; i > 0; ) {
      const up = (i - 1) >> 1;
      if (!this.before(i, up)) break;
      this.swap(i, up);
      i = up;
    }
  }
  pop(): Node | undefined {
    const top = this.heap[0]?.node;
    const last = this.heap.pop();
    if (this.heap.length === 0 || last === undefined) return top;
    this.heap[0] = last;
    for (let i = 0; ; ) {
      let least = i;
      for (const child of [2 * i + 1, 2 * i + 2])
        if (child < this.heap.length && this.before(child, least)) least = child;
      if (least === i) return top;
      this.swap(i, least);
      i = least;
    }
  }
  get least(): number {
    return this.heap[0]?.node.bound ?? Number.POSITIVE_INFINITY;
  }
}

/**
 * Coil sets that could hold all the pieces, cheapest possible net cost first. A coil used for u of its length costs at
 * least fixed + rate · u, fixed = price · (1 - share): so the fixed parts of what is chosen, the rate part of the whole
 * demand put into the cheapest rates, and the fixed part a foot of what is still to be chosen bound every completion.
 */
export function* coilSets(whole: Whole, nodeLimit: number): Generator<CoilSet, { readonly bound: number }> {
  const { stocks, total, keep } = whole;
  const remnants = Number.isFinite(keep);
  const rate = (i: number): number => (remnants ? stocks[i]!.rate : 0);
  const fixed = (i: number): number => stocks[i]!.price - rate(i) * stocks[i]!.length;
  const pieces = whole.pieces.reduce((sum, piece) => sum + piece.count, 0);

  // Rate part of the demand at its cheapest.
  let rest = total;
  let demandAtRate = 0;
  for (const i of stocks.map((_, k) => k).sort((a, b) => rate(a) - rate(b))) {
    const put = Math.min(rest, stocks[i]!.have * stocks[i]!.length);
    demandAtRate += put * rate(i);
    rest -= put;
  }
  // Cheapest fixed part a unit of length among the types from i on, and the length there is of them.
  const perUnit = stocks.map((_, i) =>
    Math.min(...stocks.slice(i).map((s, k) => (s.have > 0 ? fixed(i + k) / s.length : Number.POSITIVE_INFINITY))),
  );
  const reserve = stocks.map((_, i) => stocks.slice(i).reduce((sum, s) => sum + s.have * s.length, 0));

  const queue = new Queue();
  const enter = (counts: readonly number[], type: number, price: number, fixedSum: number, capacity: number): void => {
    const short = total - capacity;
    if (type === stocks.length) {
      if (short <= 0)
        queue.push({ counts, type, price, capacity, done: true, bound: price - mostCredit(whole, counts, -short) });
      return;
    }
    if (short > (reserve[type] ?? 0)) return;
    queue.push({
      counts,
      type,
      price,
      capacity,
      done: false,
      bound: fixedSum + demandAtRate + Math.max(0, short) * (short > 0 ? perUnit[type]! : 0),
    });
  };
  enter(
    stocks.map(() => 0),
    0,
    0,
    0,
    0,
  );
  for (let nodes = 0; ; nodes++) {
    const bound = queue.least;
    if (nodes >= nodeLimit) return { bound };
    const node = queue.pop();
    if (!node) return { bound };
    if (node.done) {
      yield node;
      continue;
    }
    const { counts, type, price, capacity } = node;
    const coils = counts.reduce((sum, count) => sum + count, 0);
    const fixedSum = counts.reduce((sum, count, i) => sum + count * fixed(i), 0);
    const { length, have } = stocks[type]!;
    const cost = stocks[type]!.price;
    // Either no more of this type, or one more of it.
    enter(counts, type + 1, price, fixedSum, capacity);
    if (counts[type]! < have && coils < pieces)
      enter(
        counts.map((count, i) => (i === type ? count + 1 : count)),
        type,
        price + cost,
        fixedSum + fixed(type),
        capacity + length,
      );
  }
}
