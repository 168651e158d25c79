import { describe, expect, test } from 'vitest';
import { calcAmpacity } from '../../src/calculations/ampacity';
import { boringLimits, holeBand } from '../../src/calculations/boring';
import { rowLimit } from '../../src/calculations/cableRows';
import { cookingDemand, dryerDemand, fixedShare, optionalHeatShare } from '../../src/calculations/loadParts';
import { bendLimit } from '../../src/standards/bending';
import { BORING, NAIL_SETBACK, NO_TENSION_NOTCH_FROM_IN, NOTCH_LENGTH_SHARE } from '../../src/standards/boring';
import {
  ALLOWANCES,
  BARRIER_IN3,
  conductorVolume,
  FREE_CONDUCTOR,
  GROUND_ALLOWANCE,
  TERMINAL_BLOCK_ALLOWANCE,
} from '../../src/standards/boxVolumes';
import { CABINET_FILL } from '../../src/standards/cabinetFill';
import type { Cable } from '../../src/standards/cable';
import { NM_JACKET_COLOR } from '../../src/standards/cableDimensions';
import { ambientFactor } from '../../src/standards/correction';
import { UNADJUSTED_LENGTH_IN } from '../../src/standards/countAdjustment';
import { CIRCUIT_CONDUCTORS, circuitConductors } from '../../src/standards/currentCarrying';
import { gecCap } from '../../src/standards/electrodeConductor';
import { LUMBER } from '../../src/standards/framing';
import { impedance } from '../../src/standards/impedance';
import * as load from '../../src/standards/loadDemand';
import { NEXT_SIZE_MOST } from '../../src/standards/overcurrent';
import { PULL_BOX } from '../../src/standards/pullBox';
import { RESISTANCE_PER_DEGREE } from '../../src/standards/resistance';
import { smallConductorMost } from '../../src/standards/smallConductors';
import { CABLE_TO_SUPPORT_IN, FROM_CLAMPLESS_BOX_IN, supportRule, UNDERSIDE } from '../../src/standards/supports';
import { SMALL_SLOT_LB_IN, SOCKET_LB_IN } from '../../src/standards/torque';
import {
  ELECTRICIAN_WAGE,
  markupFromMargin,
  OVERHEAD_SHARE_OF_SALES,
  TOTAL_OVER_WAGES,
} from '../../src/standards/wages';
import * as space from '../../src/standards/workingSpace';
import { readPublished } from './examples/published';

// Figures of the published tables that stand beside their main columns; each test names the file, which names its sources.
// biome-ignore lint/suspicious/noExplicitAny: published JSON of many shapes, read by key and compared whole
type Any = Readonly<Record<string, any>>;

describe('file 02: 310.15, 334.80', () => {
  const t = readPublished<Any>('02_nec_310_15_correction_adjustment.json');
  test('length under which nothing is adjusted', () => {
    expect(UNADJUSTED_LENGTH_IN).toBe(t.rules.bundlingLengthThresholdIn);
    expect(UNADJUSTED_LENGTH_IN).toBe(t.rules.raceway_nippleNotOverIn_noAdjustment);
  });
  test('every factor is what the formula √((Tc − Ta) / (Tc − 30)) gives at the end of its row, to two digits', () => {
    for (const row of t.ambientCorrection as Any[])
      for (const column of [60, 75, 90] as const) {
        const printed = row[`factor_${column}C`];
        const ours = ambientFactor(column, (row.ambientMaxC * 9) / 5 + 32);
        expect(ours).toBe(printed ?? 'beyond the table');
        if (printed !== null)
          expect(Math.abs(Math.sqrt((column - row.ambientMaxC) / (column - 30)) - printed)).toBeLessThan(0.006);
      }
  });
});

