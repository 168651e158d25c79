import FlatQueue from 'flatqueue';
import { describe, expect, it } from 'vitest';
import { pathTo } from '../../../src/routing/path';
import { sweep } from '../../../src/routing/sweep';
import type { Network } from '../../../src/routing/types';
import { randomGraph } from './randomGraph';

/** Dijkstra's method on a binary heap from another hand. */
const dijkstra = (n: Network, weights: Float64Array, sources: readonly { node: number; cost: number }[]) => {
  const dist = new Float64Array(n.nodeCount).fill(Number.POSITIVE_INFINITY);
  const queue = new FlatQueue<number>();
  for (const { node, cost } of sources)
    if (cost < dist[node]!) {
      dist[node] = cost;
      queue.push(node, cost);
    }
  while (queue.length > 0) {
    const cost = queue.peekValue()!;
    const u = queue.pop()!;
    if (cost > dist[u]!) continue;
    for (let e = n.off[u]!; e < n.off[u + 1]!; e++) {
      const through = cost + weights[e]!;
      if (through < dist[n.to[e]!]!) {
        dist[n.to[e]!] = through;
        queue.push(n.to[e]!, through);
      }
    }
  }
  return dist;
};

const CASES = [
  { heaviest: 10, far: 0 },
  { heaviest: 3_000_000, far: 0 },
  { heaviest: 1, far: 50_000 },
  { heaviest: 100_000, far: 900_000_000 },
] as const;

describe('a sweep', () => {
  it.each(CASES)('finds the costs Dijkstra finds, weights to $heaviest, sources to $far apart', ({ heaviest, far }) => {
    for (let seed = 1; seed <= 12; seed++) {
      const nodes = 50 * seed;
      const { network, weights } = randomGraph(seed, nodes, nodes * 2, heaviest);
      const sources = [
        { node: 0, cost: 0 },
        { node: nodes - 1, cost: far },
        { node: nodes >> 1, cost: Math.floor(far / 3) },
      ];
      expect([...sweep(network, weights, sources).dist]).toEqual([...dijkstra(network, weights, sources)]);
    }
  });

  it('stops at a limit and is exact below it', () => {
    const { network, weights } = randomGraph(5, 400, 900, 1000);
    const whole = dijkstra(network, weights, [{ node: 3, cost: 0 }]);
    const part = sweep(network, weights, [{ node: 3, cost: 0 }], 1500).dist;
    const below = [...whole].filter((d) => d <= 1500).length;
    expect(below).toBeGreaterThan(20);
    expect([...part]).toEqual([...whole].map((d) => (d <= 1500 ? d : Number.POSITIVE_INFINITY)));
  });

  it('without a source reaches nothing', () => {
    const { network, weights } = randomGraph(1, 10, 20, 5);
    expect([...sweep(network, weights, []).dist].every((d) => d === Number.POSITIVE_INFINITY)).toBe(true);
  });
});

describe('the path of a sweep', () => {
  it('starts at a source, ends at the node, and costs what the sweep says', () => {
    for (let seed = 1; seed <= 10; seed++) {
      const { network, weights } = randomGraph(seed, 200, 500, 4);
      const done = sweep(network, weights, [
        { node: 7, cost: 0 },
        { node: 90, cost: 2 },
      ]);
      for (let node = 0; node < 200; node++) {
        const path = pathTo(done, node);
        if (done.dist[node] === Number.POSITIVE_INFINITY) {
          expect(path).toEqual([]);
          continue;
        }
        expect(path.at(-1)).toBe(node);
        let cost = path[0] === 7 ? 0 : path[0] === 90 ? 2 : Number.NaN;
        for (let i = 1; i < path.length; i++) {
          let least = Number.POSITIVE_INFINITY;
          for (let e = network.off[path[i - 1]!]!; e < network.off[path[i - 1]! + 1]!; e++)
            if (network.to[e] === path[i]) least = Math.min(least, weights[e]!);
          cost += least;
        }
        expect(cost).toBe(done.dist[node]);
      }
    }
  });

  it('takes the fewest turns among equals, then the lowest nodes', () => {
    // a 4 by 4 grid of equal edges: of all ways from one corner to the other, one turn is the least
    const n = 4;
    const edges: [number, number][] = [];
    for (let y = 0; y < n; y++)
      for (let x = 0; x < n; x++) {
        if (x + 1 < n) edges.push([y * n + x, y * n + x + 1]);
        if (y + 1 < n) edges.push([y * n + x, y * n + n + x]);
      }
    const both = edges.flatMap(([a, b]) => [
      [a, b],
      [b, a],
    ]) as [number, number][];
    both.sort((p, q) => p[0] - q[0]);
    const off = new Int32Array(n * n + 1);
    for (const [a] of both) off[a + 1]!++;
    for (let i = 0; i < n * n; i++) off[i + 1]! += off[i]!;
    const network = {
      nodeCount: n * n,
      off,
      to: Int32Array.from(both, ([, b]) => b),
      x: Int32Array.from({ length: n * n }, (_, i) => i % n),
      y: Int32Array.from({ length: n * n }, (_, i) => Math.floor(i / n)),
      z: new Int32Array(n * n),
      cls: new Uint8Array(both.length),
    } as unknown as Network;
    const done = sweep(network, new Float64Array(both.length).fill(1), [{ node: 0, cost: 0 }]);
    expect(pathTo(done, 15)).toEqual([0, 1, 2, 3, 7, 11, 15]);
  });
});
