import { describe, expect, test } from 'vitest';
import { feederSpliceBox } from '../../../src/loads/feederSplice';
import { planOption } from '../../../src/plan/planOption';
import { defaultBook } from '../../../src/pricing/defaultBook';
import type { Cable } from '../../../src/standards/cable';
import { demoJob } from '../../support/demos';

const ser = (size: string): Cable => ({
  kind: 'SE-R',
  size,
  metal: 'Al',
  hots: 2,
  neutral: 'insulated',
  ground: true,
  insulation: 90,
});

// 314.28(A)(2): six times the trade size the conductors would need, Chapter 9 Tables 1, 4 and 5A, four alike.
describe('the box a feeder is spliced in', () => {
  test('2 AWG: 4 × 0.1017 = 0.407 in², 1-1/4 in EMT holds 0.598 at 40 %; 6 × 1.25 = 7.5 in: 8 in square', () =>
    expect(feederSpliceBox(ser('2'))).toBe('8x8x4'));
  test('4/0 AWG: 4 × 0.2733 = 1.093 in², 2 in EMT holds 1.342; 6 × 2 = 12 in', () =>
    expect(feederSpliceBox(ser('4/0'))).toBe('12x12x4'));
  // 314.16(B): six conductors and one allowance for the grounds, 7 × 5.00 = 35 in³; 42.0 is the first that holds it
  test('6 AWG: by volume', () =>
    expect(feederSpliceBox({ ...ser('6'), kind: 'NM', metal: 'Cu' })).toBe('4-11/16 x 2-1/8'));
  test('nothing is made up for a size nobody read', () =>
    expect(feederSpliceBox({ ...ser('2'), size: 'unknown' })).toBeNull());
});

describe('keep, extend, replace', () => {
  const job = demoJob('washer');
  const choicesOf = (id: string, from = job) => {
    const { plan } = planOption(from, from.options.find((o) => o.id === id)!);
    return { plan, of: Object.fromEntries(plan.feeder.choices.map((c) => [c.way, c])) };
  };
  test('moved: it does not reach; both other ways are priced, and 2 AWG aluminum on 100 A does not hold', () => {
    const { plan, of } = choicesOf('relocate-a');
    expect(plan.feeder.way).toBe('replaced');
    expect(of.kept).toMatchObject({ possible: false, outcome: 'fails', cents: null });
    expect(of.extended).toMatchObject({ possible: true, outcome: 'fails', say: expect.stringContaining('8x8x4') });
    expect(of.replaced).toMatchObject({ possible: true, outcome: 'holds' });
    expect(of.extended!.cents!).toBeGreaterThan(0);
    expect(of.extended!.cents!).toBeLessThan(of.replaced!.cents!);
  });
  test('in place: what is kept costs three lugs, with overhead and profit', () => {
    const { of } = choicesOf('in-place');
    const lug = defaultBook.tasks.find((t) => t.id === 'lug')!.likely;
    const { dollarsPerCrewHour, overheadRate, profit } = defaultBook;
    const markup = profit.as === 'markup' ? profit.rate : profit.rate / (1 - profit.rate);
    const cents = 100 * 3 * lug * dollarsPerCrewHour * (1 + overheadRate) * (1 + markup);
    expect(Math.abs(of.kept!.cents! - cents)).toBeLessThanOrEqual(2);
    expect(of.extended).toMatchObject({ possible: false, cents: null });
    expect(of.replaced).toMatchObject({ possible: true, outcome: 'holds' });
  });
  test('a way outside that nobody measured leaves the new one without a price', () => {
    const { of } = choicesOf('relocate-a', { ...job, feeder: { ...job.feeder, outside: 'unknown' } });
    expect(of.replaced).toMatchObject({ possible: true, cents: null, say: expect.stringContaining('not measured') });
  });
  test('none in a live plan, none where the utility feeds the panel itself', () => {
    const option = job.options[0]!;
    expect(planOption(job, option, 'live').plan.feeder.choices).toEqual([]);
    const small = demoJob('small-house');
    const stays = small.options.find((o) => o.kind === 'in place')!;
    expect(planOption(small, stays).plan.feeder.choices).toEqual([]);
  });
});
