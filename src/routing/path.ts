import { type Frontier, labelOf } from './frontier';
import type { Network, Sweep } from './types';

/** Direction of an edge: the axis it runs along, or `ASKEW` for a sloped wall, a sleeve and the turn of a corner. */
const ASKEW = 3;
const DIRECTIONS = 4;
const directionOf = (n: Network, a: number, b: number): number => {
  const x = n.x[a] !== n.x[b];
  const y = n.y[a] !== n.y[b];
  const z = n.z[a] !== n.z[b];
  if (Number(x) + Number(y) + Number(z) !== 1) return ASKEW;
  return x ? 0 : y ? 1 : 2;
};

const NONE = 255;
/** Turns beyond 254 are not told apart: a way in steps along a long sloped wall has more. */
const oneMore = (turns: number, turning: boolean): number => Math.min(turns + Number(turning), NONE - 1);

/** What a finished search knows, by state: a node of a sweep, a label of a frontier. */
interface Found {
  readonly network: Network;
  readonly states: number;
  readonly nodeOf: (state: number) => number;
  readonly cost: Float64Array;
  readonly isStart: (state: number) => boolean;
  /** The state at the far end of edge e from which a best way comes to `state`, or -1. Edges weigh alike both ways. */
  readonly before: (state: number, e: number) => number;
}

const ofSweep = ({ network, dist, weights, ties, sources }: Sweep): Found => {
  const starts = new Set(
    sources
      .filter(({ node, cost, tie = 0 }) => dist[node] === cost && (ties === null || ties.dist[node] === tie))
      .map((s) => s.node),
  );
  return {
    network,
    states: network.nodeCount,
    nodeOf: (node) => node,
    cost: dist,
    isStart: (node) => starts.has(node),
    before: (v, e) => {
      const u = network.to[e]!;
      if (dist[u]! + weights[e]! !== dist[v]!) return -1;
      return ties === null || ties.dist[u]! + ties.weights[e]! === ties.dist[v]! ? u : -1;
    },
  };
};

const ofFrontier = (ways: Frontier): Found => {
  const { network, weights, lengths, starts, node, cost, length } = ways;
  const roots = new Set(starts.map((start) => labelOf(ways, start)));
  return {
    network,
    states: node.length,
    nodeOf: (label) => node[label]!,
    cost,
    isStart: (label) => roots.has(label),
    before: (label, e) =>
      labelOf(ways, {
        node: network.to[e]!,
        cost: cost[label]! - weights[e]!,
        length: length[label]! - lengths[e]!,
      }),
  };
};

/** Fewest turns of a best way to each state by its last direction, worked out as far as it was asked for. */
interface Turns {
  readonly found: Found;
  readonly known: Uint8Array;
  /** 255 = none. */
  readonly least: Uint8Array;
}
const turnsBySearch = new WeakMap<Sweep | Frontier, Turns>();

const turnsOf = (search: Sweep | Frontier): Turns => {
  const kept = turnsBySearch.get(search);
  if (kept) return kept;
  const found = 'dist' in search ? ofSweep(search) : ofFrontier(search);
  const made: Turns = {
    found,
    known: new Uint8Array(found.states),
    least: new Uint8Array(found.states * DIRECTIONS).fill(NONE),
  };
  turnsBySearch.set(search, made);
  return made;
};

/** Works out the turns of a state and of everything on its best ways. */
const countTurns = ({ found, known, least }: Turns, target: number): void => {
  if (known[target] === 1) return;
  const { network: n, nodeOf, cost, isStart, before } = found;
  const order = [target];
  known[target] = 1;
  for (let i = 0; i < order.length; i++) {
    const s = order[i]!;
    const v = nodeOf(s);
    for (let e = n.off[v]!; e < n.off[v + 1]!; e++) {
      const from = before(s, e);
      if (from < 0 || known[from] === 1) continue;
      known[from] = 1;
      order.push(from);
    }
  }
  order.sort((a, b) => cost[a]! - cost[b]!);
  for (const s of order) {
    const v = nodeOf(s);
    for (let e = n.off[v]!; e < n.off[v + 1]!; e++) {
      const from = before(s, e);
      if (from < 0) continue;
      const d = directionOf(n, n.to[e]!, v);
      let fewest = isStart(from) ? 0 : NONE;
      for (let b = 0; b < DIRECTIONS; b++) {
        const turns = least[from * DIRECTIONS + b]!;
        if (turns < NONE) fewest = Math.min(fewest, oneMore(turns, b !== d));
      }
      if (fewest < least[s * DIRECTIONS + d]!) least[s * DIRECTIONS + d] = fewest;
    }
  }
};

/**
 * The order in which ties fall: by kind of way first (across joists nearest the house), which a turned or mirrored house keeps, then lowest z, y, x, number.
 */
const goesFirst = (n: Network, e: number, other: number): boolean => {
  const [a, b] = [n.to[e]!, n.to[other]!];
  const step = n.cls[other]! - n.cls[e]! || n.z[a]! - n.z[b]! || n.y[a]! - n.y[b]! || n.x[a]! - n.x[b]! || a - b;
  return step < 0;
};

/** Directions in which a way may have come to a state, for its next edge in direction d to stay within the budget. */
const comingTo = (least: Uint8Array, state: number, d: number, budget: number): number[] => {
  const found: number[] = [];
  for (let b = 0; b < DIRECTIONS; b++) {
    const spent = least[state * DIRECTIONS + b]!;
    if (spent < NONE && oneMore(spent, b !== d) === budget) found.push(b);
  }
  return found;
};

/**
 * The one path a search stands for: among the best the one with the fewest turns, and among those the first by
 * `goesFirst`, chosen from its end. `target`: a node of a sweep, a label of a frontier. From a source to it, as nodes;
 * empty when the node was not reached.
 */
export const pathTo = (search: Sweep | Frontier, target: number): number[] => pathBack(search, target).nodes;

/** The same, with the state it starts from; -1 = none. */
export const pathBack = (
  search: Sweep | Frontier,
  target: number,
): { readonly nodes: number[]; readonly root: number } => {
  const turns = turnsOf(search);
  const { found, least } = turns;
  const { network: n, nodeOf, cost, isStart, before } = found;
  if (!(cost[target]! < Number.POSITIVE_INFINITY)) return { nodes: [], root: -1 };
  countTurns(turns, target);
  const path = [nodeOf(target)];
  let s = target;
  const fewest = Math.min(...least.subarray(s * DIRECTIONS, (s + 1) * DIRECTIONS));
  let arriving = [0, 1, 2, 3].filter((d) => least[s * DIRECTIONS + d] === fewest && fewest < NONE);
  while (!isStart(s)) {
    const v = nodeOf(s);
    let best = -1;
    let from = -1;
    let next: number[] = [];
    for (let e = n.off[v]!; e < n.off[v + 1]!; e++) {
      const d = directionOf(n, n.to[e]!, v);
      if (!arriving.includes(d) || (best >= 0 && !goesFirst(n, e, best))) continue;
      const u = before(s, e);
      if (u < 0) continue;
      const budget = least[s * DIRECTIONS + d]!;
      const coming = comingTo(least, u, d, budget);
      if (coming.length === 0 && !(isStart(u) && budget === 0)) continue;
      best = e;
      from = u;
      next = coming;
    }
    if (best < 0) throw new Error(`The search has no way back from node ${v}`);
    s = from;
    path.push(nodeOf(s));
    arriving = next;
  }
  return { nodes: path.reverse(), root: s };
};
