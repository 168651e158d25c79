import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { calcAmpacity } from '../../../src/calculations/ampacity';
import { calcArrangement } from '../../../src/calculations/arrangement';
import { calcFeeder } from '../../../src/calculations/feeder';
import { calcLoad } from '../../../src/calculations/load';
import { calcRacewayFill } from '../../../src/calculations/racewayFill';
import type { CalcInput, CalcOutput } from '../../../src/calculations/types';
import { calcVoltageDrop } from '../../../src/calculations/voltageDrop';
import { readCalcInput } from '../../../src/job/calcInput';
import { SIZES } from '../../../src/standards/sizes';
import type { Fault } from '../../../src/units/fault';
import type { Result } from '../../../src/units/result';
import { EDITIONS } from '../../../src/units/types';
import { figuresOf } from '../../support/figures';
import { random } from '../../support/random';

const ampacityInput: CalcInput['ampacity'] = {
  edition: 2020,
  metal: 'Cu',
  awg: '12',
  startColumn: 90,
  terminals: 75,
  limitColumn: 60,
  conductors: 8,
  ambientF: 86,
  togetherIn: null,
  inRaceway: false,
  breakerAmps: 20,
};
const feederInput: CalcInput['feeder'] = {
  edition: 2020,
  metal: 'Al',
  awg: '2',
  cable: 'SE-R',
  breakerAmps: 90,
  terminals: 75,
  wholeDwelling: false,
  continuousAmps: 0,
  otherAmps: 60,
  conductors: 2,
  ambientF: 86,
  upsizedFrom: null,
};
const loadInput: CalcInput['load'] = {
  edition: 2020,
  method: 'standard',
  areaFt2: 1500,
  smallAppliance: 2,
  laundry: 1,
  fixedVA: [],
  rangeVA: [],
  dryerVA: [],
  ovenVA: [],
  cooktopVA: [],
  wholeDwelling: true,
  newHvac: false,
  heatVA: 0,
  coolVA: 0,
  largestMotorVA: 0,
  evVA: 0,
  otherVA: 0,
  peakVA: null,
};
const pathOf = (answer: Result<unknown, Fault>) => (answer.ok ? null : answer.error.error.path);

describe('ampacity', () => {
  test('together for 24 in or less: no adjustment; not known counts as more', () => {
    expect(figuresOf(calcAmpacity({ ...ampacityInput, togetherIn: 24 })).factor).toBe(1);
    expect(figuresOf(calcAmpacity({ ...ampacityInput, togetherIn: 24.1 })).factor).toBe(0.7);
    expect(figuresOf(calcAmpacity(ampacityInput)).factor).toBe(0.7);
  });
  test('terminals not known decide, or do not', () => {
    const al = {
      ...ampacityInput,
      metal: 'Al',
      awg: '2',
      limitColumn: null,
      conductors: 3,
      terminals: 'unknown',
    } as const;
    const outcome = (breakerAmps: number) => figuresOf(calcAmpacity({ ...al, breakerAmps })).outcome;
    expect([outcome(70), outcome(90), outcome(100)]).toEqual(['holds', 'cannot be told', 'fails']);
  });
  test('what the table does not reach is refused where it stands', () => {
    expect(pathOf(calcAmpacity({ ...ampacityInput, metal: 'Al', awg: '14' }))).toBe('/awg');
    expect(pathOf(calcAmpacity({ ...ampacityInput, awg: '13' }))).toBe('/awg');
    expect(pathOf(calcAmpacity({ ...ampacityInput, startColumn: 60, ambientF: 140 }))).toBe('/ambientF');
  });
});

