import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { cookingDemand, dryerDemand } from '../../src/calculations/loadParts';
import { ampacity } from '../../src/standards/ampacity';
import { conductorArea } from '../../src/standards/conductorAreas';
import { racewayArea } from '../../src/standards/conduit';
import { ambientFactor } from '../../src/standards/correction';
import { countFactor } from '../../src/standards/countAdjustment';
import { dwellingSize } from '../../src/standards/dwellingService';
import { bondingSize, gecSize } from '../../src/standards/electrodeConductor';
import { egcSize } from '../../src/standards/grounding';
import { acResistance, reactance } from '../../src/standards/impedance';
import { nextStandardSize, standardSizes } from '../../src/standards/overcurrent';
import { bareArea, circularMils, resistance, type Stranding } from '../../src/standards/resistance';
import { BEYOND } from '../../src/standards/source';

// Each test names the published table (NFPA 70 (NEC) section) whose every row the product is asked for.
const table = <T>(file: string): T =>
  JSON.parse(readFileSync(join(import.meta.dirname, 'published', file), 'utf8')) as T;
type Figures = Readonly<Record<string, number | null>>;
const orBeyond = (value: number | null) => value ?? BEYOND;

test('Table 310.16: every ampacity', () => {
  const t = table<Record<'copper' | 'aluminum', Record<string, Figures>> & { sizesOrdered: string[] }>(
    '01_nec_310_16_ampacity.json',
  );
  for (const [metal, key] of [
    ['Cu', 'copper'],
    ['Al', 'aluminum'],
  ] as const)
    for (const size of t.sizesOrdered)
      for (const column of [60, 75, 90] as const)
        expect(ampacity(metal, size, column), `${size} ${metal} ${column}`).toBe(
          orBeyond(t[key][size]?.[`ampacityA_${column}C`] ?? null),
        );
  expect(ampacity('Cu', '750', 75)).toBe(BEYOND);
});

test('Table 310.15(B)(1), (C)(1): ambient and count factors', () => {
  const t = table<{
    ambientCorrection: {
      ambientMinC: number | null;
      ambientRangeF: string;
      factor_60C: number | null;
      factor_75C: number | null;
      factor_90C: number | null;
    }[];
    adjustment: { conductorsMin: number; conductorsMax: number | null; factor: number }[];
  }>('02_nec_310_15_correction_adjustment.json');
  for (const row of t.ambientCorrection)
    for (const column of [60, 75, 90] as const) {
      const [from, to] = row.ambientMinC === null ? [0, 50] : row.ambientRangeF.split('-').map(Number);
      for (const f of [from, to]) expect(ambientFactor(column, f!)).toBe(orBeyond(row[`factor_${column}C`]));
    }
  expect(ambientFactor(90, 186)).toBe(BEYOND);
  for (const row of t.adjustment) {
    expect(countFactor(row.conductorsMin)).toBe(row.factor);
    expect(countFactor(row.conductorsMax ?? 400)).toBe(row.factor);
  }
  expect(countFactor(3)).toBe(1);
});

test('Table 240.6(A): standard ratings by edition', () => {
  const t =
    table<Record<'standardRatingsA' | 'standardRatingsA_2020_and_earlier', number[]>>('03_nec_240_overcurrent.json');
  expect(standardSizes(2023)).toEqual(t.standardRatingsA);
  expect(standardSizes(2020)).toEqual(t.standardRatingsA_2020_and_earlier);
  expect(nextStandardSize(6001, 2023)).toBe(BEYOND);
});

test('Tables 250.122, 250.66, 250.102(C)(1)', () => {
  const t = table<{
    egc_250_122: { ocpdMaxA: number; copperAwgKcmil: string; aluminumAwgKcmil: string }[];
    gec_250_66: { gecCopper: string; gecAluminum: string }[];
    bonding_250_102_C_1: { minCopper: string; minAluminum: string }[];
  }>('04_nec_250_grounding.json');
  for (const row of t.egc_250_122) {
    expect(egcSize('Cu', row.ocpdMaxA)).toBe(row.copperAwgKcmil);
    expect(egcSize('Al', row.ocpdMaxA)).toBe(row.aluminumAwgKcmil);
  }
  expect(egcSize('Cu', 1201)).toBe(BEYOND);
  const largest = ['2', '1/0', '3/0', '350', '600', '1100', '1250'];
  const largestAl = ['1/0', '3/0', '250', '500', '900', '1750', '2000'];
  for (const [i, row] of t.gec_250_66.entries()) {
    expect(gecSize('Cu', largest[i]!, 'Cu')).toBe(row.gecCopper);
    expect(gecSize('Al', largestAl[i]!, 'Al')).toBe(row.gecAluminum);
    expect(gecSize('Al', largestAl[i]!, 'Cu')).toBe(row.gecCopper);
  }
  for (const [i, row] of t.bonding_250_102_C_1.entries()) {
    expect(bondingSize('Cu', largest[i]!)).toBe(row.minCopper);
    expect(bondingSize('Al', largestAl[i]!, 'Al')).toBe(row.minAluminum);
  }
  expect(bondingSize('Cu', '1250')).toBe(BEYOND);
});

test('Table 310.12(A): dwelling services and feeders', () => {
  for (const row of table<{ rows: { ratingA: number; copperAwgKcmil: string; aluminumAwgKcmil: string }[] }>(
    '05_nec_310_12_dwelling.json',
  ).rows) {
    expect(dwellingSize('Cu', row.ratingA)).toBe(row.copperAwgKcmil);
    expect(dwellingSize('Al', row.ratingA)).toBe(row.aluminumAwgKcmil);
  }
  expect(dwellingSize('Cu', 401)).toBe(BEYOND);
  expect(dwellingSize('Cu', 60)).toBe(BEYOND);
});

