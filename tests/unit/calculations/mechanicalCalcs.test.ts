import { describe, expect, test } from 'vitest';
import { calcBend, minBendRadius } from '../../../src/calculations/bend';
import { boringLimits, calcBoring, holeBand } from '../../../src/calculations/boring';
import { boxFillIn3, calcBoxFill } from '../../../src/calculations/boxFill';
import { calcCabinetFill } from '../../../src/calculations/cabinetFill';
import { calcDedicatedSpace } from '../../../src/calculations/dedicatedSpace';
import { calcPullBox } from '../../../src/calculations/pullBox';
import { calcTerminalBend } from '../../../src/calculations/terminalBend';
import type { CalcInput, CalcOutput } from '../../../src/calculations/types';
import { calcWorkingSpace } from '../../../src/calculations/workingSpace';
import type { Cable } from '../../../src/standards/cable';
import type { Fault } from '../../../src/units/fault';
import type { Result } from '../../../src/units/result';

const value = (answer: Result<CalcOutput, Fault>): CalcOutput => {
  if (!answer.ok) throw new Error(answer.error.error.say);
  return answer.value;
};
const faultAt = (answer: Result<CalcOutput, Fault>): string => (answer.ok ? 'no fault' : answer.error.error.path);

describe('box fill (314.16)', () => {
  const input = (over: Partial<CalcInput['box-fill']> = {}): CalcInput['box-fill'] => ({
    edition: 2023,
    conductors: [{ awg: '12', count: 12 }],
    grounds: [{ awg: '12', count: 6 }],
    deviceYokes: [],
    clamps: false,
    fittings: 0,
    boxIn3: null,
    ...over,
  });

  // Three 12/2 spliced through: 12 × 2.25 + grounds. Trade-review (d): 30.3 cu in. does not hold it from 2020.
  test('three 12/2 extended: 29.25 in 2017, 30.375 from 2020, so a 30.3 cu in. box holds it in 2017 only', () => {
    const fill = (edition: CalcInput['box-fill']['edition']) => value(calcBoxFill(input({ edition, boxIn3: 30.3 })));
    expect([fill(2017).figures.fillIn3, fill(2017).outcome]).toEqual([29.25, 'holds']);
    for (const edition of [2020, 2023, 2026] as const)
      expect([fill(edition).figures.fillIn3, fill(edition).outcome]).toEqual([30.375, 'fails']);
    const { conductors, grounds } = input();
    expect(boxFillIn3('unknown', { conductors, grounds, clamps: false, yokes: [], fittings: 0 })).toBe(30.375);
  });

  test('at the limit, just below, just above', () => {
    const at = (boxIn3: number) => value(calcBoxFill(input({ boxIn3 }))).outcome;
    expect([at(30.375), at(30.374), at(30.376)]).toEqual(['holds', 'fails', 'holds']);
    expect(value(calcBoxFill(input())).outcome).toBe('value');
  });

  test('four EGCs are one allowance, the fifth adds a quarter of the largest', () => {
    const grounds = (count: number) =>
      boxFillIn3(2020, { conductors: [], grounds: [{ awg: '10', count }], clamps: false, yokes: [], fittings: 0 });
    expect([0, 1, 4, 5, 8].map(grounds)).toEqual([0, 2.5, 2.5, 3.125, 5]);
  });

  test('clamps and fittings go by the largest conductor in the box, a yoke by the largest on it', () => {
    const box = {
      conductors: [
        { awg: '14', count: 2 },
        { awg: '10', count: 2 },
      ],
      grounds: [],
      clamps: true,
      yokes: [{ awg: '14', count: 1 }],
      fittings: 1,
    };
    expect(boxFillIn3(2023, box)).toBe(4 + 5 + 2.5 + 2.5 + 4);
  });

  test('an entry of count 0 counts for nothing, whatever its size', () => {
    const box = { conductors: [{ awg: '14', count: 1 }], grounds: [], clamps: true, yokes: [], fittings: 0 };
    expect(boxFillIn3(2023, { ...box, grounds: [{ awg: '6', count: 0 }] })).toBe(boxFillIn3(2023, box));
  });

  test('4 AWG is not counted by volume: a fault in the calculation, null for the planner', () => {
    const conductors = [{ awg: '4', count: 3 }];
    expect(faultAt(calcBoxFill(input({ conductors })))).toBe('/conductors/0/awg');
    expect(boxFillIn3(2023, { conductors, grounds: [], clamps: false, yokes: [], fittings: 0 })).toBeNull();
  });

  test('bad input is located', () => {
    const bad = (over: object) => faultAt(calcBoxFill({ ...input(), ...over } as CalcInput['box-fill']));
    expect(bad({ edition: 2021 })).toBe('/edition');
    expect(bad({ conductors: [{ awg: '12', count: -1 }] })).toBe('/conductors/0/count');
    expect(bad({ conductors: [{ awg: '12', count: 1.5 }] })).toBe('/conductors/0/count');
    expect(bad({ grounds: 'none' })).toBe('/grounds');
    expect(bad({ deviceYokes: [null] })).toBe('/deviceYokes/0');
    expect(bad({ deviceYokes: [{ awg: 12, count: 1 }] })).toBe('/deviceYokes/0/awg');
    expect(bad({ conductors: [{ awg: 'constructor', count: 1 }] })).toBe('/conductors/0/awg');
    expect(bad({ fittings: Number.NaN })).toBe('/fittings');
    expect(bad({ clamps: 'yes' })).toBe('/clamps');
    expect(bad({ boxIn3: Number.POSITIVE_INFINITY })).toBe('/boxIn3');
    expect(faultAt(calcBoxFill(null as unknown as CalcInput['box-fill']))).toBe('');
  });
});