describe('feeder', () => {
  // 110.14(C), 310.12, 240.4: the commonest error, in every reading of what a survey may not know.
  test('2 AWG aluminum: 90 A at 75 °C, 75 A at 60 °C, unknown cannot be told', () => {
    const of = (change: Partial<CalcInput['feeder']>) => figuresOf(calcFeeder({ ...feederInput, ...change }));
    expect(of({})).toMatchObject({ outcome: 'holds', ampacity: 90, breakerMax: 90, egcCu: '8', egcAl: '6' });
    expect(of({ terminals: 60 })).toMatchObject({ outcome: 'fails', ampacity: 75, breakerMax: 80 });
    expect(of({ terminals: 'unknown' })).toMatchObject({ outcome: 'cannot be told', ampacity: 75 });
    expect(of({ terminals: 60, breakerAmps: 80 }).outcome).toBe('holds');
    expect(of({ terminals: 60, breakerAmps: 80, otherAmps: 76 }).outcome).toBe('fails'); // load ≤ 75 A
    expect(of({ breakerAmps: 100, terminals: 'unknown' }).outcome).toBe('fails');
    expect(of({ breakerAmps: 100, wholeDwelling: true })).toMatchObject({ outcome: 'holds', breakerMax: 100 });
  });
  test('NM is held to 60 °C, so 83 % of 100 A is not reached by 4 AWG copper', () => {
    const nm = { ...feederInput, metal: 'Cu', awg: '4', breakerAmps: 100, wholeDwelling: true } as const;
    expect(figuresOf(calcFeeder({ ...nm, cable: 'NM' })).outcome).toBe('fails');
    expect(figuresOf(calcFeeder({ ...nm, cable: 'SE-R' })).outcome).toBe('holds');
  });
  test('small conductors keep their cap; the EGC ends with its table', () => {
    expect(figuresOf(calcFeeder({ ...feederInput, metal: 'Cu', awg: '10', cable: 'THHN' })).breakerMax).toBe(30);
    expect(figuresOf(calcFeeder({ ...feederInput, breakerAmps: 1500 })).egcCu).toBe('beyond the table');
    expect(pathOf(calcFeeder({ ...feederInput, cable: 'string' }))).toBe('/cable');
    expect(pathOf(calcFeeder({ ...feederInput, upsizedFrom: '5' }))).toBe('/upsizedFrom');
  });
  test('nothing unknown makes a feeder hold', () => {
    const { int, pick } = random(11);
    for (let i = 0; i < 400; i++) {
      const known: CalcInput['feeder'] = {
        ...feederInput,
        edition: pick(EDITIONS),
        metal: pick(['Cu', 'Al']),
        awg: pick(['10', '6', '4', '2', '1', '1/0', '2/0', '4/0']),
        cable: pick(['NM', 'SE-R', 'MC', 'THHN', 'UF']),
        breakerAmps: pick([30, 60, 70, 90, 100, 125, 150, 200]),
        terminals: pick([60, 75] as const),
        wholeDwelling: pick([true, false]),
        continuousAmps: int(0, 60),
        otherAmps: int(0, 100),
      };
      const truth = figuresOf(calcFeeder(known)).outcome;
      for (const forgotten of [{ terminals: 'unknown' }, { wholeDwelling: 'unknown' }] as const) {
        const asked = figuresOf(calcFeeder({ ...known, ...forgotten })).outcome;
        if (truth !== 'holds') expect(asked).not.toBe('holds');
        if (truth === 'holds') expect(asked).not.toBe('fails');
      }
    }
  });
});

describe('load', () => {
  const va = (change: Partial<CalcInput['load']>) => figuresOf(calcLoad({ ...loadInput, ...change })).va;
  test('code years: unit load and first tier of 2026, 7200 VA of charging from 2023', () => {
    expect(va({})).toBe(3000 + 0.35 * (4500 + 4500 - 3000));
    expect(va({ edition: 2026 })).toBe(3000 + 0.35 * (3000 + 4500 - 3000));
    const charging = (edition: 2020 | 2023) => Number(va({ edition, evVA: 3000 })) - Number(va({ edition }));
    expect([charging(2020), charging(2023)]).toEqual([3000, 7200]);
    expect(va({ edition: 2026, method: 'optional', otherVA: 10_000 })).toBe(8000 + 0.4 * (7500 + 10_000 - 8000));
  });
  test('existing dwelling: heat in the pile, or at 100 % where it is new', () => {
    const house = { method: 'existing', heatVA: 10_000, coolVA: 4000 } as const;
    expect(va(house)).toBe(8000 + 0.4 * (9000 + 10_000 - 8000));
    expect(va({ ...house, newHvac: true })).toBe(8000 + 0.4 * 1000 + 10_000);
  });
  test('a recorded demand counts at 125 % beside what is new, on any panel', () => {
    expect(va({ method: 'measured', wholeDwelling: false, peakVA: 8000, otherVA: 500 })).toBe(10_500);
    expect(pathOf(calcLoad({ ...loadInput, method: 'measured' }))).toBe('/peakVA');
  });
  test('whole-dwelling methods are refused for part of the house', () => {
    for (const method of ['optional', 'existing'] as const)
      expect(pathOf(calcLoad({ ...loadInput, method, wholeDwelling: false }))).toBe('/wholeDwelling');
  });
  test('a quarter of the largest motor; cooking beyond the table is refused', () => {
    expect(Number(va({ largestMotorVA: 1000 })) - Number(va({}))).toBe(250);
    expect(pathOf(calcLoad({ ...loadInput, rangeVA: [30_000] }))).toBe('/rangeVA');
  });
});

