import { describe, expect, test } from 'vitest';
import type { PriceBook } from '../../src/job/schema';
import { markupOf } from '../../src/pricing/onTop';
import { price } from '../../src/pricing/price';
import { pertMean } from '../../src/pricing/range';
import { priceTotals } from '../../src/pricing/totals';
import { dollarsToCents } from '../../src/units/money';

/**
 * General business arithmetic as published: margin, markup, overhead, tax by line, rounding. Each case runs through the
 * product's own price, with the cost as the only line. Source beside each.
 */
const book = (more: Partial<PriceBook>): PriceBook => ({
  id: 'published',
  dated: '',
  materials: [],
  tasks: [],
  dollarsPerCrewHour: 50,
  overheadRate: 0,
  profit: { as: 'markup', rate: 0 },
  tax: { rate: 0, on: [] },
  allowances: [],
  wage: null,
  minimumDollars: 0,
  roundToDollars: 0,
  lead: [],
  ...more,
});
/** Costs in dollars as moves, which bring their own money; the first is named `move:1`. */
const priced = (costs: readonly number[], more: Partial<PriceBook>) =>
  price({
    work: costs.map((cost, i) => ({
      item: `move:${i + 1}`,
      quantity: 1,
      homeRuns: [],
      rule: null,
      alternate: null,
      cents: dollarsToCents(cost),
    })),
    book: book(more),
    surveyGrade: 'full',
    alternates: [],
  });
const total = (costs: readonly number[], more: Partial<PriceBook>): number =>
  priceTotals(priced(costs, more)).likely / 100;
const margin = (rate: number) => ({ profit: { as: 'margin' as const, rate } });
const markup = (rate: number) => ({ profit: { as: 'markup' as const, rate } });

describe('markup: a share of the cost', () => {
  test.each([
    [40, 0.5, 60, 'calcreal.com, markup calculator'],
    [100, 0.25, 125, 'instudier.com question 22902450; the same on education-academia.github.io'],
    [100, 0.4, 140, 'education-academia.github.io, business mathematics'],
    [5, 0.3, 6.5, 'education-academia.github.io, business mathematics'],
    [29.99, 0.25, 37.49, 'power.one, markup calculator: clothing at a 25 % markup'],
    [25, 0.4, 35, 'onlinemath4all.com, worksheet on markup, no. 1'],
    [45, 0.4, 63, 'onlinemath4all.com, worksheet on markup, no. 2'],
    [50, 0.1, 55, 'new.daytonsbluff.org, three problems, no. 1'],
    [80, 0.6, 128, 'the same, no. 2'],
    [140, 0.25, 175, 'the same, no. 3'],
    [100_000, 0.2, 120_000, 'web guide to construction bid markup'],
    [100_000, 0.25, 125_000, 'web page on quoting markup and overhead; the same in the guide to bid markup'],
    [100_000, 0.3, 130_000, 'web guide to construction bid markup'],
    [100, 0.15, 115, 'electrical trade forum, thread 47041'],
  ])('$%d marked up by %d sells for $%d (%s)', (cost, rate, sells) => {
    expect(total([cost], markup(rate))).toBe(sells);
  });
});

describe('margin: a share of the price', () => {
  test.each([
    [100, 0.15, 117.65, 'electrical trade forum, thread 47041: 15 % of the price on $100'],
    [5, 0.3, 7.14, 'education-academia.github.io: 0.70 × price = $5.00'],
    [6, 0.25, 8, 'fatskills.com, selling price as the base: a book'],
    [
      2650,
      0.29,
      3732,
      'remodeling.hw.net, chart of divisors: 22 % overhead and 7 % net profit of the price, divisor .71',
    ],
    [21, 0.25, 28, 'questionai.com, Business Mathematics 8-2, exercise 1'],
    [18.6, 0.4, 31, 'the same, exercise 2'],
    [145, 0.42, 250, 'the same, exercise 3: markup $105.00 and cost $145.00'],
  ])('$%d at a margin of %d sells for $%d (%s)', (cost, rate, sells) => {
    // the divisors are printed in whole dollars
    expect(Math.abs(total([cost], margin(rate)) - sells)).toBeLessThan(sells % 1 === 0 && sells > 1000 ? 0.5 : 0.005);
  });
  test('a record at $3.24 with a markup of 35 % of its price cost $2.11 (business question set, index 213)', () => {
    expect(total([2.11], margin(0.35))).toBeCloseTo(3.24, 1);
    expect(3.24 * (1 - 0.35)).toBeCloseTo(2.11, 2);
  });
  test.each([
    [0.5, 0.3333, 'calcreal.com'],
    [0.25, 0.2, 'web page on quoting markup and overhead; web guide to bid markup, table'],
    [0.2, 0.1667, 'web guide to construction bid markup, table'],
    [0.3, 0.2308, 'web guide to construction bid markup, table'],
    [0.15, 0.1305, 'electrical trade forum: $115 makes 13.05 % (printed cut off, 13.04 rounded)'],
  ])('a markup of %d is a margin of %d (%s)', (asMarkup, asMargin) => {
    expect(markupOf({ as: 'margin', rate: asMargin })).toBeCloseTo(asMarkup, 3);
  });
});

