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

test('every sixty-fourth up to 13 ft is read as it is written: 11/16 is not 1 and 1/16', () => {
  for (let n = 0; n <= 13 * 12 * 64; n++)
    expect(parseLength(formatFeetInches(n / 64, 64))).toEqual({ ok: true, value: n / 64 });
  expect(parseLength('11/16')).toEqual({ ok: true, value: 11 / 16 });
  expect(parseLength('7½')).toEqual({ ok: true, value: 7.5 });
});
