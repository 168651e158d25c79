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

/** Is the way over node u and edge e (from u, or to it: edges weigh alike both ways) a cheapest one to node v? */
const isOnWay = ({ dist, weights, ties }: Sweep, u: number, e: number, v: number): boolean =>
  dist[u]! + weights[e]! === dist[v]! && (ties === null || ties.dist[u]! + ties.weights[e]! === ties.dist[v]!);

/** Fewest turns of a cheapest path to each node by its last direction, worked out as far as it was asked for. */
interface Turns {
  readonly roots: ReadonlySet<number>;
  readonly known: Uint8Array;
  /** 255 = none. */
  readonly least: Uint8Array;
}
const turnsBySweep = new WeakMap<Sweep, Turns>();

const turnsOf = (sweep: Sweep): Turns => {
  const kept = turnsBySweep.get(sweep);
  if (kept) return kept;
  const { nodeCount } = sweep.network;
  const { dist, ties } = sweep;
  const starts = sweep.sources.filter(
    ({ node, cost, tie = 0 }) => dist[node] === cost && (ties === null || ties.dist[node] === tie),
  );
  const made: Turns = {
    roots: new Set(starts.map((s) => s.node)),
    known: new Uint8Array(nodeCount),
    least: new Uint8Array(nodeCount * DIRECTIONS).fill(NONE),
  };
  turnsBySweep.set(sweep, made);
  return made;
};

/** Works out the turns of a node and of everything on its cheapest ways. */
const countTurns = (sweep: Sweep, target: number): Turns => {
  const turns = turnsOf(sweep);
  const { roots, known, least } = turns;
  if (known[target] === 1) return turns;
  const { network: n, dist } = sweep;
  const order = [target];
  known[target] = 1;
  for (let i = 0; i < order.length; i++) {
    const v = order[i]!;
    for (let e = n.off[v]!; e < n.off[v + 1]!; e++) {
      const u = n.to[e]!;
      if (known[u] === 1 || !isOnWay(sweep, u, e, v)) continue;
      known[u] = 1;
      order.push(u);
    }
  }
  order.sort((a, b) => dist[a]! - dist[b]!);
  for (const v of order)
    for (let e = n.off[v]!; e < n.off[v + 1]!; e++) {
      const u = n.to[e]!;
      if (!isOnWay(sweep, u, e, v)) continue;
      const d = directionOf(n, u, v);
      let fewest = roots.has(u) ? 0 : NONE;
      for (let b = 0; b < DIRECTIONS; b++) {
        const before = least[u * DIRECTIONS + b]!;
        if (before < NONE) fewest = Math.min(fewest, oneMore(before, b !== d));
      }
      if (fewest < least[v * DIRECTIONS + d]!) least[v * DIRECTIONS + d] = fewest;
    }
  return turns;
};

/**
 * The order in which ties fall: by kind of way first, which a turned or mirrored house keeps, then lowest z, y, x, number.
 */
const before = (n: Network, e: number, other: number): boolean => {
  const [a, b] = [n.to[e]!, n.to[other]!];
  const step = n.cls[e]! - n.cls[other]! || n.z[a]! - n.z[b]! || n.y[a]! - n.y[b]! || n.x[a]! - n.x[b]! || a - b;
  return step < 0;
};

/** Directions in which a path may have come to node u, for its next edge in direction d to stay within the budget. */
const comingTo = (turns: Uint8Array, u: number, d: number, budget: number): number[] => {
  const found: number[] = [];
  for (let b = 0; b < DIRECTIONS; b++) {
    const spent = turns[u * DIRECTIONS + b]!;
    if (spent < NONE && oneMore(spent, b !== d) === budget) found.push(b);
  }
  return found;
};

/**
 * The one path a sweep stands for: among the cheapest the one with the fewest turns, and among those the first by
 * \`before\`, chosen from its end. From a source to the node; empty when the node was not reached.
 */
export const pathTo = (sweep: Sweep, target: number): number[] => {
  const { network: n, dist } = sweep;
  if (!(dist[target]! < Number.POSITIVE_INFINITY)) return [];
  const { roots: start, least: turns } = countTurns(sweep, target);
  const path = [target];
  let v = target;
  const least = Math.min(...turns.subarray(v * DIRECTIONS, (v + 1) * DIRECTIONS));
  let arriving = [0, 1, 2, 3].filter((d) => turns[v * DIRECTIONS + d] === least && least < NONE);
  while (!start.has(v)) {
    let best = -1;
    let next: number[] = [];
    for (let e = n.off[v]!; e < n.off[v + 1]!; e++) {
      const u = n.to[e]!;
      const d = directionOf(n, u, v);
      if (!arriving.includes(d) || !isOnWay(sweep, u, e, v)) continue;
      if (best >= 0 && !before(n, e, best)) continue;
      const budget = turns[v * DIRECTIONS + d]!;
      const coming = comingTo(turns, u, d, budget);
      if (coming.length === 0 && !(start.has(u) && budget === 0)) continue;
      best = e;
      next = coming;
    }
    if (best < 0) throw new Error(`The sweep has no way back from node ${v}`);
    v = n.to[best]!;
    path.push(v);
    arriving = next;
  }
  return path.reverse();
};
