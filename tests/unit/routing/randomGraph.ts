import type { Network } from '../../../src/routing/types';
import { random } from '../../support/random';

/** A random graph in the network's own form: only what a sweep and a path read. */
export const randomGraph = (seed: number, nodes: number, edges: number, heaviest: number) => {
  const r = random(seed);
  const list = Array.from(
    { length: edges },
    () => [r.int(0, nodes - 1), r.int(0, nodes - 1), r.int(1, heaviest), r.int(1, 12)] as const,
  );
  const both = list.flatMap(([a, b, w, l]) => [[a, b, w, l] as const, [b, a, w, l] as const]);
  both.sort((p, q) => p[0] - q[0]);
  const off = new Int32Array(nodes + 1);
  for (const [a] of both) off[a + 1]!++;
  for (let n = 0; n < nodes; n++) off[n + 1]! += off[n]!;
  const place = () => Int32Array.from({ length: nodes }, () => r.int(0, 500));
  const network = {
    nodeCount: nodes,
    off,
    to: Int32Array.from(both, ([, b]) => b),
    x: place(),
    y: place(),
    z: place(),
    cls: new Uint8Array(both.length),
  } as unknown as Network;
  const weights = Float64Array.from(both, ([, , w]) => w);
  const lengths = Float64Array.from(both, ([, , , l]) => l);
  return { network, weights, lengths };
};