describe('cabinet fill (312.8(A), 2026 312.11(A))', () => {
  // 100 conductors of 12 THHN are 1.33 sq in. (Chapter 9 Table 5: 0.0133 each).
  const fill = (sectionIn2: number, splicesIn2: number) =>
    value(calcCabinetFill({ sectionIn2, conductors: [{ awg: '12', insulation: 'THHN', count: 100 }], splicesIn2 }));

  test('40 % for conductors and 75 % with splices, both at the limit and past it', () => {
    expect(fill(1.33 / 0.4, 0).outcome).toBe('holds');
    expect(fill(1.33 / 0.4001, 0).outcome).toBe('fails');
    expect(fill(10, 7.5 - 1.33).outcome).toBe('holds');
    expect(fill(10, 7.5 - 1.33 + 0.01).outcome).toBe('fails');
    expect(fill(10, 1).figures).toEqual({ conductorShare: 0.133, totalShare: 0.233 });
  });

  test('bad input is located', () => {
    const bad = (over: object) =>
      faultAt(calcCabinetFill({ sectionIn2: 10, conductors: [], splicesIn2: 0, ...over } as CalcInput['cabinet-fill']));
    expect(bad({ sectionIn2: 0 })).toBe('/sectionIn2');
    expect(bad({ conductors: [{ awg: '12', insulation: 'paper', count: 1 }] })).toBe('/conductors/0/awg');
    expect(bad({ conductors: [{ awg: '12', count: 1 }] })).toBe('/conductors/0/insulation');
    expect(bad({ splicesIn2: -1 })).toBe('/splicesIn2');
  });
});

