import { describe, expect, test } from 'vitest';
import { type RowCable, type RowPolicy, rowLimit, rowNeed } from '../../../src/calculations/cableRows';
import type { Cable } from '../../../src/standards/cable';
import type { U } from '../../../src/units/types';

const NM: Cable = { kind: 'NM', size: '12', metal: 'Cu', hots: 1, neutral: 'insulated', ground: true, insulation: 90 };
const policy: RowPolicy = {
  togetherIn: 120,
  spaced: false,
  sealed: false,
  insulated: false,
  bundling: 'strict',
  nextSizeInRows: false,
};
const row = (count: number, cable: Partial<Cable> = {}, amps: U<number> = 20): RowCable[] =>
  Array.from({ length: count }, () => ({ cable: { ...NM, ...cable }, amps }));
const fits = (cables: readonly RowCable[], change: Partial<RowPolicy> = {}) =>
  rowLimit(cables, { ...policy, ...change }, 2020).fits;

describe('rows of cables hold their breakers (334.80, 310.15(C)(1))', () => {
  // Forum and exam cases AM-03, AM-05, AM-14 of the published examples: four 12/2 at 21 A, five at 15 A.
  test('four two-wire 14 or 12 at 90 °C hold, five do not', () => {
    expect(fits(row(4))).toBe(true);
    expect(fits(row(5))).toBe(false);
    expect(fits(row(4, { size: '14' }, 15))).toBe(true);
    expect(fits(row(5, { size: '14' }, 15))).toBe(false);
    expect(fits(row(5, {}, 15))).toBe(true); // 15 A on 12 AWG: 30 × 0.5 = 15
  });
  test('10 AWG on 30 A: three, strictly; a fourth rounds up only where that is allowed', () => {
    const three = row(3, { size: '10' }, 30);
    expect(fits(three)).toBe(true);
    expect(fits(row(4, { size: '10' }, 30))).toBe(false);
    expect(fits(row(4, { size: '10' }, 30), { nextSizeInRows: true })).toBe(true); // 28 A, next standard 30 A
    expect(fits(row(4, { size: '10' }, 20))).toBe(true);
  });
  test('unmarked insulation starts at 60 °C: two old cables are one too many', () => {
    expect(fits(row(1, { insulation: 60 }))).toBe(true);
    expect(fits(row(2, { insulation: 60 }))).toBe(false); // 4 conductors: 20 × 0.8 = 16 A
    expect(rowLimit(row(2, { insulation: 60 }), policy, 2020).outcome).toBe('fails');
    const unknown = rowLimit(row(2, { insulation: 'unknown' }), policy, 2020);
    expect(unknown).toMatchObject({ fits: false, outcome: 'cannot be told', unknown: ['insulation'] });
  });
  test('a shared neutral of a three-wire cable is not counted', () => {
    expect(rowLimit(row(4, { hots: 2 }), policy, 2020)).toMatchObject({ conductors: 8, factor: 0.7, fits: true });
  });
  test('24 in together needs no adjustment, a hair more does; unknown counts as more', () => {
    expect(fits(row(9), { togetherIn: 24 })).toBe(true);
    expect(fits(row(9), { togetherIn: 24.01 })).toBe(false);
    expect(fits(row(9), { togetherIn: null })).toBe(false);
  });
  test('more than two in a sealed opening or against insulation count at any length', () => {
    expect(rowLimit(row(2), { ...policy, togetherIn: 2, sealed: true }, 2020).factor).toBe(1);
    expect(rowLimit(row(3), { ...policy, togetherIn: 2, sealed: true }, 2020).factor).toBe(0.8);
    expect(fits(row(5), { togetherIn: 2, sealed: true })).toBe(false);
    expect(fits(row(5), { togetherIn: 2, insulated: true })).toBe(false);
    expect(fits(row(5), { togetherIn: 2, sealed: true, bundling: 'over 24 in only' })).toBe(true);
  });
  test('a cable width apart there is no adjustment; a wireway has none to 30 conductors', () => {
    expect(fits(row(12), { spaced: true })).toBe(true);
    expect(fits(row(15), { inside: 'wireway' })).toBe(true);
    expect(fits(row(16), { inside: 'wireway' })).toBe(false);
    expect(fits(row(9), { inside: 'raceway', togetherIn: 24 })).toBe(true);
    expect(fits(row(9), { inside: 'raceway', togetherIn: 60 })).toBe(false);
  });
  test('armored 12 Cu among its like: none to 20 conductors, and not in mixed company', () => {
    expect(fits(row(10, { kind: 'MC' }))).toBe(true);
    expect(fits(row(11, { kind: 'AC' }))).toBe(false); // 30 × 0.6 = 18 A
    expect(fits([...row(5, { kind: 'AC' }), ...row(1)])).toBe(false);
    expect(fits(row(5, { kind: 'MC', size: '10' }, 30))).toBe(false);
  });
  test('a row that leaves a cable what it had alone does not spoil it', () => {
    expect(fits(row(1, { size: '6', hots: 2 }, 60))).toBe(true); // 55 A at 60 °C stands on 60 A by 240.4(B)
    expect(fits(row(3, { size: '6', hots: 2 }, 60))).toBe(true); // 75 × 0.8 = 60
    expect(fits(row(4, { size: '6', hots: 2 }, 60))).toBe(false); // 75 × 0.7 = 52.5
  });
  test('nothing unknown helps a row', () => {
    for (const key of ['kind', 'size', 'metal', 'hots', 'neutral', 'insulation'] as const)
      for (const count of [1, 2, 4, 5, 10])
        for (const base of [{}, { size: '10' }, { kind: 'MC' as const }, { metal: 'Al' as const }]) {
          const known = rowLimit(row(count, base), policy, 2020);
          const asked = rowLimit(row(count, { ...base, [key]: 'unknown' }), policy, 2020);
          if (known.outcome !== 'holds') expect(asked.outcome).not.toBe('holds');
        }
    expect(fits(row(4, {}, 'unknown'))).toBe(true);
    expect(fits(row(5, {}, 'unknown'))).toBe(false);
  });
  test('the whole numbers of a cable say the same as the row', () => {
    for (const cable of [{}, { size: '14' }, { size: '10' }, { insulation: 60 as const }, { hots: 2 as const }])
      for (const amps of [15, 20, 30])
        for (let count = 1; count < 24; count++) {
          const cables = row(count, cable, amps);
          const need = rowNeed(cables[0]!, policy, 2020);
          expect(need.conductors * count <= need.mostConductors || count === 1).toBe(fits(cables));
        }
  });
});