test('file 03: small conductors, the next size up, handles', () => {
  const t = readPublished<Any>('03_nec_240_overcurrent.json');
  for (const [size, amps] of Object.entries(t.smallConductorMaxOcpdA.copper))
    expect(smallConductorMost('Cu', size)).toBe(amps);
  for (const [size, amps] of Object.entries(t.smallConductorMaxOcpdA.aluminumOrCopperClad))
    expect(smallConductorMost('Al', size)).toBe(amps);
  expect(smallConductorMost('Cu', '8')).toBeNull();
  expect(NEXT_SIZE_MOST).toBe(t.nextSizeUpRule_240_4_B.allowedUpToA);
  expect(space.HANDLE_MOST_IN).toBe(t.breakerHandleMaxHeightIn_240_24_404_8);
});

test('file 04: what an electrode asks for at most', () => {
  const { gecCaps_250_66_A_B: caps } = readPublished<Any>('04_nec_250_grounding.json');
  expect(gecCap('rod, pipe or plate', 'Cu')).toBe(caps.rodPipePlateOnly.copper);
  expect(gecCap('rod, pipe or plate', 'Al')).toBe(caps.rodPipePlateOnly.aluminum);
  expect(gecCap('concrete-encased', 'Cu')).toBe(caps.concreteEncasedOnly.copper);
});

test('file 06: volumes, allowances, free conductor, pull boxes, cabinet fill', () => {
  const t = readPublished<Any>('06_nec_314_boxes.json');
  for (const [size, in3] of Object.entries(t.volumePerConductorIn3)) expect(conductorVolume(size)).toBe(in3);
  expect(conductorVolume('4')).toBeUndefined();
  const { fillRules: f } = t;
  expect(ALLOWANCES).toMatchObject({
    conductorEndingOrSpliced: f.conductorEnteringAndEndingOrSpliced,
    conductorPassingThrough: f.conductorPassingThrough,
    loopOfTwiceTheFreeLength: f.loopAtLeastTwiceMinFreeLength,
    clampsInside: f.internalClampsTotal.allowances,
    fittingType: f.eachStudOrHickeyType.allowances,
    deviceYoke: f.eachDeviceYoke.allowances,
  });
  expect(GROUND_ALLOWANCE[2023]).toEqual({ group: f.egcFirstGroupCount, beyond: f.egcEachAdditionalAllowance });
  expect(TERMINAL_BLOCK_ALLOWANCE[2023]).toBe(f.terminalBlockAssembly_2023.allowances);
  expect(BARRIER_IN3).toEqual({ metal: f.barrierMetalIn3, nonmetallic: f.barrierNonmetallicIn3 });
  expect(FREE_CONDUCTOR).toMatchObject({
    leastIn: t.freeConductor_300_14.minLengthIn,
    outsideSmallOpeningIn: t.freeConductor_300_14.ifOpeningUnder8In_minOutsideOpeningIn,
  });
  expect(PULL_BOX).toMatchObject({
    appliesFromAwg: t.pullBoxes_314_28.appliesFromAwg,
    straightTimes: t.pullBoxes_314_28.straightPullMultiplier,
    angleOrSpliceTimes: t.pullBoxes_314_28.angleUOrSpliceMultiplier,
    sameConductorTimes: t.pullBoxes_314_28.betweenEntriesSameConductorMultiplier,
  });
  expect(100 * CABINET_FILL.conductorsMost).toBe(t.splicesInPanelEnclosure_312_8.conductorsMaxPercentOfWiringSpace);
  expect(100 * CABINET_FILL.withSplicesMost).toBe(t.splicesInPanelEnclosure_312_8.conductorsPlusSplicesMaxPercent);
});

test('file 07a: how resistance goes with temperature', () => {
  const { temperatureCorrection: law } = readPublished<Any>('07a_nec_ch9_table8_dc_resistance.json');
  expect(RESISTANCE_PER_DEGREE).toEqual({ Cu: law.alphaCopper, Al: law.alphaAluminum });
});

