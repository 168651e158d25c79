import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PriceBook } from '../../../src/job/schema';
import { directMills, type PricedWork } from '../../../src/pricing/assemblies';
import { itemsOf } from '../../../src/pricing/bookPage';
import { conditionWork } from '../../../src/pricing/conditions';
import { defaultBook } from '../../../src/pricing/defaultBook';
import { isDirect } from '../../../src/pricing/lines';
import { markupOf } from '../../../src/pricing/onTop';
import { type PriceAsk, price, takenWork } from '../../../src/pricing/price';
import { priceTotals } from '../../../src/pricing/totals';

const piece = (item: string, quantity = 1, more: Partial<PricedWork> = {}): PricedWork => ({
  item,
  quantity,
  homeRuns: [],
  rule: null,
  alternate: null,
  ...more,
});
const ask = (work: readonly PricedWork[], more: Partial<PriceAsk> = {}): PriceAsk => ({
  work,
  book: defaultBook,
  surveyGrade: 'full',
  alternates: [],
  ...more,
});
const plainBook: PriceBook = {
  id: 'own',
  dated: '2026-01-01',
  materials: [
    { id: 'cable:12/2 NM', unit: 'ft', dollars: 0.6667, source: 'supplier list' },
    { id: 'spd', unit: 'each', dollars: 100, source: 'supplier list' },
  ],
  tasks: [
    { id: 'spd', unit: 'each', low: 0.3, likely: 0.4, high: 0.6, source: 'own records' },
    { id: 'hole', unit: 'each', low: 0.03, likely: 0.06, high: 0.08, source: 'memory' },
  ],
  dollarsPerCrewHour: 50,
  overheadRate: 0.25,
  profit: { as: 'markup', rate: 0.2 },
  tax: { rate: 0.07, on: ['material'] },
  allowances: [{ id: 'permit', low: 100, likely: 120, high: 200 }],
  wage: null,
  minimumDollars: 0,
  roundToDollars: 0,
  lead: [],
};
const linesBy = (answer: ReturnType<typeof price>) => new Map(answer.lines.map((line) => [line.id, line]));