describe('raceway fill', () => {
  // Chapter 9 Tables 1, 4, 5: nine 12 AWG THHN fill 1/2 in EMT (0.1197 of 0.122 in²), ten do not.
  const fill = (count: number, nipple = false) =>
    figuresOf(
      calcRacewayFill({
        raceway: 'EMT',
        tradeSize: '1/2',
        nipple,
        conductors: [{ awg: '12', count, insulation: 'THHN' }],
      }),
    );
  test('nine 12 THHN in 1/2 in EMT, thirteen in a nipple', () => {
    expect(fill(9)).toMatchObject({ outcome: 'holds', allowed: 0.4 });
    expect(fill(10).outcome).toBe('fails');
    expect([fill(13, true).outcome, fill(14, true).outcome]).toEqual(['holds', 'fails']);
    expect([fill(1).allowed, fill(2).allowed]).toEqual([0.53, 0.31]);
  });
  test('what is not in a table is located', () => {
    const ask = (change: Partial<CalcInput['raceway-fill']>) =>
      pathOf(calcRacewayFill({ raceway: 'EMT', tradeSize: '1', nipple: false, conductors: [], ...change }));
    expect(ask({})).toBe('/conductors');
    expect(ask({ tradeSize: '9' })).toBe('/tradeSize');
    expect(ask({ conductors: [{ awg: '12', count: 1, insulation: 'wool' }] })).toBe('/conductors/0/insulation');
    expect(ask({ conductors: [{ awg: '600', count: 1, insulation: 'THHN' }] })).toBe('/conductors/0/awg');
  });
});

test('any input in range gives finite figures or a located fault', () => {
  const { int, pick, next, chance } = random(5);
  const amount = () => pick([0, 1e-9, 1, next() * 1e5, 10_000_000]);
  const sane = (answer: Result<CalcOutput, Fault>) => {
    if (!answer.ok) return expect(answer.error.error.path).toMatch(/^\//);
    for (const figure of Object.values(answer.value.figures))
      if (typeof figure === 'number') expect(Number.isFinite(figure)).toBe(true);
  };
  for (let i = 0; i < 300; i++) {
    const metal = pick(['Cu', 'Al'] as const);
    const awg = pick(SIZES);
    const edition = pick(EDITIONS);
    sane(
      calcAmpacity({
        ...ampacityInput,
        edition,
        metal,
        awg,
        ambientF: int(-100, 300),
        conductors: int(0, 10_000),
        breakerAmps: amount(),
      }),
    );
    sane(
      calcFeeder({
        ...feederInput,
        edition,
        metal,
        awg,
        breakerAmps: amount() + 1,
        continuousAmps: amount(),
        upsizedFrom: pick(SIZES),
      }),
    );
    sane(
      calcVoltageDrop({
        volts: amount() + 1e-9,
        amps: amount(),
        feetOneWay: amount(),
        metal,
        awg,
        ohmPerKft: chance(0.5) ? null : amount(),
        raceway: pick(['PVC', 'aluminum', 'steel']),
        powerFactor: next(),
      }),
    );
    sane(
      calcLoad({
        ...loadInput,
        edition,
        method: pick(['standard', 'optional', 'existing', 'measured']),
        areaFt2: amount(),
        rangeVA: Array.from({ length: int(0, 12) }, amount),
        dryerVA: Array.from({ length: int(0, 12) }, amount),
        heatVA: amount(),
        coolVA: amount(),
        peakVA: chance(0.5) ? null : amount(),
      }),
    );
    if (i < 40)
      sane(
        calcArrangement({
          spaces: int(0, 42),
          circuits: Array.from({ length: int(0, 30) }, (_, k) => ({
            id: `c${k}`,
            poles: pick([1, 2] as const),
            va: amount(),
            partner: null,
          })),
        }),
      );
  }
});

describe('input from outside', () => {
  const good = JSON.stringify(ampacityInput);
  test.each([
    ['', 'not-json', ''],
    ['[]', 'wrong-type', ''],
    ['{}', 'missing-key', '/edition'],
    [good.replace('2020', '2019'), 'wrong-value', '/edition'],
    [good.replace('"12"', '12'), 'wrong-type', '/awg'],
    [good.replace('"conductors":8', '"conductors":-1'), 'out-of-range', '/conductors'],
    [good.replace('"ambientF":86', '"ambientF":1e99'), 'out-of-range', '/ambientF'],
    [good.replace('"metal"', '"extra":1,"metal"'), 'unknown-key', '/extra'],
  ])('%s', (text, type, path) => {
    const read = readCalcInput('ampacity', text);
    expect(read.ok ? null : [read.error.error.type, read.error.error.path]).toEqual([type, path]);
  });

  test('the command prints one answer and its exit code says which kind', () => {
    const root = join(import.meta.dirname, '../../..');
    const call = (name: string, input: string) =>
      spawnSync(process.execPath, ['--import', 'tsx', 'bin/calc.ts', name], { cwd: root, input, encoding: 'utf8' });
    const answered = call('ampacity', good);
    expect([answered.status, answered.stderr]).toEqual([0, '']);
    expect(JSON.parse(answered.stdout)).toMatchObject({ outcome: 'holds', figures: { usable: 20 } });
    const refused = call('ampacity', '{}');
    expect([refused.status, JSON.parse(refused.stdout).error.path]).toEqual([2, '/edition']);
    expect(call('no such', '{}').status).toBe(2);
  });
});