test('file 07b: effective impedance at 0.85, to the digits printed', () => {
  for (const row of readPublished<{ rows: Any[] }>('07b_nec_ch9_table9_ac_impedance.json').rows)
    for (const [raceway, key] of [
      ['PVC', 'pvc'],
      ['aluminum', 'aluminumConduit'],
      ['steel', 'steel'],
    ] as const)
      for (const [metal, name] of [
        ['Cu', 'Copper'],
        ['Al', 'Aluminum'],
      ] as const) {
        const printed = row[`z${name}085pfOhmPerKft_${key}`] as number | null;
        const ours = impedance(metal, row.sizeAwgKcmil, raceway, 0.85);
        // two digits are printed, of R and X as of Z: ours, from the printed R and X, is within one of the last
        if (printed === null) expect(ours).toBe('beyond the table');
        else
          expect(Math.abs(Number(ours) - printed), `${row.sizeAwgKcmil} ${metal} ${raceway}`).toBeLessThanOrEqual(
            10 ** (Math.floor(Math.log10(printed)) - 1) + 1e-9,
          );
      }
});

test('file 08: working space', () => {
  const t = readPublished<Any>('08_nec_110_26_working_space.json');
  for (const row of t.depth_110_26_A_1 as Any[])
    for (const volts of [row.voltsToGroundMin, row.voltsToGroundMax])
      expect(space.depthRow(volts)?.depthIn).toEqual(
        [row.condition1Ft, row.condition2Ft, row.condition3Ft].map((ft) => 12 * ft),
      );
  expect(space.depthRow(1001)).toBeUndefined();
  const d = t.dwelling120_240V;
  expect([space.DWELLING_DEPTH_IN, space.WIDTH_IN, space.HEIGHT_IN, space.DOOR_OPENS_DEGREES]).toEqual([
    d.depthIn,
    d.widthIn,
    d.heightIn,
    d.doorOpeningMinDeg,
  ]);
  expect(space.ASSOCIATED_PROJECTION_IN).toBe(t.height.otherElectricalEquipmentMayProjectIn);
  expect(space.HEADROOM_EXCEPTION_AMPS).toBe(t.height.exceptionExistingDwelling.maxPanelA);
  expect(space.DEDICATED_ABOVE_IN).toBe(12 * t.dedicatedSpace_110_26_E.aboveEquipmentFt);
  expect(space.OPEN_DOOR_WAY[2023]).toMatchObject({
    widthIn: t.openDoors_2023.egressMinWidthIn,
    heightIn: 12 * t.openDoors_2023.egressMinHeightFt,
  });
});

test('file 09a: lumber, the limits of joists and studs, setbacks', () => {
  const t = readPublished<Any>('09a_framing_boring_lumber.json');
  for (const [name, actual] of Object.entries(t.lumberActualIn)) expect(LUMBER[name]).toEqual(actual);
  expect(BORING.joist.edgeIn).toBe(t.joistLimits.holeMinFromEdgeIn);
  expect(BORING.joist.betweenIn).toBe(t.joistLimits.holeMinFromOtherHoleOrNotchIn);
  expect(NO_TENSION_NOTCH_FROM_IN).toBe(t.joistLimits.tensionFaceNotchForbiddenIfNominalThicknessAtLeastIn);
  for (const [name, row] of Object.entries(t.joistComputed) as [string, Any][]) {
    const depth = LUMBER[name]!.depthIn;
    expect(depth * NOTCH_LENGTH_SHARE).toBeCloseTo(row.maxNotchLengthIn, 2);
    for (const [key, band] of Object.entries(row.usableBandForHoleCentreFromBottomIn))
      expect(holeBand(boringLimits('joist', depth)!, depth, Number(key.split('_')[1]))).toEqual(band);
  }
  expect([BORING['bearing stud'].holeShare, BORING['other stud'].holeShare]).toEqual([
    t.studLimits.boreMaxFraction_bearing,
    t.studLimits.boreMaxFraction_nonbearing,
  ]);
  expect([BORING['bearing stud'].notchShare, BORING['other stud'].notchShare]).toEqual([
    t.studLimits.notchMaxFraction_bearing,
    t.studLimits.notchMaxFraction_nonbearing,
  ]);
  expect(BORING['bearing stud'].edgeIn).toBe(t.studLimits.holeMinFromFaceIn);
  expect(NAIL_SETBACK).toMatchObject({
    edgeIn: t.electrical.holeEdgeToWoodEdgeMinIn,
    plateThicknessIn: t.electrical.elseSteelPlateThicknessIn,
  });
  const [two, three] = t.electrical.unfinishedBasementSmallCable.smallerThan;
  expect([`two ${UNDERSIDE.twoConductorsLeastAwg} AWG`, `three ${UNDERSIDE.threeConductorsLeastAwg} AWG`]).toEqual([
    two,
    three,
  ]);
});

