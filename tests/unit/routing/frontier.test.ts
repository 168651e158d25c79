import { describe, expect, it } from 'vitest';
import { frontier, labelWithin } from '../../../src/routing/frontier';
import { pathTo } from '../../../src/routing/path';
import { randomGraph } from './randomGraph';

const MOST = 60;
/** Least cost of a way to every node by its exact length, step by step of length: no queue, no labels. */
const byLength = (
  { network: n, weights, lengths }: ReturnType<typeof randomGraph>,
  starts: readonly { node: number; cost: number; length: number }[],
) => {
  const least = Array.from({ length: MOST + 1 }, () => new Float64Array(n.nodeCount).fill(Number.POSITIVE_INFINITY));
  for (const s of starts) least[s.length]![s.node] = Math.min(least[s.length]![s.node]!, s.cost);
  for (let length = 0; length <= MOST; length++)
    for (let u = 0; u < n.nodeCount; u++)
      for (let e = n.off[u]!; e < n.off[u + 1]!; e++) {
        const then = least[length + lengths[e]!];
        if (then) then[n.to[e]!] = Math.min(then[n.to[e]!]!, least[length]![u]! + weights[e]!);
      }
  return least;
};

describe('ways of which none is both cheaper and shorter', () => {
  const starts = [
    { node: 3, cost: 0, length: 0 },
    { node: 40, cost: 5, length: 2 },
  ];
  it('are those found by trying every length', () => {
    for (let seed = 1; seed <= 12; seed++) {
      const graph = randomGraph(seed, 60, 160, 30);
      const found = frontier(graph.network, graph.weights, graph.lengths, starts, MOST);
      const least = byLength(graph, starts);
      for (let node = 0; node < 60; node++) {
        const labels: [number, number][] = [];
        for (let i = found.first[node]!; i >= 0; i = found.next[i]!) labels.push([found.cost[i]!, found.length[i]!]);
        let best = Number.POSITIVE_INFINITY;
        const expected = least.flatMap((row, length): [number, number][] => {
          if (row[node]! >= best) return [];
          best = row[node]!;
          return [[best, length]];
        });
        expect(labels).toEqual(expected.reverse());
      }
    }
  });
  it('within a length the cheapest is taken, and its path costs and measures what it says', () => {
    const { network, weights, lengths } = randomGraph(5, 60, 160, 30);
    const found = frontier(network, weights, lengths, starts, MOST);
    for (let node = 0; node < 60; node++) {
      const label = labelWithin(found, node, 30);
      if (label < 0) continue;
      expect(found.length[label]).toBeLessThanOrEqual(30);
      const path = pathTo(found, label);
      expect(path.at(-1)).toBe(node);
      const reach = path.slice(1).reduce(
        (pairs, to, i) =>
          pairs.flatMap(([cost, length]) => {
            const out: [number, number][] = [];
            for (let e = network.off[path[i]!]!; e < network.off[path[i]! + 1]!; e++)
              if (network.to[e] === to) out.push([cost + weights[e]!, length + lengths[e]!]);
            return out;
          }),
        starts.filter((s) => s.node === path[0]).map((s): [number, number] => [s.cost, s.length]),
      );
      expect(reach).toContainEqual([found.cost[label], found.length[label]]);
    }
  });
});
