import { expect, test } from 'vitest';
import { longestOfEach, type Stretch, trunksOf } from '../../../src/drawings/trunks';

const STRETCHES: readonly Stretch[] = [
  { cable: 'a', from: [0, 0], to: [100, 0] },
  { cable: 'b', from: [60, 0], to: [20, 0] }, // the other way round
  { cable: 'c', from: [0, 5], to: [100, 5] }, // beside, not in it
  { cable: 'a', from: [100, 0], to: [100, 40] },
  { cable: 'd', from: [50, 50], to: [50, 50] }, // a riser
];

test('cables laid over each other are one trunk, split where the set of cables changes', () => {
  const trunks = trunksOf(STRETCHES).map((t) => [...t.from, ...t.to, t.cables.join('')]);
  expect(trunks).toHaveLength(5);
  expect(trunks).toContainEqual([0, 0, 20, 0, 'a']);
  expect(trunks).toContainEqual([20, 0, 60, 0, 'ab']);
  expect(trunks).toContainEqual([60, 0, 100, 0, 'a']);
  expect(trunks).toContainEqual([0, 5, 100, 5, 'c']);
  expect(trunks).toContainEqual([100, 0, 100, 40, 'a']);
});

test('the order of the stretches changes nothing', () => {
  expect(trunksOf([...STRETCHES].reverse())).toEqual(trunksOf(STRETCHES));
});

test('a slanted run is merged as a straight one', () => {
  const slanted = trunksOf([
    { cable: 'a', from: [0, 0], to: [30, 30] },
    { cable: 'b', from: [10, 10], to: [20, 20] },
  ]);
  expect(slanted.map((t) => t.cables)).toEqual([['a'], ['a', 'b'], ['a']]);
});

test('each set of cables is counted once, on its longest stretch', () => {
  const counted = longestOfEach(trunksOf(STRETCHES));
  expect(counted.map((t) => t.cables.join('')).sort()).toEqual(['a', 'ab', 'c']);
  const a = counted.find((t) => t.cables.join('') === 'a');
  expect(Math.hypot(a!.to[0] - a!.from[0], a!.to[1] - a!.from[1])).toBe(40);
});
