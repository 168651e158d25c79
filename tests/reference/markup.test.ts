import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { markupOf } from '../../src/pricing/onTop';

describe('markup and margin', () => {
  test('published pairs of markup and margin', () => {
    const table: { markupMath: { examples: readonly { markup: number; margin: number }[] } } = JSON.parse(
      readFileSync(new URL('./published/12_labour_rates_markup.json', import.meta.url), 'utf8'),
    );
    // Printed to three figures; m / (1 + m).
    for (const { markup, margin } of table.markupMath.examples)
      expect(Math.abs(markupOf({ as: 'margin', rate: margin })! - markup)).toBeLessThan(0.0025);
  });
});
