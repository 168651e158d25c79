import { describe, expect, test } from 'vitest';
import { planOption } from '../../../src/plan/planOption';
import { isDirect } from '../../../src/pricing/lines';
import { barsOf, drawnCosts } from '../../../src/pricing/simulate';
import { directRange } from '../../../src/pricing/totals';
import { demoJob } from '../../support/demos';

const job = demoJob('washer');
const { plan } = planOption(job, job.options.find((o) => o.id === 'relocate-a')!);
const lines = plan.price.lines.filter(isDirect);
const drawn = drawnCosts(lines);
const at = (share: number) => drawn[Math.round(share * (drawn.length - 1))]!;

describe('the range drawn at random', () => {
  test('agrees with the analytic one: its ends within 2 % of the price, its mean within half a percent', () => {
    const range = directRange(lines);
    expect(Math.abs(at(0.1) - range.low) / range.likely).toBeLessThan(0.02);
    expect(Math.abs(at(0.9) - range.high) / range.likely).toBeLessThan(0.02);
    const mean = drawn.reduce((sum, c) => sum + c, 0) / drawn.length;
    const pert = lines.reduce((sum, l) => sum + (l.lowCents + 4 * l.likelyCents + l.highCents) / 6, 0);
    expect(Math.abs(mean - pert) / pert).toBeLessThan(0.005);
  });
  test('is the same every time, and never leaves the ends of its lines', () => {
    expect(drawnCosts(lines)).toEqual(drawn);
    expect(drawn[0]!).toBeGreaterThanOrEqual(lines.reduce((sum, l) => sum + l.lowCents, 0));
    expect(drawn.at(-1)!).toBeLessThanOrEqual(lines.reduce((sum, l) => sum + l.highCents, 0));
  });
  test('without what is shared the band would be far too narrow', () => {
    // all lines alone: as 'single' allowances
    const alone = drawnCosts(lines.map((l) => ({ ...l, kind: 'fee' as const })));
    const width = (list: readonly number[]) => list[1799]! - list[199]!;
    expect(width(alone)).toBeLessThan(0.7 * width(drawn));
  });
  test('bars hold every draw once; a price without spread has none', () => {
    const bars = barsOf(drawn, 24);
    expect(bars.reduce((sum, b) => sum + b.count, 0)).toBe(drawn.length);
    expect(bars).toHaveLength(24);
    expect(barsOf(drawnCosts([]), 24)).toEqual([]);
  });
});
