import { describe, expect, test } from 'vitest';
import { calcArrangement } from '../../../src/calculations/arrangement';
import { legOfSpace, panelSlots } from '../../../src/calculations/panelSlots';
import { splitPhases } from '../../../src/calculations/phaseSplit';
import type { CalcInput } from '../../../src/calculations/types';
import { random } from '../../support/random';

type Circuit = CalcInput['arrangement']['circuits'][number];
const single = (id: string, va: number): Circuit => ({ id, poles: 1, va, partner: null });

/** Every way to put the single poles and turn the pairs, tried one by one. */
const byTrying = (singles: number[], pairs: (readonly [number, number])[], placesA: number, placesB: number) => {
  let best = Number.POSITIVE_INFINITY;
  for (let pick = 0; pick < 1 << singles.length; pick++) {
    const onA = singles.filter((_, i) => (pick >> i) & 1);
    if (onA.length > placesA || singles.length - onA.length > placesB) continue;
    for (let turn = 0; turn < 1 << pairs.length; turn++) {
      const diff =
        singles.reduce((d, va, i) => d + ((pick >> i) & 1 ? va : -va), 0) +
        pairs.reduce((d, [a, b], i) => d + ((turn >> i) & 1 ? a - b : b - a), 0);
      best = Math.min(best, Math.abs(diff));
    }
  }
  return best;
};

describe('balance of the legs', () => {
  test('equals trying everything, with bounds on the places and pairs', () => {
    const { next } = random(20260107);
    for (let round = 0; round < 120; round++) {
      const singles = Array.from({ length: Math.floor(next() * 8) }, () => Math.round(next() * 2400));
      const pairs = Array.from(
        { length: Math.floor(next() * 4) },
        () => [Math.round(next() * 1800), Math.round(next() * 1800)] as const,
      );
      const placesA = Math.floor(next() * 6);
      const placesB = Math.floor(next() * 6);
      const split = splitPhases({
        singles: singles.map((va, i) => ({ id: `s${i}`, va })),
        pairs: pairs.map((va, i) => ({ id: `p${i}`, va })),
        placesA,
        placesB,
      });
      const tried = byTrying(singles, pairs, placesA, placesB);
      if (!split) {
        expect(tried).toBe(Number.POSITIVE_INFINITY);
        continue;
      }
      expect(split.exact).toBe(true);
      expect(Math.abs(split.legA - split.legB)).toBeCloseTo(tried, 9);
      expect(split.onA.size).toBeLessThanOrEqual(placesA);
      expect(singles.length - split.onA.size).toBeLessThanOrEqual(placesB);
    }
  });
  test('42 spaces of loads of 1 VA steps are still exact', () => {
    const { next } = random(7);
    const circuits = Array.from({ length: 40 }, (_, i) => single(`c${i}`, Math.round(next() * 1920)));
    const answer = calcArrangement({ spaces: 42, circuits });
    expect(answer.ok && answer.value.figures).toMatchObject({ exact: true });
    const total = circuits.reduce((sum, c) => sum + c.va, 0);
    expect(answer.ok && answer.value.figures.differenceVA).toBe(total % 2);
  });
  test('2-pole breakers load both legs alike, shared neutrals opposite ones', () => {
    const circuits: Circuit[] = [
      { id: 'dryer', poles: 2, va: 5000, partner: null },
      { id: 'k1', poles: 1, va: 1500, partner: 'k2' },
      { id: 'k2', poles: 1, va: 900, partner: 'k1' },
      single('a', 600),
    ];
    const answer = calcArrangement({ spaces: 8, circuits });
    expect(answer.ok && answer.value).toMatchObject({
      outcome: 'holds',
      figures: { legA: 4000, legB: 4000, differenceVA: 0 },
    });
  });
  test('what does not find a space fails, whichever way the list is ordered', () => {
    const circuits = Array.from({ length: 9 }, (_, i) => single(`c${i}`, 100 * (i + 1)));
    const answer = calcArrangement({ spaces: 8, circuits });
    expect(answer.ok && answer.value.outcome).toBe('fails');
    expect(calcArrangement({ spaces: 8, circuits: circuits.toReversed() })).toEqual(answer);
  });
  test('rows alternate legs, so six spaces have four places on one leg', () => {
    expect([1, 2, 3, 4, 5, 6].map(legOfSpace)).toEqual(['A', 'A', 'B', 'B', 'A', 'A']);
    expect(panelSlots(6)).toEqual({ legA: 4, legB: 2, doubles: 2 });
    expect(panelSlots(40)).toEqual({ legA: 20, legB: 20, doubles: 20 });
  });
  test('a partner must name its partner', () => {
    const answer = calcArrangement({
      spaces: 8,
      circuits: [{ id: 'a', poles: 1, va: 1, partner: 'b' }, single('b', 1)],
    });
    expect(answer.ok).toBe(false);
    expect(!answer.ok && answer.error.error.path).toBe('/circuits/0/partner');
  });
});
