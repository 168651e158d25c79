import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { boringLimits } from '../../src/calculations/boring';
import { calcBoxFill } from '../../src/calculations/boxFill';
import { supportCount } from '../../src/calculations/supports';
import { BORING } from '../../src/standards/boring';
import { type BoxColumn, type BoxShape, standardBox } from '../../src/standards/boxes';
import { conductorVolume, groundAllowances } from '../../src/standards/boxVolumes';
import type { Cable } from '../../src/standards/cable';
import { cableDiameter, NM_JACKET_COLOR } from '../../src/standards/cableDimensions';
import { LUMBER } from '../../src/standards/framing';
import { PULL_BOX } from '../../src/standards/pullBox';
import { supportRule } from '../../src/standards/supports';
import { SOCKET_LB_IN, torqueFor } from '../../src/standards/torque';
import { ELECTRICIAN_WAGE } from '../../src/standards/wages';
import { wireBendingSpace } from '../../src/standards/wireBending';
import { depthRow } from '../../src/standards/workingSpace';

const read = <T>(file: string): T =>
  JSON.parse(readFileSync(join(import.meta.dirname, 'published', file), 'utf8')) as T;

interface Assertion {
  readonly assertion: string;
  readonly file: string;
  readonly expected: unknown;
}
// Source of every figure: the table file the assertion names, with its NEC, IRC, UL or BLS section inside.
const { assertions } = read<{ assertions: Assertion[] }>('99_spot_checks.json');
/** The mechanical tables; the electrical ones have their own runner. */
const OURS = /^(06|08|09[ab]|10|12|13)_/;

const cable = (over: Partial<Cable>): Cable => ({
  kind: 'NM',
  size: '12',
  metal: 'Cu',
  hots: 1,
  neutral: 'insulated',
  ground: true,
  insulation: 90,
  ...over,
});
const ft = (inches: number) => inches / 12;
const thousandths = (x: number) => Math.round(x * 1000) / 1000;
const volume = (shape: BoxShape, size: string) => standardBox(shape, size)?.volumeIn3;
/** Most conductors of one size that the pocket calculation lets into a box. */
const mostByVolume = (awg: string, boxIn3: number): number => {
  const holds = (count: number) => {
    const answer = calcBoxFill({
      edition: 2023,
      conductors: [{ awg, count }],
      grounds: [],
      deviceYokes: [],
      clamps: false,
      fittings: 0,
      boxIn3,
    });
    return answer.ok && answer.value.outcome === 'holds';
  };
  let count = 0;
  while (holds(count + 1)) count++;
  return count;
};

