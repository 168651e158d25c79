import { describe, expect, test } from 'vitest';
import type { Plan } from '../../../src/facts/result';
import type { PriceBook } from '../../../src/job/schema';
import { comparePlans, comparisonsOf } from '../../../src/plan/compare';
import { planJob } from '../../../src/plan/planJob';
import { defaultBook } from '../../../src/pricing/defaultBook';
import { price } from '../../../src/pricing/price';
import { priceTotals } from '../../../src/pricing/totals';
import { demoJob } from '../../support/demos';

type Items = readonly (readonly [item: string, quantity: number])[];
const near: Items = [
  ['panel:40', 1],
  ['breaker:1p 20', 12],
  ['hole', 4],
  ['spd', 3],
  ['permit', 1],
];
const far: Items = [
  ['panel:40', 1],
  ['breaker:1p 20', 7],
  ['breaker:1p 20 AFCI', 5],
  ['cable:12/2 NM', 120],
  ['hole', 30],
  ['permit', 1],
];
const plan = (option: string, items: Items, book: PriceBook): Plan => {
  const work = items.map(([item, quantity]) => ({ item, quantity, homeRuns: [], rule: null, alternate: null }));
  return { option, price: price({ work, book, surveyGrade: 'full', alternates: [] }) } as unknown as Plan;
};
const book = { ...defaultBook, tax: { rate: 0.07, on: ['material', 'profit'] } };
const total = (p: Plan) => priceTotals(p.price).likely;

describe('two options line by line', () => {
  const [a, b] = [plan('far', far, book), plan('near', near, book)];
  const its = comparePlans(book, a, b, 'a labor-hour');
  test('rows add up to the difference of the prices; lines that are the same are left out', () => {
    expect(its.differsCents).toBe(total(a) - total(b));
    expect(its.rows.reduce((sum, row) => sum + row.differsCents, 0)).toBe(its.differsCents);
    expect(its.rows.map((r) => r.id)).not.toContain('material:panel:40');
    for (const row of its.rows) expect(row.differsCents).toBe(row.cents - row.againstCents);
  });
  test('the other way round it is the same with the other sign', () => {
    expect(comparePlans(book, b, a, '').differsCents).toBe(-its.differsCents);
  });
  test('at each turning point the two cost the same, to a few cents of rounding', () => {
    const goods = its.breakEvens.filter((e) => e.id.startsWith('material:'));
    expect(goods.map((e) => e.id)).toContain('material:spd');
    for (const { id, at } of goods) {
      const dearer = {
        ...book,
        materials: book.materials.map((m) => (`material:${m.id}` === id ? { ...m, dollars: at } : m)),
      };
      expect(Math.abs(total(plan('far', far, dearer)) - total(plan('near', near, dearer)))).toBeLessThanOrEqual(6);
    }
  });
  test('labor turns it by its rate', () => {
    const slow: Items = [...near, ['hole', 60]];
    const [x, y] = [plan('slow', slow, book), plan('dear', [...near, ['spd', 1]], book)];
    const labor = comparePlans(book, x, y, 'a labor-hour').breakEvens.find((e) => e.id === 'labor')!;
    const rate = { ...book, dollarsPerCrewHour: labor.at };
    expect(labor.say).toBe('a labor-hour');
    expect(Math.abs(total(plan('slow', slow, rate)) - total(plan('dear', [...near, ['spd', 1]], rate)))).toBeLessThan(
      8,
    );
  });
});

test('every option of a job beside the advised one, and that beside the next; one option has nothing beside it', () => {
  const job = demoJob('small-house');
  const { plans, comparisons, advice } = planJob(job);
  expect(comparisons.map((c) => c.option)).toEqual(plans.map((p) => p.option));
  for (const c of comparisons) {
    expect(c.against).not.toBe(c.option);
    if (c.option !== advice.option) expect(c.against).toBe(advice.option);
    const of = (id: string) => plans.find((p) => p.option === id)!.tally.likelyCents;
    expect(c.differsCents).toBe(of(c.option) - of(c.against));
  }
  expect(comparisonsOf(defaultBook, plans.slice(0, 1), '')).toEqual([]);
});