describe('pull box (314.28(A)) and bending space (312.6)', () => {
  test('a splice is sized as an angle pull; order of entries is no matter', () => {
    for (const racewaysIn of [
      [1, 2, 1.5],
      [2, 1.5, 1],
    ])
      expect(value(calcPullBox({ pull: 'splice', racewaysIn })).figures.minimumIn).toBe(6 * 2 + 2.5);
    expect(value(calcPullBox({ pull: 'straight', racewaysIn: [1, 2, 1.5] })).figures.minimumIn).toBe(16);
  });

  test('bad input is located', () => {
    expect(faultAt(calcPullBox({ pull: 'angle', racewaysIn: [] }))).toBe('/racewaysIn');
    expect(faultAt(calcPullBox({ pull: 'angle', racewaysIn: [2, 0] }))).toBe('/racewaysIn/1');
    expect(faultAt(calcPullBox({ pull: 'U' as 'angle', racewaysIn: [2] }))).toBe('/pull');
  });

  test('2 AWG: 2-1/2 in at the side, 3-1/2 in opposite; 12 AWG has no figure; 600 kcmil is beyond the table', () => {
    const bend = (awg: string, wires: number, wall: 'side' | 'opposite') => calcTerminalBend({ awg, wires, wall });
    expect(value(bend('2', 1, 'side')).figures.minimumIn).toBe(2.5);
    expect(value(bend('2', 1, 'opposite')).figures.minimumIn).toBe(3.5);
    expect(value(bend('12', 1, 'side')).figures.minimumIn).toBe(0);
    expect(faultAt(bend('600', 1, 'side'))).toBe('/wires');
    expect(faultAt(bend('2', 2, 'side'))).toBe('/wires');
    expect(faultAt(bend('2', 0, 'side'))).toBe('/wires');
    expect(faultAt(bend('twelve', 1, 'side'))).toBe('/awg');
  });
});

describe('boring and notching (IRC R502.8.1, R602.6)', () => {
  const bore = (over: Partial<CalcInput['boring']>) =>
    calcBoring({ member: 'joist', depthIn: 9.25, holeIn: null, edgeIn: null, notchIn: null, ...over });
  const outcome = (over: Partial<CalcInput['boring']>) => value(bore(over)).outcome;

  test('a 2x10 joist: hole to a third, 2 in of wood, notch to a sixth', () => {
    expect(value(bore({})).figures).toMatchObject({ minEdgeIn: 2, maxEndNotchIn: 9.25 / 4 });
    expect(outcome({})).toBe('value');
    expect([outcome({ holeIn: 9.25 / 3 }), outcome({ holeIn: 9.25 / 3 + 1 / 64 })]).toEqual(['holds', 'fails']);
    expect([outcome({ holeIn: 1, edgeIn: 2 }), outcome({ holeIn: 1, edgeIn: 2 - 1 / 64 })]).toEqual(['holds', 'fails']);
    expect([outcome({ notchIn: 9.25 / 6 }), outcome({ notchIn: 9.25 / 6 + 1 / 64 })]).toEqual(['holds', 'fails']);
  });

  test('a 2x6 joist cannot keep 2 in on both sides of a 1.6 in hole, though a third of its depth is more', () => {
    expect(outcome({ depthIn: 5.5, holeIn: 1.5 })).toBe('holds');
    expect(outcome({ depthIn: 5.5, holeIn: 1.6 })).toBe('fails');
    expect(outcome({ depthIn: 5.5, holeIn: 1.6, edgeIn: 2.5 })).toBe('fails'); // 2.5 cannot be the nearer edge
  });

  test('studs: 40 % bearing, 60 % other, 5/8 in at the edge', () => {
    expect(value(bore({ member: 'bearing stud', depthIn: 3.5 })).figures).toMatchObject({
      maxHoleIn: 1.4,
      minEdgeIn: 0.625,
      maxNotchIn: 0.875,
    });
    expect(value(bore({ member: 'other stud', depthIn: 3.5 })).figures).toMatchObject({
      maxHoleIn: 2.1,
      maxNotchIn: 1.4,
    });
  });

  test('engineered and unknown joists have no limits of their own', () => {
    for (const kind of ['I-joist', 'open-web truss', 'LVL', 'unknown'] as const)
      expect(boringLimits('joist', 9.25, kind)).toBeNull();
  });

  test('where a hole may lie (file 09a: 2x10, 3/4 in hole, 2-3/8 to 6-7/8 in from the bottom)', () => {
    const limits = boringLimits('joist', 9.25)!;
    expect(holeBand(limits, 9.25, 0.75)).toEqual([2.375, 6.875]);
    expect(holeBand(limits, 9.25, 3.2)).toBeNull();
    expect(holeBand(boringLimits('joist', 5.5)!, 5.5, 1.5)).toEqual([2.75, 2.75]);
    expect(holeBand(boringLimits('joist', 5.5)!, 5.5, 1.6)).toBeNull();
  });

  test('bad input is located', () => {
    expect(faultAt(bore({ depthIn: 0 }))).toBe('/depthIn');
    expect(faultAt(bore({ member: 'rafter' as 'joist' }))).toBe('/member');
    expect(faultAt(bore({ holeIn: -1 }))).toBe('/holeIn');
  });
});

