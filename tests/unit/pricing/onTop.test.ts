import { describe, expect, test } from 'vitest';
import type { PriceBook } from '../../../src/job/schema';
import { charged } from '../../../src/pricing/charged';
import { defaultBook } from '../../../src/pricing/defaultBook';
import { price } from '../../../src/pricing/price';
import { quoteOf } from '../../../src/pricing/quote';
import { priceTotals } from '../../../src/pricing/totals';
import { unitChanges } from '../../../src/pricing/unitChanges';

const work = (...items: readonly string[]) =>
  items.map((item) => ({ item, quantity: 1, homeRuns: [], rule: null, alternate: null }));
const book = (more: Partial<PriceBook>): PriceBook => ({
  ...defaultBook,
  overheadRate: 0.25,
  profit: { as: 'markup', rate: 0.2 },
  tax: { rate: 0.07, on: ['material'] },
  minimumDollars: 0,
  roundToDollars: 0,
  ...more,
});
const at = (more: Partial<PriceBook>, items = ['spd']) =>
  price({ work: work(...items), book: book(more), surveyGrade: 'full', alternates: [] });
const line = (answer: ReturnType<typeof at>, id: string) => answer.lines.find((l) => l.id === id);

describe('least charge and round sum', () => {
  // a surge device: $96 material and 0.4 h × $52 = $20.80; × 1.25 × 1.2 = $175.20 before tax, + 7 % of $96 = $6.72
  test('by hand', () => {
    expect(priceTotals(at({})).likely).toBe(17_520 + 672);
    expect(line(at({}), 'minimum')).toBeUndefined();
  });
  test('the least charge lifts each end before tax, and stands in a line', () => {
    const answer = at({ minimumDollars: 180 });
    expect(line(answer, 'minimum')).toMatchObject({ kind: 'profit', likelyCents: 480 });
    expect(priceTotals(answer).likely).toBe(18_000 + 672);
    expect(priceTotals(answer).low).toBeGreaterThanOrEqual(18_000);
    const high = at({ minimumDollars: 500 });
    expect(priceTotals(high).high).toBe(50_000 + line(high, 'tax:material')!.highCents);
  });
  test('a job of nothing has no least charge', () => {
    expect(priceTotals(at({ minimumDollars: 500 }, [])).likely).toBe(0);
  });
  test('rounding is a line, half up, and tax stays', () => {
    const answer = at({ roundToDollars: 10 });
    expect(line(answer, 'rounding')).toMatchObject({ kind: 'profit', likelyCents: -192 }); // $181.92 → $180
    expect(priceTotals(answer)).toMatchObject({ likely: 18_000 });
    for (const end of Object.values(priceTotals(answer))) expect(end % 1000).toBe(0);
    expect(line(answer, 'tax:material')?.likelyCents).toBe(672);
    expect(priceTotals(at({ roundToDollars: 100 })).likely).toBe(20_000);
  });
  test('lines add up to the price and their shares to one', () => {
    for (const more of [{ minimumDollars: 400 }, { roundToDollars: 25 }, { minimumDollars: 181, roundToDollars: 5 }]) {
      const answer = at(more, ['spd', 'permit', 'light', 'panel:40', 'mount panel']);
      const { likely } = priceTotals(answer);
      expect(answer.lines.reduce((sum, l) => sum + l.likelyCents, 0)).toBe(likely);
      expect(answer.lines.reduce((sum, l) => sum + l.likelyCents / likely, 0)).toBeCloseTo(1, 12);
    }
  });
});

describe('a slip in the book', () => {
  const spd = (dollars: number) => ({
    materials: defaultBook.materials.map((m) => (m.id === 'spd' ? { ...m, dollars } : m)),
  });
  test.each([0, -5])('a material of $%d is missing, not cheap', (dollars) => {
    expect(at(spd(dollars))).toMatchObject({ complete: false, missing: ['spd'] });
  });
  test('a task of no hours is missing', () => {
    const tasks = defaultBook.tasks.map((t) => (t.id === 'spd' ? { ...t, low: 0, likely: 0 } : t));
    expect(at({ tasks })).toMatchObject({ complete: false, missing: ['spd'] });
  });
  test('a labor-hour of nothing is missing', () => {
    expect(at({ dollarsPerCrewHour: 0 })).toMatchObject({ complete: false, missing: ['labor-hour'] });
  });
  test('a margin of 100 % or more is missing, and the rest a number', () => {
    for (const rate of [1, 1.5, 10]) {
      const answer = at({ profit: { as: 'margin', rate } });
      expect(answer).toMatchObject({ complete: false, missing: ['profit'] });
      expect(Number.isFinite(priceTotals(answer).high)).toBe(true);
    }
  });
});

describe('how it is offered', () => {
  const ask = {
    terms: { quote: 'fixed' },
    surveyGrade: 'full',
    price: { complete: true },
    likelyCents: 500_000,
    book: book({}),
  } as const;
  test('fixed only after a full survey with nothing missing', () => {
    expect(quoteOf(ask)).toMatchObject({ as: 'fixed', fixedCents: 500_000 });
    expect(quoteOf({ ...ask, surveyGrade: 'walk-through' })).toMatchObject({ as: 'range', fixedCents: null });
    expect(quoteOf({ ...ask, price: { complete: false } })).toMatchObject({ as: 'range', fixedCents: null });
  });
  test('an hour and material as charged, by hand', () => {
    // $52 × 1.25 × 1.2 = $78, labor not taxed; material 1.25 × 1.2 − 1 = 50 %
    expect(quoteOf({ ...ask, terms: { quote: 'time and material' } })).toMatchObject({
      as: 'time and material',
      fixedCents: null,
      hourCents: 7800,
      materialShare: 0.5,
    });
  });
});

describe('unit prices', () => {
  const practice = { spliceSpotCents: 4500 };
  test('one hole by hand: 0.06 h × $52 × 1.25 × 1.2', () => {
    const hole = unitChanges(book({ minimumDollars: 900, roundToDollars: 100 }), practice).find(
      (u) => u.id === 'hole more',
    );
    expect(hole?.cents).toBe(Math.round(312 * 1.25) + Math.round((312 + 78) * 0.2));
  });
  test('each is worth something; what the book cannot price whole is left out', () => {
    const all = unitChanges(defaultBook, practice);
    expect(all.length).toBeGreaterThan(9);
    expect(all.filter((u) => u.cents <= 0)).toEqual([]);
    const without = { ...defaultBook, tasks: defaultBook.tasks.filter((t) => t.id !== 'patch') };
    expect(unitChanges(without, practice).map((u) => u.id)).not.toContain('drywall strip');
  });
  test('a piece more is what the price goes up by, to the cent of its three roundings', () => {
    const [less, more] = [at({}, ['panel:40']), at({}, ['panel:40', 'light'])].map((a) => priceTotals(a).likely);
    expect(Math.abs(more! - less! - charged(work('light'), book({}), practice).cents)).toBeLessThanOrEqual(3);
  });
});