test('file 09b: jackets and bends', () => {
  const { nmJacketColours: colors, bending } = readPublished<Any>('09b_cable_dimensions_colours.json');
  for (const size of ['14', '12', '10', '8', '6']) expect(NM_JACKET_COLOR[size]).toBe(colors[size]);
  expect(bendLimit('NM')?.times).toBe(bending.nmMinBendRadiusMultipleOfDiameter);
  expect(bendLimit('SE-R')?.times).toBe(bending.seMinBendRadiusMultipleOfDiameter);
});

test('file 10: staples', () => {
  const { stapleSpacing: s } = readPublished<Any>('10_supply_lengths_connectors_staples.json');
  expect(supportRule('NM')).toMatchObject({ apartIn: 12 * s.maxIntervalFt, fromEntryIn: s.maxFromBoxOrCabinetIn });
  expect(CABLE_TO_SUPPORT_IN[2023]).toBe(s.maxCableLengthEntryToSupportIn_2023);
  expect(FROM_CLAMPLESS_BOX_IN).toBe(s.singleGangNonmetallicBoxWithoutClampIn);
});

test('file 11: figures of the load calculation', () => {
  const t = readPublished<Any>('11_nec_220_load_calculation.json');
  expect(load.UNIT_LOAD[2023]).toBe(t.general.unitLoadVaPerFt2);
  expect([load.APPLIANCE_CIRCUIT_VA, load.APPLIANCE_CIRCUIT_VA]).toEqual([
    t.general.smallApplianceVaEach,
    t.general.laundryVaEach,
  ]);
  expect(load.LIGHTING_DEMAND.map((s) => s.factor)).toEqual(t.lightingDemand_220_45.map((s: Any) => s.factor));
  expect(load.LIGHTING_DEMAND.slice(0, 2).map((s) => s.to)).toEqual(
    t.lightingDemand_220_45.slice(0, 2).map((s: Any) => s.toVA),
  );
  expect([
    fixedShare(t.fixedAppliances_220_53.countAtLeast - 1),
    fixedShare(t.fixedAppliances_220_53.countAtLeast),
  ]).toEqual([1, t.fixedAppliances_220_53.factor]);
  expect(dryerDemand([1])).toBe(t.dryer_220_54.minVA);
  expect(load.COOKING_BANDS).toMatchObject({
    perKw: t.rangeNotes.above12to27kW_increaseColumnC_perKW,
    over: 1000 * t.rangeNotes.minIndividualRatingKW,
  });
  expect(cookingDemand([27_000])).toBeCloseTo(8000 * (1 + 15 * t.rangeNotes.above12to27kW_increaseColumnC_perKW), 6);
  expect(load.EV_LEAST_VA[2023]).toBe(t.evse_220_57.minVA);
  expect(load.NEUTRAL.factor).toBe(t.neutral_220_61.rangeAndDryerFactor);
  const o = t.optional_220_82;
  expect([load.OPTIONAL_FIRST_VA[2023], load.OPTIONAL_REST]).toEqual([1000 * o.firstKVA, o.remainderFactor]);
  const hvac = o.hvacLargestOf;
  expect([optionalHeatShare(3), optionalHeatShare(4), load.OPTIONAL_SUPPLEMENT]).toEqual([
    hvac.electricHeatFewerThan4Controls,
    hvac.electricHeat4OrMoreControls,
    hvac.heatPumpCompressor_plusSupplement.supplement,
  ]);
  const e = t.existing_220_83;
  expect([load.EXISTING_FIRST_VA[2023], load.EXISTING_REST]).toEqual([
    1000 * e.A_noNewHvac.firstKVA,
    e.A_noNewHvac.remainderFactor,
  ]);
  expect(load.MEASURED_FACTOR).toBe(t.measured_220_87.existingDemandFactor);
});

