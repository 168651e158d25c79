import { expect, test } from 'vitest';
import { SPOT_ANSWERS, SPOTS } from './examples/spots';

// Source of every figure: the table file the assertion names, with its NEC, IRC, UL or BLS section inside.
test.each(SPOTS)('$assertion', ({ assertion, expected }) => {
  expect(SPOT_ANSWERS[assertion], 'the product has a function for it').toBeDefined();
  expect(SPOT_ANSWERS[assertion]!()).toEqual(expected);
});

test('all 70 are asked, and nothing else', () => {
  expect(SPOTS.length).toBe(70);
  expect(Object.keys(SPOT_ANSWERS).sort()).toEqual(SPOTS.map((s) => s.assertion).sort());
});