describe('price', () => {
  test('worked by hand: quantities, then overhead, profit and tax', () => {
    const answer = price(
      ask([piece('cable:12/2 NM', 37.5, { homeRuns: ['b', 'a'] }), piece('spd'), piece('hole', 20), piece('permit')], {
        book: plainBook,
      }),
    );
    const lines = linesBy(answer);
    const likely = (id: string) => lines.get(id)?.likelyCents;
    expect(likely('material:cable:12/2 NM')).toBe(2500); // 37.5 ft × $0.6667 = $25.00125
    expect(lines.get('material:cable:12/2 NM')?.homeRuns).toEqual(['a', 'b']);
    expect(likely('material:spd')).toBe(10_000);
    expect(likely('labor:spd')).toBe(2000); // 0.4 h × $50
    expect(lines.get('labor:hole')).toMatchObject({
      quantity: 1.2,
      unit: 'h',
      dollarsEach: 50,
      likelyCents: 6000,
      lowCents: 3000,
      highCents: 8000,
    });
    expect(lines.get('fee:permit')).toMatchObject({
      quantity: 1,
      lowCents: 10_000,
      likelyCents: 12_000,
      highCents: 20_000,
    });
    const direct = 2500 + 10_000 + 2000 + 6000 + 12_000;
    expect(likely('overhead')).toBe(direct * 0.25); // 8125
    expect(likely('profit')).toBe((direct + 8125) * 0.2); // 8125
    expect(likely('tax:material')).toBe(875); // 7 % of $125.00
    expect(priceTotals(answer).likely).toBe(direct + 8125 + 8125 + 875);
    expect(answer.unverifiedShare).toBeCloseTo(6000 / direct, 4); // only the hole's hours are from memory
    expect(answer).toMatchObject({ complete: true, missing: [] });
  });

  test('a margin is a share of the price, a markup of the cost', () => {
    // markup 0.25 = margin 0.20, markup 0.50 = margin 0.333: table of labor hours and markups, "markupMath".
    expect(markupOf({ as: 'markup', rate: 0.25 })).toBe(0.25);
    expect(markupOf({ as: 'margin', rate: 0.2 })).toBeCloseTo(0.25, 12);
    expect(markupOf({ as: 'margin', rate: 1 / 3 })).toBeCloseTo(0.5, 12);
    const margin = price(
      ask([piece('spd')], { book: { ...plainBook, profit: { as: 'margin', rate: 0.2 }, tax: { rate: 0, on: [] } } }),
    );
    const profit = margin.lines.find((line) => line.kind === 'profit')!;
    expect(profit.likelyCents / priceTotals(margin).likely).toBeCloseTo(0.2, 3);
  });

  test('a margin of the whole price cannot be had: incomplete, never infinite', () => {
    const answer = price(ask([piece('spd')], { book: { ...plainBook, profit: { as: 'margin', rate: 1 } } }));
    expect(answer).toMatchObject({ complete: false, missing: ['profit'] });
    expect(Number.isFinite(priceTotals(answer).high)).toBe(true);
  });

  test('tax counts each line once, whatever names it', () => {
    const taxed = (on: string[]) =>
      price(ask([piece('spd'), piece('hole', 10)], { book: { ...plainBook, tax: { rate: 0.1, on } } }));
    const tax = (on: string[]) =>
      taxed(on)
        .lines.filter((line) => line.kind === 'tax')
        .reduce((sum, line) => sum + line.likelyCents, 0);
    expect(tax(['material'])).toBe(1000);
    expect(tax(['material', 'spd'])).toBe(1000 + 200); // the labor line is an spd too
    expect(tax(['spd', 'material'])).toBe(1200);
    expect(tax(['labor'])).toBe(200 + 300);
    expect(tax(['nothing'])).toBe(0);
  });

  test('what is missing is named and the rest priced', () => {
    const answer = price(
      ask([piece('spd'), piece('panel:77'), piece('move:tank', 1, { cents: null }), piece('bewitch')]),
    );
    expect(answer.complete).toBe(false);
    expect(answer.missing).toEqual(['bewitch', 'move:tank', 'panel:77']);
    expect(priceTotals(answer).likely).toBe(priceTotals(price(ask([piece('spd')]))).likely);
  });

  test('a move brings its own cents as an allowance', () => {
    const line = price(ask([piece('move:washer', 1, { cents: 8_000, rule: 'WS-DEPTH' })])).lines.find(isDirect);
    expect(line).toMatchObject({
      kind: 'allowance',
      item: 'move:washer',
      likelyCents: 8_000,
      lowCents: 8_000,
      highCents: 8_000,
      rule: 'WS-DEPTH',
    });
  });

  test('an alternate is charged when taken or required, and its price is the difference it makes', () => {
    const work = [
      piece('panel:40'),
      piece('spd', 1, { alternate: 'surge' }),
      piece('finish:white', 1, { alternate: 'white' }),
      piece('breaker:1p 20 AFCI', 3, { alternate: 'afci', rule: 'AFCI' }),
    ];
    const alternates = [
      { id: 'surge', required: false, taken: false, rule: null },
      { id: 'afci', required: true, taken: false, rule: 'AFCI' },
    ];
    const base = price(ask(work, { alternates }));
    const with1 = price(ask(work, { alternates: alternates.map((a) => ({ ...a, taken: true })) }));
    const of = (id: string) => base.alternates.find((alternate) => alternate.id === id)!;
    expect(of('surge')).toMatchObject({ taken: false, required: false });
    expect(of('afci')).toMatchObject({ taken: true, required: true, rule: 'AFCI' });
    expect(of('white')).toMatchObject({ taken: false });
    expect(priceTotals(with1).likely - priceTotals(base).likely).toBe(of('surge').cents);
    expect(with1.alternates.find(({ id }) => id === 'surge')?.cents).toBe(of('surge').cents);
    expect(takenWork(work, alternates).map(({ item }) => item)).toEqual(['panel:40', 'breaker:1p 20 AFCI']);
    // What is not taken cannot make the price incomplete.
    expect(price(ask([piece('bewitch', 1, { alternate: 'magic' })])).complete).toBe(true);
  });

  test('lines have one id each, also by rule and alternate', () => {
    const answer = price(ask([piece('spd'), piece('spd', 1, { rule: 'SPD' }), piece('spd', 2)]));
    expect(new Set(answer.lines.map(({ id }) => id)).size).toBe(answer.lines.length);
    expect(linesBy(answer).get('material:spd')?.quantity).toBe(3);
    expect(linesBy(answer).get('material:spd [SPD]')).toMatchObject({ quantity: 1, rule: 'SPD' });
  });

  test('a walk-through survey widens the range and leaves the likely price', () => {
    const work = [piece('splice', 14), piece('cable:12/2 NM', 160), piece('panel:40'), piece('permit')];
    const full = priceTotals(price(ask(work)));
    const walk = priceTotals(price(ask(work, { surveyGrade: 'walk-through' })));
    expect(walk.likely).toBe(full.likely);
    expect(walk.low).toBeLessThan(full.low);
    expect(walk.high).toBeGreaterThan(full.high);
  });

  test('the default book says that all of it is unverified', () => {
    expect(
      price(ask([piece('splice', 14), piece('permit'), piece('move:x', 1, { cents: 100 })])).unverifiedShare,
    ).toBeGreaterThan(0.99);
    expect(price(ask([])).unverifiedShare).toBe(0);
  });

  test('conditions add hours to hours', () => {
    const work = [piece('splice', 10), piece('hole', 10)]; // 2.5 h + 0.6 h
    expect(conditionWork(work, defaultBook, { occupied: true, crowded: false })).toMatchObject([
      { item: 'occupied', quantity: 3.1 },
    ]);
    expect(conditionWork(work, defaultBook, { occupied: false, crowded: false })).toEqual([]);
  });

  test('any work: parts add up, low ≤ likely ≤ high, order does not matter, lines agree with the direct mills', () => {
    const items = itemsOf(defaultBook).filter((item) => item !== 'warranty');
    const anyWork = fc.array(
      fc.record({
        item: fc.constantFrom(...items),
        quantity: fc.double({ min: 0, max: 300, noNaN: true }).map((q) => Math.round(q * 64) / 64),
        rule: fc.constantFrom(null, 'A', 'B'),
        alternate: fc.constantFrom(null, null, 'x'),
        homeRuns: fc.subarray(['h1', 'h2', 'h3']),
      }),
      { maxLength: 25 },
    );
    fc.assert(
      fc.property(anyWork, fc.boolean(), (work, taken) => {
        const alternates = [{ id: 'x', required: false, taken, rule: null }];
        const answer = price(ask(work, { alternates }));
        const totals = priceTotals(answer);
        expect(answer.lines.reduce((sum, line) => sum + line.likelyCents, 0)).toBe(totals.likely);
        expect(totals.low).toBeLessThanOrEqual(totals.likely);
        expect(totals.likely).toBeLessThanOrEqual(totals.high);
        for (const line of answer.lines) {
          // the lift to the least charge is largest where the price is lowest
          if (line.item === 'minimum') continue;
          expect(line.lowCents).toBeLessThanOrEqual(line.likelyCents);
          expect(line.likelyCents).toBeLessThanOrEqual(line.highCents);
          expect(Math.abs(line.likelyCents - line.quantity * line.dollarsEach * 100)).toBeLessThanOrEqual(0.5 + 1e-3);
        }
        expect(price(ask([...work].reverse(), { alternates }))).toEqual(answer);
        const direct = answer.lines.filter(isDirect).reduce((sum, line) => sum + line.likelyCents, 0);
        const mills = directMills(takenWork(work, alternates), defaultBook);
        // Each line is rounded to a cent, each unit price to a mill.
        const slack = answer.lines.length * 5 + work.reduce((sum, w) => sum + w.quantity * 0.5, 0) + 1;
        expect(Math.abs(direct * 10 - mills)).toBeLessThanOrEqual(slack);
      }),
      { numRuns: 150, seed: 7 },
    );
  });
});
