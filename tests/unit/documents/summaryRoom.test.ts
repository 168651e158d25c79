import { expect, test } from 'vitest';
import { drawingHeights } from '../../../src/documents/summaryRoom';

const notes = (count: number) => [Array.from({ length: count }, () => 'x'.repeat(100)), []];

test('few notes leave the drawings their full height, many take it down to what can still be read', () => {
  expect(drawingHeights([[], []])).toEqual({ plan: 384, wall: 232 });
  expect(drawingHeights(notes(4))).toEqual({ plan: 384, wall: 232 });
  const some = drawingHeights(notes(12));
  expect(some.plan).toBeLessThan(384);
  expect(some.plan).toBeGreaterThan(270);
  expect(some.wall).toBeLessThan(232);
  expect(drawingHeights(notes(500))).toEqual({ plan: 270, wall: 150 });
});
