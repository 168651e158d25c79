import { expect, test } from 'vitest';
import { planJob } from '../../../../src/plan/planJob';
import { planOption } from '../../../../src/plan/planOption';
import { shifted, washerCase } from './washerCase';

/*
 * By hand. An extension is excused up to 72 in (210.12, 2023): the five are at 60 + s, the three at 66 + s, the two at
 * 71 + s, so that the two pass it after s = 1, the three after s = 6, the five after s = 12.
 */
test.each([
  [0, 0],
  [1, 0],
  [1.5, 2],
  [6, 2],
  [6.5, 5],
  [8, 5],
  [12, 5],
  [12.5, 10],
])('at s = %f in, %i circuits need AFCI', (s, count) => {
  const { job, option } = shifted(s);
  const { plan } = planOption(job, option);
  expect(plan.runs.map((r) => r.codeLength)).toEqual([60, 60, 60, 60, 60, 66, 66, 66, 71, 71].map((l) => l + s));
  expect(plan.tally.afciAdded).toBe(count);
});

/*
 * What s = 8 costs more than s = 0 before overhead, from the default book:
 * - five AFCI breakers for plain ones, 5 × (52.00 − 8.50), landed with their neutrals 5 × (0.35 − 0.20) h × 52 = 256.50
 * - each of ten cables is cut 12 in longer (68 + 6 + 54 = 128 → 132 in for 60 + 6 + 54 = 120, and so on): 10 × 0.66 = 6.60
 * - 80 in more pulled: 0.08 h × 52 = 4.16; two staples more, 2 × 0.09 = 0.18
 * - the feeder comes from the other side: 6 in less of it, 0.5 × 3.19 + 0.02 h × 52 = 2.635 less
 * Together 264.80 (rounded by line). Overhead 30 %, margin 10 %: × 1.3 / 0.9 on both sides. Tax, 6 % of material, is not on an allowance:
 * 6 % of (217.50 + 6.60 + 0.18 − 1.60) = 13.36, in dollars before overhead 13.36 × 0.9 / 1.3 = 9.25.
 * So both cost the same where the washer is moved for 264.80 + 9.25 = 274.05.
 */
const EVEN = 274.05;

test('the washer is moved as long as that is cheaper than five AFCI breakers', () => {
  const advised = (dollars: number) => planJob(washerCase(Math.round(dollars * 100))).advice.option;
  expect(advised(EVEN - 0.25)).toBe('near');
  expect(advised(EVEN + 0.25)).toBe('far');
});

test('the turning prices of the comparison are those by hand', () => {
  const { comparisons, advice } = planJob(washerCase(20_000));
  const { breakEvens } = comparisons.find((c) => c.option === 'near')!;
  const at = (id: string) => breakEvens.find((e) => e.id === id)?.at;
  expect(at('allowance:move:washer')).toBeCloseTo(EVEN, 1);
  // 74.05 dear for the move, in breakers at 1.3 / 0.9 + 6 % tax each: 74.05 × 1.4444 / (5 × 1.5044) = 14.22 less than 52
  expect(at('material:breaker:1p 20 AFCI')).toBeCloseTo(37.78, 1);
  const flip = advice.flips.find((f) => f.change.path === '/priceBook')!;
  const book = flip.change.value as { materials: { id: string; dollars: number }[] };
  const dollars = book.materials.find((m) => m.id === 'breaker:1p 20 AFCI')!.dollars;
  expect(flip.option).toBe('far');
  expect(dollars).toBeLessThan(37.78);
  expect(dollars).toBeGreaterThan(36.5);
});
