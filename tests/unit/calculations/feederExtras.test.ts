import { describe, expect, test } from 'vitest';
import { calcFeeder } from '../../../src/calculations/feeder';
import { calcLoad } from '../../../src/calculations/load';
import type { CalcInput } from '../../../src/calculations/types';
import { EDITIONS } from '../../../src/units/types';
import { figuresOf } from '../../support/figures';

const feeder = (change: Partial<CalcInput['feeder']>) =>
  figuresOf(
    calcFeeder({
      edition: 2023,
      metal: 'Cu',
      awg: '6',
      cable: 'THHN',
      breakerAmps: 60,
      terminals: 75,
      wholeDwelling: false,
      continuousAmps: 0,
      otherAmps: 40,
      conductors: 3,
      ambientF: 86,
      upsizedFrom: null,
      ...change,
    }),
  );

// 240.21(B)(1), (2): to 10 ft one tenth of the device ahead, to 25 ft one third, ending in one device not over the tap's
// own ampacity. 6 AWG copper at 75 °C: 65 A; 4 AWG: 85 A (Table 310.16). 200 A / 3 = 66.7 A.
describe('taps', () => {
  const tap = (feet: number, ahead = 200) => ({ tap: { feet, ahead } });
  test.each([
    ['10 ft of 6 AWG', {}, 10, 'holds'],
    ['20 ft of 6 AWG: 65 is less than a third of 200', {}, 20, 'fails'],
    ['25 ft of 4 AWG, ending in 80 A', { awg: '4', breakerAmps: 80 }, 25, 'holds'],
    ['25.1 ft', { awg: '4', breakerAmps: 80 }, 25.1, 'fails'],
    ['ending in 70 A: no rounding up for taps', { breakerAmps: 70 }, 10, 'fails'],
    ['a load over its ampacity', { otherAmps: 66 }, 10, 'fails'],
    ['terminals not read: 55 A or 65 A', { terminals: 'unknown' as const }, 10, 'cannot be told'],
  ] as const)('%s', (_what, change, feet, outcome) => {
    expect(feeder({ ...change, ...tap(feet) }).outcome).toBe(outcome);
  });
  test('its EGC goes by the device ahead of the feeder: 200 A, 6 AWG copper (Table 250.122)', () => {
    expect(feeder(tap(10)).egcCu).toBe('6');
    expect(feeder({}).egcCu).toBe('10');
  });
});

// 220.61, 215.2: enough for the load on it, not smaller than the EGC. Table 310.16, 75 °C: aluminum 6 = 50 A, 4 = 65 A.
describe('neutral', () => {
  const ser = { metal: 'Al', awg: '2', cable: 'SE-R', breakerAmps: 90 } as const;
  test('50 A on aluminum: 6 AWG; 51 A: 4 AWG', () => {
    expect(feeder({ ...ser, neutralAmps: 50 }).neutral).toBe('6');
    expect(feeder({ ...ser, neutralAmps: 51 }).neutral).toBe('4');
  });
  test('little load: as large as the EGC of the 90 A device, 6 AWG aluminum', () =>
    expect(feeder({ ...ser, neutralAmps: 5 }).neutral).toBe('6'));
  test('terminals not read: the 60 °C column, 40 A for 6, 55 A for 4', () =>
    expect(feeder({ ...ser, terminals: 'unknown', neutralAmps: 50 }).neutral).toBe('4'));
  test('beyond the table nothing is made up', () =>
    expect(feeder({ ...ser, neutralAmps: 900 }).neutral).toBe('beyond the table'));
});

const load = (change: Partial<CalcInput['load']>) =>
  calcLoad({
    edition: 2023,
    method: 'standard',
    areaFt2: 1500,
    smallAppliance: 2,
    laundry: 1,
    fixedVA: [],
    rangeVA: [],
    dryerVA: [],
    ovenVA: [],
    cooktopVA: [],
    wholeDwelling: false,
    newHvac: false,
    heatVA: 0,
    coolVA: 0,
    largestMotorVA: 0,
    evVA: 0,
    otherVA: 0,
    peakVA: 9000,
    ...change,
  });

describe('methods of the load', () => {
  test('those for a whole dwelling are refused for a panel with part of it, with the reason; the others are not', () => {
    for (const method of ['optional', 'existing'] as const) {
      const answer = load({ method });
      expect(answer.ok || answer.error.error).toMatchObject({
        path: '/wholeDwelling',
        say: expect.stringContaining('carries the whole dwelling'),
      });
      expect(load({ method, wholeDwelling: true }).ok).toBe(true);
    }
    for (const method of ['standard', 'measured'] as const) expect(load({ method }).ok).toBe(true);
  });
  // 2026: Article 120, 2 VA/ft² (secondary statements only): 1500 × 2 + 4500 = 7500, after demand 3000 + 0.35 × 4500
  test('2026 has its own numbers and values, told to be unverified', () => {
    const answer = load({ edition: 2026 });
    if (!answer.ok) throw new Error(answer.error.error.say);
    expect(answer.value.figures.va).toBe(4575);
    const sections = answer.value.worked.steps.map((s) => s.section);
    for (const section of sections) expect(section).toMatch(/^120\.\d+ \(unverified\)$/);
    for (const edition of EDITIONS.filter((e) => e !== 2026)) {
      const other = load({ edition });
      expect(other.ok && other.value.worked.steps.every((s) => s.section.startsWith('220.'))).toBe(true);
    }
  });
});
