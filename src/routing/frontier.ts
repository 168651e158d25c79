import FlatQueue from 'flatqueue';
import type { Network } from './types';

/** Where ways start, with what they have spent and used of the bounded length by then. */
export interface Start {
  readonly node: number;
  /** 1/128 mill. */
  readonly cost: number;
  /** 1/64 in. */
  readonly length: number;
}

/**
 * Ways to every node of which none is both cheaper and shorter: for cable of which there is only so much. Labels of a
 * node follow each other by `next` from `first`, cheapest and longest first; -1 ends.
 */
export interface Frontier {
  readonly network: Network;
  readonly weights: Float64Array;
  readonly lengths: Float64Array;
  readonly starts: readonly Start[];
  readonly first: Int32Array;
  readonly next: Int32Array;
  readonly node: Int32Array;
  /** 1/128 mill. */
  readonly cost: Float64Array;
  /** 1/64 in. */
  readonly length: Float64Array;
}

/** One whole number holds cost and length, cost first: lengths stay below this, 1/64 in. */
const LONGEST = 1 << 20;

class Column {
  values = new Float64Array(1024);
  count = 0;
  add(value: number): void {
    if (this.count === this.values.length) {
      const wider = new Float64Array(2 * this.count);
      wider.set(this.values);
      this.values = wider;
    }
    this.values[this.count++] = value;
  }
  taken = () => this.values.slice(0, this.count);
}

/**
 * Every way worth having that is not longer than `most`: labels come out of the queue by cost, then length, and one
 * counts only where it is shorter than all before it at its node (Sedeño-Noda and Colebrook 2019). All costs whole.
 */
export const frontier = (
  network: Network,
  weights: Float64Array,
  lengths: Float64Array,
  starts: readonly Start[],
  most: number,
): Frontier => {
  const { off, to, nodeCount } = network;
  const longest = Math.min(most, LONGEST - 1);
  const shortest = new Float64Array(nodeCount).fill(Number.POSITIVE_INFINITY);
  /** Of the label that was put in the queue last: on a grid most others come to the same. */
  const latestCost = new Float64Array(nodeCount).fill(Number.POSITIVE_INFINITY);
  const latestLength = new Float64Array(nodeCount).fill(Number.POSITIVE_INFINITY);
  const queue = new FlatQueue<number>();
  const [waiting, at] = [{ cost: new Column(), length: new Column() }, new Column()];
  const push = (node: number, cost: number, length: number): void => {
    if (length > longest || length >= shortest[node]!) return;
    if (cost >= latestCost[node]! && length >= latestLength[node]!) return;
    latestCost[node] = cost;
    latestLength[node] = length;
    queue.push(at.count, cost * LONGEST + length);
    at.add(node);
    waiting.cost.add(cost);
    waiting.length.add(length);
  };
  for (const { node, cost, length } of starts) push(node, cost, length);
  const [nodes, costs, used] = [new Column(), new Column(), new Column()];
  while (queue.length > 0) {
    const item = queue.pop()!;
    const v = at.values[item]!;
    const [cost, length] = [waiting.cost.values[item]!, waiting.length.values[item]!];
    if (length >= shortest[v]!) continue;
    shortest[v] = length;
    nodes.add(v);
    costs.add(cost);
    used.add(length);
    for (let e = off[v]!; e < off[v + 1]!; e++) push(to[e]!, cost + weights[e]!, length + lengths[e]!);
  }
  const node = Int32Array.from(nodes.taken());
  const first = new Int32Array(nodeCount).fill(-1);
  const next = new Int32Array(node.length).fill(-1);
  for (let i = node.length - 1; i >= 0; i--) {
    next[i] = first[node[i]!]!;
    first[node[i]!] = i;
  }
  return { network, weights, lengths, starts, first, next, node, cost: costs.taken(), length: used.taken() };
};

/** The label of a node with exactly this cost and length, or -1. */
export const labelOf = ({ first, next, cost, length }: Frontier, start: Start): number => {
  let label = first[start.node]!;
  while (label >= 0 && cost[label]! < start.cost) label = next[label]!;
  return label >= 0 && cost[label] === start.cost && length[label] === start.length ? label : -1;
};

/** What every way to a node costs and measures, to start on from there. */
export const labelsAt = ({ first, next, cost, length }: Frontier, node: number): Start[] => {
  const found: Start[] = [];
  for (let i = first[node]!; i >= 0; i = next[i]!) found.push({ node, cost: cost[i]!, length: length[i]! });
  return found;
};

/** The cheapest label of a node whose way is not longer than `most`, or -1. */
export const labelWithin = ({ first, next, length }: Frontier, node: number, most: number): number => {
  let label = first[node]!;
  while (label >= 0 && length[label]! > most) label = next[label]!;
  return label;
};
