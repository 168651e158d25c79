import { expect, test } from 'vitest';
import { lengthText } from '../../../src/screens/parts/lengthParts';
import { formatFeetInches, parseLength } from '../../../src/units/length';

test.each([
  [0, '0″'],
  [1 / 2, '1/2″'],
  [11 / 16, '11/16″'],
  [7, '7″'],
  [7.5, '7 1/2″'],
  [12, '1′-0″'],
  [12.25, '1′-0 1/4″'],
  [126.5, '10′-6 1/2″'],
  [-3.875, '-3 7/8″'],
])('%f in is written %s, and read back as the same', (inches, written) => {
  expect(lengthText(inches)).toBe(written);
  expect(parseLength(formatFeetInches(inches))).toEqual({ ok: true, value: inches });
});
