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

/**
 * The one path a sweep stands for: among the cheapest the one with the fewest turns, and among those the lowest nodes
 * by z, y, x seen from its end. From a source to the node; empty when the node was not reached.
 */
export const pathTo = (sweep: Sweep, target: number): number[] => {
  const { network: n, dist, weights } = sweep;
  if (!(dist[target]! < Number.POSITIVE_INFINITY)) return [];
  const turns = countTurns(sweep);
  const start = roots(sweep);
  const path = [target];
  let v = target;
  /** Direction of the edge that follows, and how many turns may still be spent up to v with it. */
  let d = -1;
  if (!start.has(v))
    for (let b = 0; b < DIRECTIONS; b++)
      if (turns[v * DIRECTIONS + b]! < NONE && (d < 0 || turns[v * DIRECTIONS + b]! < turns[v * DIRECTIONS + d]!))
        d = b;
  while (!start.has(v) || (d >= 0 && path.length === 1)) {
    if (d < 0) return [];
    const budget = turns[v * DIRECTIONS + d]!;
    let best = -1;
    let bestDirection = -1;
    for (let e = n.off[v]!; e < n.off[v + 1]!; e++) {
      const u = n.to[e]!;
      if (dist[u]! + weights[e]! !== dist[v]! || directionOf(n, u, v) !== d) continue;
      let direction = -2;
      if (start.has(u) && budget === 0) direction = -1;
      else
        for (let b = 0; b < DIRECTIONS && direction === -2; b++) {
          const spent = turns[u * DIRECTIONS + b]!;
          if (spent < NONE && Math.min(spent + Number(b !== d), NONE - 1) === budget) direction = b;
        }
      if (direction !== -2 && (best < 0 || before(n, u, best))) {
        best = u;
        bestDirection = direction;
      }
    }
    if (best < 0) return [];
    path.push(best);
    v = best;
    d = bestDirection;
    if (d === -1) break;
  }
  return path.reverse();
};