/** What the product answers to each assertion. */
const answers: Readonly<Record<string, () => unknown>> = {
  'Cu 12 AWG box volume = 2.25 in3': () => conductorVolume('12'),
  '6 AWG box volume = 5.00 in3': () => conductorVolume('6'),
  '4-11/16 x 2-1/8 square = 42.0 in3': () => volume('square', '4-11/16 x 2-1/8'),
  '4 x 2-1/8 square = 30.3 in3': () => volume('square', '4 x 2-1/8'),
  '4 x 1-1/2 square holds 9 x 12 AWG': () => mostByVolume('12', volume('square', '4 x 1-1/2')!),
  '4-11/16 x 1-1/4 square = 25.5 in3': () => volume('square', '4-11/16 x 1-1/4'),
  '3 x 2 x 3-1/2 device = 18.0 in3': () => volume('device', '3 x 2 x 3-1/2'),
  '4 x 1-1/4 octagon, 8 AWG by volume = 4 (printed 5)': () => mostByVolume('8', volume('octagon-round', '4 x 1-1/4')!),
  'Straight pull multiplier = 8': () => PULL_BOX.straightTimes,
  'Fifth and later EGCs count 0.25 each': () => groundAllowances(2023, 5) - groundAllowances(2023, 4),
  '4/0 side wire-bending space = 4 in.': () => wireBendingSpace('4/0', 1, 'side'),
  '4/0 opposite-wall bending space = 7 in.': () => wireBendingSpace('4/0', 1, 'opposite'),
  'Working space depth 0-150 V = 3 ft, condition 3': () => ft(depthRow(120)!.depthIn[2]),
  'Working space depth 151-600 V condition 2 = 3.5 ft': () => ft(depthRow(277)!.depthIn[1]),
  '2x10 actual depth = 9.25 in.': () => LUMBER['2x10']?.depthIn,
  '2x8 max hole = 2.417 in.': () => thousandths(boringLimits('joist', LUMBER['2x8']!.depthIn)!.maxHoleIn),
  'Joist hole edge distance = 2 in.': () => boringLimits('joist', 9.25)?.minEdgeIn,
  'NM 12/2 major diameter about 0.422 in.': () => cableDiameter(cable({}))?.majorIn,
  'NM 10 AWG jacket orange (convention)': () => NM_JACKET_COLOR['10'],
  'SER 2-2-2-4 about 0.895 in.': () => cableDiameter(cable({ kind: 'SE-R', size: '2', metal: 'Al', hots: 2 }))?.majorIn,
  'Staple interval 4.5 ft': () => ft(supportRule('NM').apartIn),
  'Electricians median wage May 2023 = 29.61 USD/h': () =>
    ELECTRICIAN_WAGE.find((w) => w.period === 'May 2023')?.medianPerHour,
  'Hex split-bolt 2 AWG = 275 lbf-in': () => torqueFor({ awg: '2', screw: 'hex split-bolt' })?.lbIn,
  'Hex other connector 3/0-4/0 = 250 lbf-in': () => torqueFor({ awg: '4/0', screw: 'hex, other' })?.lbIn,
  'Socket 1/4 in. = 200 lbf-in': () => SOCKET_LB_IN['1/4'],
};

test.each(assertions.filter((a) => OURS.test(a.file)))('$assertion', ({ assertion, expected }) => {
  expect(answers[assertion], 'no product function answers this assertion').toBeDefined();
  expect(answers[assertion]!()).toEqual(expected);
});

// Whole tables against the copies, cell by cell, so that a typing error in one of our rows is found.
test('box table: every volume and printed count (Table 314.16(A), file 06)', () => {
  const { boxes } = read<{
    boxes: {
      type: string;
      tradeSizeIn: string;
      minVolumeIn3: number;
      maxConductors_printed: Record<BoxColumn, number>;
    }[];
  }>('06_nec_314_boxes.json');
  const shapes: Record<string, string> = {
    'masonry-per-gang': 'masonry, per gang',
    'FS-single-cover-per-gang': 'FS single cover, per gang',
    'FD-single-cover-per-gang': 'FD single cover, per gang',
    'FS-multiple-cover-per-gang': 'FS multiple cover, per gang',
    'FD-multiple-cover-per-gang': 'FD multiple cover, per gang',
  };
  for (const b of boxes) {
    const size = b.tradeSizeIn.replace(/^min depth (.*)$/, 'at least $1 deep');
    const ours = standardBox((shapes[b.type] ?? b.type) as BoxShape, size);
    expect([b.type, ours?.volumeIn3, ours?.printedMost]).toEqual([b.type, b.minVolumeIn3, b.maxConductors_printed]);
  }
  expect(boxes.length).toBe(24);
});

test('bending space, one wire: every row (Tables 312.6(A) and (B), file 06)', () => {
  type Row = { awgKcmil: string; minIn: number | null };
  const file = read<Record<string, Row[]>>('06_nec_314_boxes.json');
  for (const [key, wall] of [
    ['wireBending_312_6_A_oneWirePerTerminal', 'side'],
    ['wireBending_312_6_B_2_oppositeWall_oneWirePerTerminal', 'opposite'],
  ] as const)
    for (const row of file[key]!)
      for (const awg of row.awgKcmil.split('-'))
        expect([awg, wireBendingSpace(awg, 1, wall)]).toEqual([awg, row.minIn ?? 0]);
});