test('Chapter 9 Table 8', () => {
  for (const row of table<{
    rows: (Record<'copperUncoatedOhmPerKft' | 'aluminumOhmPerKft' | 'areaCmil' | 'overallAreaIn2', number> & {
      sizeAwgKcmil: string;
      stranding: Stranding;
    })[];
  }>('07a_nec_ch9_table8_dc_resistance.json').rows) {
    const { stranding } = row;
    expect(resistance('Cu', row.sizeAwgKcmil, stranding)).toBe(row.copperUncoatedOhmPerKft);
    expect(resistance('Al', row.sizeAwgKcmil, stranding)).toBe(row.aluminumOhmPerKft);
    expect(circularMils(row.sizeAwgKcmil)).toBe(row.areaCmil);
    if (stranding === 'solid') expect(bareArea(row.sizeAwgKcmil)).toBe(row.overallAreaIn2);
  }
  expect(resistance('Cu', '6', 'solid')).toBe(BEYOND);
});

test('Chapter 9 Table 9', () => {
  for (const row of table<{ rows: Figures[] }>('07b_nec_ch9_table9_ac_impedance.json').rows) {
    const size = String(row.sizeAwgKcmil);
    expect(reactance(size, 'PVC')).toBe(row.xlOhmPerKft_pvcOrAluminumConduit);
    expect(reactance(size, 'aluminum')).toBe(row.xlOhmPerKft_pvcOrAluminumConduit);
    expect(reactance(size, 'steel')).toBe(row.xlOhmPerKft_steelConduit);
    for (const [raceway, key] of [
      ['PVC', 'pvc'],
      ['aluminum', 'aluminumConduit'],
      ['steel', 'steel'],
    ] as const) {
      expect(acResistance('Cu', size, raceway)).toBe(row[`rCopperOhmPerKft_${key}`]);
      expect(acResistance('Al', size, raceway)).toBe(orBeyond(row[`rAluminumOhmPerKft_${key}`]!));
    }
  }
});

test('Chapter 9 Tables 4, 5 and 5A', () => {
  const areas = table<Record<'conductors' | 'compactAluminumXhhw', Record<string, Figures>>>(
    '07c_nec_ch9_table5_conductor_areas.json',
  );
  for (const [size, row] of Object.entries(areas.conductors)) {
    expect(conductorArea(size, 'THWN-2')).toBe(row.thhnAreaIn2);
    expect(conductorArea(size, 'XHHW-2')).toBe(row.xhhwAreaIn2);
  }
  for (const [size, row] of Object.entries(areas.compactAluminumXhhw))
    expect(conductorArea(size, 'compact XHHW')).toBe(row.areaIn2);
  expect(conductorArea('600', 'THHN')).toBe(BEYOND);
  const { conduits } = table<{ conduits: Record<string, Record<string, Figures>> }>(
    '07d_nec_ch9_table1_table4_conduit.json',
  );
  for (const [raceway, key] of [
    ['EMT', 'EMT'],
    ['PVC 40', 'PVC_Sch40'],
    ['PVC 80', 'PVC_Sch80'],
  ] as const)
    for (const [size, row] of Object.entries(conduits[key]!)) {
      expect(racewayArea(raceway, size)).toBe(row.area100In2);
      expect(racewayArea(raceway, size, 'one')).toBe(row.area53In2_oneWire);
      expect(racewayArea(raceway, size, 'two')).toBe(row.area31In2_twoWires);
      expect(racewayArea(raceway, size, 'more')).toBe(row.area40In2_overTwoWires);
      expect(racewayArea(raceway, size, 'nipple')).toBe(row.area60In2);
    }
});

test('Tables 220.54 and 220.55', () => {
  const t = table<{
    range_220_55: Record<
      'appliances' | 'columnA_percent_under3_5kW' | 'columnB_percent_3_5to8_75kW' | 'columnC_maxDemandKW_upTo12kW',
      number
    >[];
    dryer_220_54: { demandPercentByCount: Record<string, number> };
  }>('11_nec_220_load_calculation.json');
  for (const row of t.range_220_55) {
    const n = row.appliances;
    expect(cookingDemand(Array(n).fill(12_000))).toBe(row.columnC_maxDemandKW_upTo12kW * 1000);
    // Small appliances by column A or B, where that is less than column C (note 3).
    expect(cookingDemand(Array(n).fill(2000))).toBeCloseTo((n * 2000 * row.columnA_percent_under3_5kW) / 100, 6);
    const b = (n * 4000 * row.columnB_percent_3_5to8_75kW) / 100;
    expect(cookingDemand(Array(n).fill(4000))).toBeCloseTo(Math.min(b, row.columnC_maxDemandKW_upTo12kW * 1000), 6);
  }
  expect(cookingDemand(Array(11).fill(12_000))).toBe(BEYOND);
  expect(cookingDemand([28_000])).toBe(BEYOND);
  for (const [count, percent] of Object.entries(t.dryer_220_54.demandPercentByCount)) {
    const n = Number(count.split('-').at(-1));
    expect(dryerDemand(Array(n).fill(5500))).toBeCloseTo((n * 5500 * percent) / 100, 6);
  }
  expect(dryerDemand(Array(12).fill(5000))).toBe(BEYOND);
});