describe('bending of cable (334.24 and its like)', () => {
  const radius = (cable: string | null, diameterIn: number | null = null) => calcBend({ cable, diameterIn });

  test('by trade name, however it is written', () => {
    for (const name of ['12/2', '12/2 w/G', '12/2 NM', '12/2 NM-B', ' 12/2 nm '])
      expect(value(radius(name)).figures.minRadiusIn).toBe(2.11); // 5 × 0.422
    expect(value(radius('2-2-2-4 Al SER')).figures.minRadiusIn).toBe(4.475); // 5 × 0.895
    expect(value(radius('12/2 MC', 0.5)).figures.minRadiusIn).toBe(3.5); // 7 × 0.5
    expect(value(radius(null, 0.5)).figures.minRadiusIn).toBe(2.5);
  });

  test('a cable whose diameter is not on file cannot be told; a text that is no cable is refused', () => {
    expect(value(radius('1/2 NM')).outcome).toBe('cannot be told');
    expect(faultAt(radius('lamp cord'))).toBe('/cable');
    expect(faultAt(radius(null))).toBe('');
    expect(faultAt(radius(null, 0))).toBe('/diameterIn');
  });

  test('not knowing never helps: an unknown cable has no radius', () => {
    const cable: Cable = {
      kind: 'NM',
      size: '12',
      metal: 'Cu',
      hots: 1,
      neutral: 'insulated',
      ground: true,
      insulation: 90,
    };
    expect(minBendRadius(cable)).toBe(2.11);
    for (const key of ['kind', 'size', 'hots', 'neutral'] as const)
      expect(minBendRadius({ ...cable, [key]: 'unknown' })).toBeUndefined();
  });
});