test('file 12: wages, burden, overhead, markup and margin', () => {
  const t = readPublished<Any>('12_labour_rates_markup.json');
  for (const row of t.wagesBLS_electricians_47_2111 as Any[]) {
    const ours = ELECTRICIAN_WAGE.find((w) => row.period.startsWith(w.period));
    if (ours) expect(ours.medianPerHour).toBe(row.medianHourlyUSD);
  }
  expect(TOTAL_OVER_WAGES).toBe(t.burden.ratioTotalToWages);
  for (const size of ['small', 'medium', 'large'] as const)
    expect(100 * OVERHEAD_SHARE_OF_SALES[size]).toBeCloseTo(t.overheadPercentOfSales[size], 9);
  // printed to three figures
  for (const { markup, margin } of t.markupMath.examples as { markup: number; margin: number }[])
    expect(Math.abs(markupFromMargin(margin) - markup)).toBeLessThan(0.0025);
});

test('file 13: torque of small slotted screws and of sockets', () => {
  const t = readPublished<Any>('13_ul486_annex_i_torque.json');
  expect(SMALL_SLOT_LB_IN).toEqual(
    t.tableI2_smallSlottedScrews_upTo8Awg.map((r: Any) => [
      r.slotLengthIn,
      r.slotWidthUnder0_047LbIn,
      r.slotWidth0_047PlusLbIn,
    ]),
  );
  expect(SOCKET_LB_IN).toEqual(
    Object.fromEntries(t.tableI3_internalDrive.map((r: Any) => [r.socketAcrossFlatsIn, r.torqueLbIn])),
  );
});

describe('file 15: conductors that count', () => {
  const t = readPublished<Any>('15_current_carrying_conductor_rules.json');
  test('every circuit', () => {
    // in the order printed; the names are our own
    expect(
      CIRCUIT_CONDUCTORS.map((c) => [c.ungrounded, c.neutralCounts, circuitConductors(c.circuit).carrying]),
    ).toEqual(t.circuits.map((c: Any) => [c.ungrounded, c.neutralCounts, c.currentCarryingConductors]));
  });
  test('every bundle worked out', () => {
    for (const b of t.workedExamples as Any[]) {
      const [, count, size] = /^(\d+) cables (\d+)\/2/.exec(b.bundle)!;
      const cable: Cable = {
        kind: 'NM',
        size: size!,
        metal: 'Cu',
        hots: 1,
        neutral: 'insulated',
        ground: true,
        insulation: 90,
      };
      const row = rowLimit(
        Array.from({ length: Number(count) }, () => ({ cable, amps: 15 })),
        { togetherIn: 60, spaced: false, sealed: false, insulated: false, bundling: 'strict', nextSizeInRows: false },
        2023,
      );
      expect(row).toMatchObject({ conductors: b.ccc, factor: b.factor });
      const answer = calcAmpacity({
        edition: 2023,
        metal: 'Cu',
        awg: size!,
        startColumn: 90,
        terminals: 75,
        limitColumn: 60,
        conductors: row.conductors,
        ambientF: 86,
        togetherIn: 60,
        inRaceway: false,
        breakerAmps: b.maxOcpdA,
      });
      expect(answer.ok && answer.value).toMatchObject({
        outcome: 'holds',
        figures: { base: b.startA_90C, corrected: b.resultA, usable: Math.min(b.resultA, b.cap60C_A) },
      });
    }
  });
});
