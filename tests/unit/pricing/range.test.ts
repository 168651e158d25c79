import { expect, test } from 'vitest';
import { pertMean, pertVariance, type RangePart, rangeOf } from '../../../src/pricing/range';

const part = (id: string, group: RangePart['group'], low: number, likely: number, high: number): RangePart => ({
  id,
  group,
  low,
  likely,
  high,
});

test('one Beta-PERT part: mean (a + 4m + b) / 6 and variance (mean - a)(b - mean) / 7', () => {
  // The exact variance of the beta with shape sum 6: alpha·beta / (36 · 7) of the span squared (textbook beta distribution).
  const [a, m, b] = [2, 3, 10];
  const alpha = 1 + (4 * (m - a)) / (b - a);
  const beta = 1 + (4 * (b - m)) / (b - a);
  expect(pertMean(a, m, b)).toBeCloseTo(a + ((b - a) * alpha) / 6, 12);
  expect(pertVariance(a, m, b)).toBeCloseTo((alpha * beta * (b - a) ** 2) / (36 * 7), 12);
});

test('lines of one group move together, single ones do not', () => {
  const many = (group: RangePart['group']) =>
    rangeOf(Array.from({ length: 40 }, (_, i) => part(`p${i}`, group, 9, 10, 11)));
  const width = (range: { low: number; high: number }) => range.high - range.low;
  const alone = width(rangeOf([part('p', 'labor', 9, 10, 11)]));
  expect(width(many('single'))).toBeCloseTo(alone * Math.sqrt(40), 6);
  // Var = n s² (1 - rho) + rho (n s)², rho = 0.5
  expect(width(many('labor'))).toBeCloseTo(alone * Math.sqrt(40 * 0.5 + 0.5 * 1600), 6);
  expect(width(many('labor'))).toBeLessThan(40 * alone);
});

test('likely lies inside, the ends are never passed, and the shares make up the width', () => {
  const skewed = rangeOf(Array.from({ length: 60 }, (_, i) => part(`p${i}`, 'single', 10, 10, 20)));
  expect(skewed.low).toBe(600); // the mean's lower tail lies above the sum of likely: likely is the low end
  const range = rangeOf([part('a', 'labor', 1, 2, 6), part('b', 'labor', 3, 4, 5), part('c', 'single', -9, -8, -8)]);
  expect(range.low).toBeLessThanOrEqual(range.likely);
  expect(range.high).toBeGreaterThanOrEqual(range.likely);
  expect(range.shares.reduce((sum, share) => sum + share.amount, 0)).toBeCloseTo(range.high - range.low, 9);
  expect(range.shares[0]?.id).toBe('a');
  expect(rangeOf([])).toEqual({ low: 0, likely: 0, high: 0, shares: [] });
  expect(rangeOf([part('fixed', 'single', 5, 5, 5)])).toMatchObject({ low: 5, likely: 5, high: 5 });
});
