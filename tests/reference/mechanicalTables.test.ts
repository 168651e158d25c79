import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { boringLimits } from '../../src/calculations/boring';
import { supportCount } from '../../src/calculations/supports';
import { BORING } from '../../src/standards/boring';
import { type BoxColumn, type BoxShape, standardBox } from '../../src/standards/boxes';
import type { Cable } from '../../src/standards/cable';
import { cableDiameter } from '../../src/standards/cableDimensions';
import { LUMBER } from '../../src/standards/framing';
import { torqueFor } from '../../src/standards/torque';
import { wireBendingSpace } from '../../src/standards/wireBending';

const read = <T>(file: string): T =>
  JSON.parse(readFileSync(join(import.meta.dirname, 'published', file), 'utf8')) as T;

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
