import { expect, test } from 'vitest';
import { bend } from '../../../src/scene/bends';
import type { Pt3 } from '../../../src/units/types';

const far = (a: Pt3, b: Pt3) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

test('a square corner becomes a quarter circle of the radius, the ends stay', () => {
  const course = bend(
    [
      [0, 0, 0],
      [20, 0, 0],
      [20, 0, 20],
    ],
    4,
    8,
  );
  expect(course[0]).toEqual([0, 0, 0]);
  expect(course.at(-1)).toEqual([20, 0, 20]);
  const arc = course.slice(1, -1);
  expect(arc).toHaveLength(9);
  for (const p of arc) expect(far(p, [16, 0, 4])).toBeCloseTo(4, 9);
  expect(far(arc[0]!, [16, 0, 0])).toBeLessThan(1e-9);
  expect(far(arc.at(-1)!, [20, 0, 4])).toBeLessThan(1e-9);
});

test('a leg too short for the radius gets the largest arc that fits, and never a loop back', () => {
  const course = bend(
    [
      [0, 0, 0],
      [20, 0, 0],
      [20, 2, 0],
      [40, 2, 0],
    ],
    6,
    4,
  );
  for (let i = 1; i < course.length; i++) expect(course[i]![0]).toBeGreaterThanOrEqual(course[i - 1]![0] - 1e-9);
  expect(Math.max(...course.map((p) => p[1]))).toBeLessThanOrEqual(2 + 1e-9);
});

test('straight on and back on itself have no arc; float noise in a corner does no harm', () => {
  expect(
    bend(
      [
        [0, 0, 0],
        [5, 0, 0],
        [9, 0, 0],
      ],
      2,
      4,
    ),
  ).toEqual([
    [0, 0, 0],
    [5, 0, 0],
    [9, 0, 0],
  ]);
  expect(
    bend(
      [
        [0, 0, 0],
        [5, 0, 0],
        [1, 0, 0],
      ],
      2,
      4,
    ),
  ).toEqual([
    [0, 0, 0],
    [5, 0, 0],
    [1, 0, 0],
  ]);
  const noisy = bend(
    [
      [0, 0, 0],
      [9, 0, 0],
      [9.002, 0.001, 0],
      [9.002, 0.001, -30],
    ],
    2,
    4,
  );
  expect(noisy.flat().every(Number.isFinite)).toBe(true);
});
