import { expect, test } from 'vitest';
import {
  commonIntervals,
  freeIntervals,
  overlap,
  slabProjection,
  stripProjection,
} from '../../../src/geometry/freeIntervals';
import { type Polygon, strictlyInside } from '../../../src/geometry/polygon';
import type { Pt } from '../../../src/units/types';
import { random } from '../../support/random';

test('free stretches are closed: touching blockers leave a point, overlapping ones none', () => {
  expect(freeIntervals([0, 10], [])).toEqual([[0, 10]]);
  expect(freeIntervals([0, 10], [[2, 4]])).toEqual([
    [0, 2],
    [4, 10],
  ]);
  expect(
    freeIntervals(
      [0, 10],
      [
        [5, 7],
        [2, 5],
      ],
    ),
  ).toEqual([
    [0, 2],
    [5, 5],
    [7, 10],
  ]);
  expect(
    freeIntervals(
      [0, 10],
      [
        [2, 6],
        [3, 4],
        [5, 8],
      ],
    ),
  ).toEqual([
    [0, 2],
    [8, 10],
  ]);
  expect(freeIntervals([0, 10], [[-5, 20]])).toEqual([]);
  expect(
    freeIntervals(
      [0, 10],
      [
        [-5, 0],
        [10, 12],
      ],
    ),
  ).toEqual([[0, 10]]);
});

test('common stretches keep points', () => {
  expect(
    commonIntervals(
      [
        [0, 4],
        [6, 9],
      ],
      [[4, 7]],
    ),
  ).toEqual([
    [4, 4],
    [6, 7],
  ]);
});

test('a touch is no overlap', () => {
  expect(overlap([0, 5], [5, 8])).toBe(false);
  expect(overlap([0, 5], [4.999, 8])).toBe(true);
});

const box: Polygon = [
  [10, 0],
  [20, 0],
  [20, 30],
  [10, 30],
];
test('a box covers its width between any two levels it passes; touching a level covers nothing', () => {
  expect(slabProjection(box, 5, 41)).toEqual([[10, 20]]);
  expect(slabProjection(box, 5, 10)).toEqual([[10, 20]]);
  expect(slabProjection(box, 30, 40)).toEqual([]);
  expect(slabProjection(box, -9, 0)).toEqual([]);
  expect(slabProjection(box, 4, 4)).toEqual([]);
  expect(stripProjection(box, 0, 12)).toEqual([[0, 30]]);
});

test('a square turned 45° covers only what reaches between the levels', () => {
  const diamond: Polygon = [
    [0, -10],
    [10, 0],
    [0, 10],
    [-10, 0],
  ];
  expect(slabProjection(diamond, 4, 40)).toEqual([[-6, 6]]);
  expect(slabProjection(diamond, -40, 40)).toEqual([[-10, 10]]);
  expect(slabProjection(diamond, 10, 40)).toEqual([]);
});

test('a U covers two stretches between its legs’ ends, one where its floor is met; either winding', () => {
  const u: Polygon = [
    [0, 0],
    [30, 0],
    [30, 20],
    [20, 20],
    [20, 5],
    [10, 5],
    [10, 20],
    [0, 20],
  ];
  for (const outline of [u, [...u].reverse()]) {
    expect(slabProjection(outline, 6, 40)).toEqual([
      [0, 10],
      [20, 30],
    ]);
    expect(slabProjection(outline, 4, 40)).toEqual([[0, 30]]);
    expect(slabProjection(outline, 5, 40)).toEqual([
      [0, 10],
      [20, 30],
    ]);
  }
});

test('random star-shaped outlines: a sampled x is covered exactly when some point of its line is inside', () => {
  const { next } = random(7);
  const tally = { covered: 0, free: 0 };
  for (let round = 0; round < 25; round++) {
    const corners = 5 + Math.floor(next() * 6);
    const outline = Array.from({ length: corners }, (_, i): Pt => {
      const angle = (2 * Math.PI * i) / corners;
      const radius = 5 + 25 * next();
      return [radius * Math.cos(angle), radius * Math.sin(angle)];
    });
    const low = -20 + 30 * next();
    const high = low + 1 + 20 * next();
    const stretches = slabProjection(outline, low, high);
    for (let x = -30; x <= 30; x += 0.37) {
      // Sampling can miss a sliver, so an x it finds must be covered, and a covered x clear of the ends must be found.
      let found = false;
      for (let k = 1; k < 150 && !found; k++) found = strictlyInside([x, low + ((high - low) * k) / 150], outline);
      const covered = stretches.some(([from, to]) => x > from && x < to);
      if (found) expect([round, x, covered]).toEqual([round, x, true]);
      const well = stretches.some(([from, to]) => x > from + 1 && x < to - 1);
      if (well) expect([round, x, found]).toEqual([round, x, true]);
      if (covered) tally.covered++;
      else tally.free++;
    }
  }
  expect(Math.min(tally.covered, tally.free)).toBeGreaterThan(500);
});