test('torque: every conductor row (Annex I Table I.1, file 13)', () => {
  interface Row {
    awgKcmil: string;
    slottedNo10Plus_narrowSlotLbIn: number | null;
    slottedNo10Plus_wideSlotLbIn: number | null;
    hexSplitBoltLbIn: number;
    hexOtherLbIn: number;
  }
  const { tableI1_byConductor: rows } = read<{ tableI1_byConductor: Row[] }>('13_ul486_annex_i_torque.json');
  const inScope = rows.filter((row) => row.awgKcmil !== '1250-2000'); // no house has them
  for (const row of inScope)
    for (const awg of row.awgKcmil.split('-').filter((size) => size !== '30'))
      expect(
        (['slotted, narrow slot', 'slotted, wide slot', 'hex split-bolt', 'hex, other'] as const).map(
          (screw) => torqueFor({ awg, screw })?.lbIn ?? null,
        ),
      ).toEqual([
        row.slottedNo10Plus_narrowSlotLbIn,
        row.slottedNo10Plus_wideSlotLbIn,
        row.hexSplitBoltLbIn,
        row.hexOtherLbIn,
      ]);
});

test('lumber: holes and notches of every joist and stud (IRC R502.8.1, R602.6, file 09a)', () => {
  const file = read<{
    joistComputed: Record<string, { maxHoleDiameterIn: number; maxNotchDepthIn: number; maxEndNotchDepthIn: number }>;
    studComputed: Record<string, Record<string, number>>;
  }>('09a_framing_boring_lumber.json');
  const near = (value: number, printed: number) => expect(Math.abs(value - printed)).toBeLessThan(0.001);
  for (const [name, row] of Object.entries(file.joistComputed)) {
    const limits = boringLimits('joist', LUMBER[name]!.depthIn)!;
    near(limits.maxHoleIn, row.maxHoleDiameterIn);
    near(limits.maxNotchIn, row.maxNotchDepthIn);
    near(limits.maxEndNotchIn, row.maxEndNotchDepthIn);
  }
  for (const [name, row] of Object.entries(file.studComputed)) {
    const depth = LUMBER[name]!.depthIn;
    near(boringLimits('bearing stud', depth)!.maxHoleIn, row.bore40pctIn!);
    near(boringLimits('other stud', depth)!.maxHoleIn, row.bore60pctIn!);
    near(boringLimits('bearing stud', depth)!.maxNotchIn, row.notch25pctIn!);
    near(boringLimits('other stud', depth)!.maxNotchIn, row.notch40pctIn!);
  }
  expect(BORING['other stud'].edgeIn).toBe(0.625);
});

test('cable sizes: every NM and SER row that a cable record can name (data sheets, file 09b)', () => {
  const file = read<{
    nmB: Record<string, { majorIn: number; minorIn: number }>;
    serAluminum: Record<string, { diameterIn: number }>;
  }>('09b_cable_dimensions_colours.json');
  for (const [name, row] of Object.entries(file.nmB)) {
    const [size, count] = name.split('/');
    if (count === '4') continue; // two circuits with two neutrals: no cable record has four insulated conductors
    const ours = cableDiameter(cable({ size: size!, hots: count === '2' ? 1 : 2 }));
    expect([name, ours?.majorIn, ours?.minorIn]).toEqual([name, row.majorIn, row.minorIn]);
  }
  for (const [name, row] of Object.entries(file.serAluminum)) {
    const ours = cableDiameter(cable({ kind: 'SE-R', metal: 'Al', hots: 2, size: name.split('-')[0]! }));
    expect([name, ours?.majorIn]).toEqual([name, row.diameterIn]);
  }
});

test('staples: never fewer than the interval asks for, at most the planning formula (334.30, file 10)', () => {
  for (let inches = 1; inches <= 600; inches++) {
    const count = supportCount(inches);
    const planning = Math.ceil(ft(inches) / 4.5) + 2; // the file's own planning formula, one near each end
    expect(count).toBeLessThanOrEqual(planning);
    // count staples: 12 in at each end, 54 in between neighbors.
    expect(24 + 54 * (count - 1)).toBeGreaterThanOrEqual(inches);
  }
});
