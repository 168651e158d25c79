import { expect, test } from 'vitest';
import { buildNetwork } from '../../../src/routing/network';
import { EDGE } from '../../../src/routing/types';
import { demoJob } from '../../support/demos';

// A stud wall begins and ends with a stud of 1-1/2 in (actual size of a 2x4, common practice, no source).

test('no cable goes up where the first or last stud of a wall stands', () => {
  const job = demoJob('l-shaped');
  const option = job.options.find((o) => o.id === 'relocate-a')!;
  const n = buildNetwork(job, option, { points: [] });
  // the wall that comes under the beam runs from x = 0 to x = 213.75 along y = 150
  const wall = n.faces.findIndex((f) => f.wall === 'beam-wall');
  expect(wall).toBeGreaterThanOrEqual(0);
  const ups: number[] = [];
  for (let u = 0; u < n.nodeCount; u++)
    for (let e = n.off[u]!; e < n.off[u + 1]!; e++)
      if (n.cls[e] === EDGE.studUp && n.face[u] === wall && n.face[n.to[e]!] === wall) ups.push(n.px[u]!);
  expect(Math.min(...ups)).toBe(1.5);
  expect(Math.max(...ups)).toBe(213.75 - 1.5);
});
