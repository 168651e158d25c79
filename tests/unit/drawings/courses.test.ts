import { expect, test } from 'vitest';
import { chainageOf, courseLength, inPlan, piece, risesAway } from '../../../src/drawings/courses';
import type { Pt3 } from '../../../src/units/types';

// Worked by hand: up 24, along 30, away through the floor 6.
const COURSE: readonly Pt3[] = [
  [0, 0, 70],
  [0, 0, 94],
  [30, 0, 94],
  [30, 0, 100],
];

test('length, pieces and chainage of a course with a riser', () => {
  expect(courseLength(COURSE)).toBe(60);
  expect(piece(COURSE, 12, 39)).toEqual([
    [0, 0, 82],
    [0, 0, 94],
    [15, 0, 94],
  ]);
  expect(piece(COURSE, 60, 60)).toEqual([]);
  expect(chainageOf(COURSE, [10, 3, 94])).toBe(34);
  expect(chainageOf(COURSE, [0, 0, 70])).toBe(0);
});

test('risers are points in plan, and only a course that ends upward comes from above', () => {
  expect(inPlan(COURSE)).toEqual([
    [0, 0],
    [30, 0],
  ]);
  expect(risesAway(COURSE)).toBe(true);
  expect(risesAway([...COURSE].reverse())).toBe(false);
  expect(risesAway(COURSE.slice(0, 3))).toBe(false);
});
