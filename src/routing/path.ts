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

/** Fewest turns of a cheapest path to each node by its last direction; 255 = none. */
const turnsBySweep = new WeakMap<Sweep, Uint8Array>();
const NONE = 255;

const roots = (sweep: Sweep): Set<number> =>
  new Set(sweep.sources.filter((s) => sweep.dist[s.node] === s.cost).map((s) => s.node));

const countTurns = (sweep: Sweep): Uint8Array => {
  const kept = turnsBySweep.get(sweep);
  if (kept) return kept;
  const { network: n, dist, weights } = sweep;
  const turns = new Uint8Array(n.nodeCount * DIRECTIONS).fill(NONE);
  const start = roots(sweep);
  const order: number[] = [];
  for (let u = 0; u < n.nodeCount; u++) if (dist[u]! < Number.POSITIVE_INFINITY) order.push(u);
  order.sort((a, b) => dist[a]! - dist[b]!);
  for (const u of order)
    for (let e = n.off[u]!; e < n.off[u + 1]!; e++) {
      const v = n.to[e]!;
      if (dist[u]! + weights[e]! !== dist[v]!) continue;
      const d = directionOf(n, u, v);
      let least = start.has(u) ? 0 : NONE;
      for (let b = 0; b < DIRECTIONS; b++) {
        const before = turns[u * DIRECTIONS + b]!;
        if (before < NONE) least = Math.min(least, before + Number(b !== d));
      }
      if (least < turns[v * DIRECTIONS + d]!) turns[v * DIRECTIONS + d] = Math.min(least, NONE - 1);
    }
  turnsBySweep.set(sweep, turns);
  return turns;
};

/** The order in which ties fall: lowest z, then y, then x, then number. */
const before = (n: Network, a: number, b: number): boolean => {
  const step = n.z[a]! - n.z[b]! || n.y[a]! - n.y[b]! || n.x[a]! - n.x[b]! || a - b;
  return step < 0;
};

/** Directions in which a path may have come to node u, for its next edge in direction d to stay within the budget. */
const comingTo = (turns: Uint8Array, u: number, d: number, budget: number): number[] => {
  const found: number[] = [];
  for (let b = 0; b < DIRECTIONS; b++) {
    const spent = turns[u * DIRECTIONS + b]!;
    if (spent < NONE && Math.min(spent + Number(b !== d), NONE - 1) === budget) found.push(b);
  }
  return found;
};

/**
 * The one path a sweep stands for: among the cheapest the one with the fewest turns, and among those the lowest nodes
 * by z, y, x, chosen from its end. From a source to the node; empty when the node was not reached.
 */
export const pathTo = (sweep: Sweep, target: number): number[] => {
  const { network: n, dist, weights } = sweep;
  if (!(dist[target]! < Number.POSITIVE_INFINITY)) return [];
  const turns = countTurns(sweep);
  const start = roots(sweep);
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
      if (dist[u]! + weights[e]! !== dist[v]! || !arriving.includes(d)) continue;
      if (best >= 0 && !before(n, u, best)) continue;
      const budget = turns[v * DIRECTIONS + d]!;
      const coming = comingTo(turns, u, d, budget);
      if (coming.length === 0 && !(start.has(u) && budget === 0)) continue;
      best = u;
      next = coming;
    }
    if (best < 0) throw new Error(`The sweep has no way back from node ${v}`);
    path.push(best);
    v = best;
    arriving = next;
  }
  return path.reverse();
};