describe('tax', () => {
  const taxed = (rate: number) => ({ tax: { rate, on: ['allowance'] } });
  test.each([
    [46, 0.06, 48.76, 'answers.com, how sales tax is figured'],
    [1075, 0.04, 1118, 'answers.com: $43.00 on $1,075.00'],
    [91.17, 0.0968, 100, 'town of Prescott Valley, tax factoring (pvaz.net)'],
    [1000, 0.05, 1050, 'answers.com: tax inside $1,050.00 at 5 %'],
    [192.84, 0.13171, 218.24, 'pennyfreebiz.com, rounding examples: $218.239'],
    [123.97, 0.05531, 130.83, 'the same: $130.8268'],
    [213.88, 0.0348, 221.32, 'the same: $221.323'],
    [205.79, 0.07487, 221.2, 'the same: $221.1975'],
    [80.64, 0.03578, 83.53, 'the same: $83.5253'],
    [209.91, 0.0725, 225.13, 'the same: $225.1285'],
    [72.66, 0.0361, 75.28, 'the same: $75.283'],
  ])('$%d with tax of %d is $%d (%s)', (cost, rate, sum) => {
    expect(total([cost], taxed(rate))).toBe(sum);
  });
  test('by line: only the part that is taxed (280 RICR 20-70-6.6: 7 % on $35.00 of $285.00 is $2.45)', () => {
    expect(total([250, 35], { tax: { rate: 0.07, on: ['move:2'] } })).toBe(287.45);
    expect(total([250, 55], { tax: { rate: 0.07, on: ['move:2'] } })).toBe(308.85);
  });
  test('a column of purchases adds up as printed (pennyfreebiz.com: $997.37 and $1,071.36)', () => {
    const rows: readonly (readonly [number, number])[] = [
      [192.84, 0.13171],
      [123.97, 0.05531],
      [154.59, 0.08601],
      [213.88, 0.0348],
      [205.79, 0.07487],
      [25.66, 0.10502],
      [80.64, 0.03578],
    ];
    const sum = rows.reduce((all, [cost, rate]) => all + Math.round(total([cost], taxed(rate)) * 100), 0);
    expect(rows.reduce((all, [cost]) => all + Math.round(cost * 100), 0)).toBe(99_737);
    expect(sum).toBe(107_136);
  });
});

describe('rounding', () => {
  const to = (roundToDollars: number) => ({ roundToDollars });
  test.each([
    [97.68, 1, 98, 'Louisiana Department of Revenue, question 4589'],
    [106.28, 1, 106, 'the same'],
    [8.28, 1, 8, 'the same'],
    [8.96, 1, 9, 'the same'],
    [218.239, 0.05, 218.25, 'pennyfreebiz.com, to the nickel'],
    [221.323, 0.1, 221.3, 'the same, to the dime'],
    [28.3548, 0.1, 28.4, 'the same, to the dime: $28.35 is half'],
    [130.8268, 0.05, 130.85, 'the same, to the nickel'],
    [167.8863, 0.1, 167.9, 'the same'],
  ])('$%d to the nearest $%d is $%d (%s)', (sum, step, rounded) => {
    expect(total([sum], to(step))).toBe(rounded);
  });
});

test('three-point mean, as published: 5, 8, 14 → 8.5 (schematex.js.org, three-point estimation)', () => {
  expect(pertMean(5, 8, 14)).toBe(8.5);
});