describe('working space by figures (110.26(A), 240.24(A))', () => {
  const input = (over: Partial<CalcInput['working-space']> = {}): CalcInput['working-space'] => ({
    edition: 2020,
    size: { width: 14.5, depth: 4, height: 34 },
    bottom: 38,
    topHandle: 70,
    free: { left: 8, right: 7.5, depth: 36, height: 78 },
    existingDwelling: false,
    amps: 100,
    voltsToGround: 120,
    ...over,
  });
  const figures = (over: Partial<CalcInput['working-space']> = {}) => value(calcWorkingSpace(input(over))).figures;
  const free = (over: Partial<CalcInput['working-space']['free']>) => ({ free: { ...input().free, ...over } });

  test('every measure at its limit holds, 1/64 in less fails', () => {
    const less = 1 / 64;
    expect(value(calcWorkingSpace(input())).outcome).toBe('holds');
    expect(figures(free({ depth: 36 - less })).depth).toBe('fails');
    expect(figures(free({ left: 8 - less })).width).toBe('fails');
    expect(figures(free({ height: 78 - less })).height).toBe('fails');
    expect([figures({ topHandle: 79 }).handle, figures({ topHandle: 79 + less }).handle]).toEqual(['holds', 'fails']);
  });

  test('a panel wider than 30 in needs its own width, one taller than 78 in its own top', () => {
    const wide = { size: { width: 32, depth: 6, height: 34 } };
    expect(figures({ ...wide, ...free({ left: 0, right: 0 }) }).width).toBe('holds');
    expect(figures({ ...wide, ...free({ left: -0.25, right: 20 }) }).width).toBe('fails');
    const tall = { size: { width: 14.5, depth: 4, height: 50 } };
    expect([
      figures({ ...tall, ...free({ height: 88 }) }).height,
      figures({ ...tall, ...free({ height: 87 }) }).height,
    ]).toEqual(['holds', 'fails']);
  });

  test('the headroom exception: existing dwelling, not over 200 A, and height only', () => {
    const low = free({ height: 70 });
    expect(figures({ ...low, existingDwelling: true, amps: 200 })).toMatchObject({
      height: 'holds',
      headroomException: true,
    });
    expect(figures({ ...low, existingDwelling: true, amps: 225 })).toMatchObject({
      height: 'fails',
      headroomException: false,
    });
    expect(figures({ existingDwelling: true })).toMatchObject({ height: 'holds', headroomException: false });
    expect(figures({ ...free({ height: 70, depth: 30 }), existingDwelling: true }).depth).toBe('fails');
  });

  test('above 150 V to ground the depth depends on what stands opposite', () => {
    const at = (depth: number, voltsToGround: number) => figures({ ...free({ depth }), voltsToGround }).depth;
    expect([at(35, 277), at(36, 277), at(47, 277), at(48, 277)]).toEqual([
      'fails',
      'cannot be told',
      'cannot be told',
      'holds',
    ]);
    expect([at(36, 150), at(48, 800), at(60, 800)]).toEqual(['holds', 'cannot be told', 'holds']);
  });

  test('steps name the section of the edition', () => {
    const sections = (edition: 2020 | 2023) =>
      value(calcWorkingSpace(input({ edition, existingDwelling: true, ...free({ height: 70 }) }))).worked.steps.map(
        (s) => s.section,
      );
    expect(sections(2020)).toContain('110.26(A)(3) Exc. 1');
    expect(sections(2023)).toContain('110.26(A)(3) Exc. 2');
  });

  test('bad input is located', () => {
    const bad = (over: object) => faultAt(calcWorkingSpace({ ...input(), ...over } as CalcInput['working-space']));
    expect(bad({ free: null })).toBe('/free');
    expect(bad({ size: { width: 0, depth: 4, height: 30 } })).toBe('/size/width');
    expect(bad({ voltsToGround: 1001 })).toBe('/voltsToGround');
    expect(bad({ amps: '100' })).toBe('/amps');
    expect(faultAt(calcWorkingSpace([] as unknown as CalcInput['working-space']))).toBe('');
  });
});

describe('dedicated space (110.26(E)(1))', () => {
  const input = (thing: Partial<CalcInput['dedicated-space']['thing']>, over = {}): CalcInput['dedicated-space'] => ({
    edition: 2023,
    size: { width: 14.5, depth: 4, height: 34 },
    bottom: 38,
    structure: 92,
    thing: { left: 2, right: 4, out: 1, outTo: 3, from: 80, to: 82, ...thing },
    ...over,
  });
  const inZone = (thing: Partial<CalcInput['dedicated-space']['thing']>, over = {}) =>
    value(calcDedicatedSpace(input(thing, over))).figures.inZone;

  test('inside the footprint is in, touching it is out', () => {
    expect(inZone({})).toBe(true);
    expect(inZone({ left: 14.5, right: 16 })).toBe(false);
    expect(inZone({ left: 14.4, right: 16 })).toBe(true);
    expect(inZone({ out: 4, outTo: 6 })).toBe(false);
    expect(inZone({ from: 0, to: 30 })).toBe(true); // below the panel counts too
  });

  test('up to the structural ceiling or 6 ft above the panel, whichever is lower', () => {
    expect([inZone({ from: 92, to: 94 }), inZone({ from: 91.9, to: 94 })]).toEqual([false, true]);
    const high = { structure: 200 };
    expect([inZone({ from: 144, to: 150 }, high), inZone({ from: 143.9, to: 150 }, high)]).toEqual([false, true]);
  });

  test('bad input is located', () => {
    expect(faultAt(calcDedicatedSpace(input({ left: 5, right: 4 })))).toBe('/thing/right');
    expect(faultAt(calcDedicatedSpace(input({ to: Number.NaN })))).toBe('/thing/to');
    expect(faultAt(calcDedicatedSpace({ ...input({}), thing: null } as unknown as CalcInput['dedicated-space']))).toBe(
      '/thing',
    );
  });
});
