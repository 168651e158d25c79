import { beforeAll, expect, test } from 'vitest';
import { createSolver } from '../../../bin/solver';
import type { Solve } from '../../../src/facts/routing';

/** Choose places for goods of 14 weights so that three capacities are just used up: small, and not solved at the root. */
const COSTS = [73, 91, 44, 68, 57, 83, 39, 95, 62, 78, 51, 87, 66, 49];
const NEEDS = [
  [61, 87, 35, 72, 44, 90, 31, 84, 70, 66, 58, 79, 53, 47],
  [82, 74, 49, 55, 63, 71, 45, 88, 52, 81, 37, 92, 69, 40],
  [54, 95, 41, 77, 59, 68, 33, 76, 65, 85, 46, 73, 80, 57],
];
const LEAST = [431, 447, 453];

const lp = [
  'Minimize',
  ` obj: ${COSTS.map((cost, i) => `+ ${cost} x${i}`).join(' ')}`,
  'Subject To',
  ...NEEDS.map((row, k) => ` c${k}: ${row.map((need, i) => `+ ${need} x${i}`).join(' ')} >= ${LEAST[k]}`),
  'Binary',
  ...COSTS.map((_, i) => ` x${i}`),
  'End',
].join('\n');

/** Every one of the 2^14 choices. */
const optimum = Math.min(
  ...Array.from({ length: 2 ** COSTS.length }, (_, mask) => {
    const sum = (list: readonly number[]) => list.reduce((n, x, i) => n + ((mask >> i) & 1 ? x : 0), 0);
    return NEEDS.every((row, k) => sum(row) >= LEAST[k]!) ? sum(COSTS) : Number.POSITIVE_INFINITY;
  }),
);

let solve: Solve;
beforeAll(async () => {
  solve = await createSolver();
});

test('run to its end it finds the least of all choices, by name', async () => {
  const found = await solve({ lp, nodeLimit: 20_000 });
  expect(found).toMatchObject({ status: 'optimal', objective: optimum });
  if (found.status !== 'optimal') return;
  expect(COSTS.reduce((n, cost, i) => n + cost * found.values[`x${i}`]!, 0)).toBeCloseTo(optimum, 6);
});

test('stopped at the node limit it gives a bound that no choice is below, and closes in on it', async () => {
  const bounds: number[] = [];
  for (const nodeLimit of [1, 2, 3]) {
    const found = await solve({ lp, nodeLimit });
    if (found.status !== 'stopped') continue;
    expect(found.bound).toBeLessThanOrEqual(optimum + 1e-6);
    expect(found.bound).toBeGreaterThan(0);
    bounds.push(found.bound);
  }
  expect(bounds.length).toBeGreaterThan(0);
  expect(bounds).toEqual([...bounds].sort((a, b) => a - b));
});

test('stopped before it knows anything, or asked for what cannot be, it gives no bound', async () => {
  expect((await solve({ lp, nodeLimit: 0 })).status).toBe('failed');
  const impossible = 'Minimize\n obj: x\nSubject To\n c: x >= 5\nBinary\n x\nEnd';
  expect((await solve({ lp: impossible, nodeLimit: 20_000 })).status).toBe('failed');
});
