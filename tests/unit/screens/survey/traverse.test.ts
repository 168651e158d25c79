import fc from 'fast-check';
import { expect, test } from 'vitest';
import { applyEdit } from '../../../../src/job/applyEdit';
import { blankJob } from '../../../../src/job/blankJob';
import {
  closedStraight,
  closing,
  type Leg,
  lengthsOf,
  namedWalls,
  rectangle,
  spread,
  walk,
  wentLeft,
} from '../../../../src/screens/survey/traverse';

const right = (...lengths: number[]): Leg[] => lengths.map((length) => ({ length, turn: 90 }));

test('four walls of a rectangle close', () => {
  const legs = right(168, 240, 168, 240);
  expect(walk(legs).corners).toEqual([
    [0, 0],
    [0, 168],
    [240, 168],
    [240, 0],
  ]);
  expect(closing(legs)).toMatchObject({ state: 'closed', miss: 0 });
  expect(spread(legs)).toEqual(rectangle(240, 168));
});

test('an L of six walls with one turn to the left closes', () => {
  const legs: Leg[] = [
    { length: 312, turn: 90 },
    { length: 228, turn: 90 },
    { length: 120, turn: -90 },
    { length: 156, turn: 90 },
    { length: 192, turn: 90 },
    { length: 384, turn: 90 },
  ];
  expect(closing(legs).state).toBe('closed');
  expect(namedWalls(spread(legs)).map((w) => w.id)).toEqual(['west', 'north', 'east', 'north-2', 'east-2', 'south']);
});

// The transit rule, as textbooks of plane surveying give it: the correction to a course's latitude is the error in
// latitude times that latitude over the sum of all latitudes without signs, departures likewise. Figures worked by hand.
test('a closing error is spread by the transit rule, and square walls stay square', () => {
  const legs = right(168, 240, 168, 240.5);
  const closed = closing(legs);
  expect(closed).toMatchObject({ state: 'small', gap: [0.5, 0], miss: 0.5 });
  // 1/2 in over 480 1/2 in of walls across: north gains 0.5 × 240/480.5, south loses 0.5 × 240.5/480.5
  expect(spread(legs)).toEqual([
    [0, 0],
    [0, 168],
    [240.25, 168],
    [240.25, 0],
  ]);
  expect(lengthsOf(spread(legs))).toEqual([168, 240.25, 168, 240.25]);
});

test('a wall measured a foot wrong is not spread, and may be closed by one more wall', () => {
  const legs = right(168, 240, 168, 228);
  expect(closing(legs)).toMatchObject({ state: 'large', miss: 12, gap: [-12, 0] });
  expect(closedStraight(right(168, 240, 168))).toEqual(rectangle(240, 168));
});

test('half a percent of the walls is the most that is spread, an inch in a small room', () => {
  expect(closing(right(168, 240, 168, 240)).limit).toBeCloseTo(816 * 0.005, 9);
  expect(closing(right(30, 30, 30, 30)).limit).toBe(1);
  expect(closing(right(30, 30)).state).toBe('open');
});

test('going round to the left is seen', () => {
  const left = right(168, 240, 168, 240).map((l) => ({ ...l, turn: -90 }));
  expect(wentLeft(spread(left))).toBe(true);
  expect(wentLeft(spread(right(168, 240, 168, 240)))).toBe(false);
});

test('walls at an angle: an octagon of 5-ft walls closes within the precision of a length', () => {
  const legs = Array.from({ length: 8 }, () => ({ length: 60, turn: 45 }));
  expect(closing(legs).state).toBe('closed');
  expect(namedWalls(spread(legs)).map((w) => w.id)).toEqual([
    'west',
    'north-west',
    'north',
    'north-east',
    'east',
    'south-east',
    'south',
    'south-west',
  ]);
});

test('any rectangle measured with small errors becomes a room that the job takes, square', () => {
  const inch = fc.integer({ min: 60 * 16, max: 500 * 16 }).map((n) => n / 16);
  const error = fc.integer({ min: -8, max: 8 }).map((n) => n / 16);
  fc.assert(
    fc.property(inch, inch, error, error, (a, b, e, f) => {
      const legs = right(a, b, a + e, b + f);
      const corners = spread(legs);
      for (const [i, [x, y]] of corners.entries()) {
        const [nx, ny] = corners[(i + 1) % 4]!;
        expect(x === nx || y === ny).toBe(true);
      }
      const drawn = applyEdit(blankJob({ id: 'b', on: '' }), { edit: 'draw room', walls: namedWalls(corners) });
      expect(drawn.ok).toBe(true);
      // no wall changes by more than the whole error
      const worst = Math.max(...lengthsOf(corners).map((l, k) => Math.abs(l - legs[k]!.length)));
      expect(worst).toBeLessThanOrEqual(Math.abs(e) + Math.abs(f) + 1 / 32);
    }),
    { numRuns: 200, seed: 8 },
  );
});
