import { describe, expect, test } from 'vitest';
import type { Plan } from '../../../src/facts/result';
import { decision, recommended } from '../../../src/plan/decision';

/** As much of a plan as the decision looks at. */
const plan = (option: string, likelyCents: number, complete = true, stops = 0): Plan =>
  ({ option, tally: { stops, likelyCents }, runs: [], price: { complete } }) as unknown as Plan;
const job = { options: [] };
const said = (...plans: Plan[]): string => decision(job, plans, recommended(plans));

describe('the decision', () => {
  test('compares complete prices, in whole dollars', () => {
    const text = said(plan('a', 523_449), plan('b', 655_738));
    expect(text).toBe('a: no conflict found in the checks made, and $1,323 less than b at the likely price.'); // 5,234 and 6,557
    expect(said(plan('a', 523_449), plan('b', 523_451))).toContain('$1 less than b'); // each as it is printed
    expect(said(plan('a', 523_410), plan('b', 523_440))).toContain('at the same likely price as b');
  });
  test('never compares a complete price with one that has holes', () => {
    expect(said(plan('a', 600_000), plan('b', 500_000, false))).toMatch(/^a: .*the only price that is complete/);
    expect(said(plan('a', 600_000), plan('b', 500_000, false))).not.toContain('$');
    const three = said(plan('a', 600_000), plan('b', 500_000, false), plan('c', 700_000));
    expect(three).toContain('$1,000 less than c');
    expect(three).toContain('b reads less, but its price is not complete');
  });
  test('says so where no price is complete', () => {
    const text = said(plan('a', 600_000, false), plan('b', 500_000, false));
    expect(text).toMatch(/^No price is complete yet/);
    expect(text).toContain('so far b is $1,000 less than a');
    expect(said(plan('a', 600_000, false))).toContain('not complete');
  });
  test('a stopped option is no choice, whatever it costs', () => {
    expect(recommended([plan('a', 1, true, 1), plan('b', 9)])?.option).toBe('b');
    expect(said(plan('a', 1, true, 1), plan('b', 9))).toContain('the only option planned without a finding');
    expect(said(plan('a', 1, true, 1))).toContain('No option can be recommended yet');
  });
});
