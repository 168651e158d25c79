import {
  APPLIANCE_CIRCUIT_VA,
  COOKING,
  COOKING_BANDS,
  COOLING_COMPARED_AT,
  DRYER_DEMAND,
  DRYER_LEAST_VA,
  EV_LEAST_VA,
  FIXED_DEMAND,
  LIGHTING_DEMAND,
  NEUTRAL,
  OPTIONAL_HEAT,
  type Step,
  SYSTEM_VOLTS,
  UNIT_LOAD,
} from '../standards/loadDemand';
import { BEYOND, type Looked } from '../standards/source';
import type { Edition } from '../units/types';

export const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);

/** A load taken by steps: the part within each step at its factor, VA. */
export const bySteps = (va: number, steps: readonly Step[]): number => {
  let from = 0;
  let demand = 0;
  for (const step of steps) {
    demand += Math.max(0, Math.min(va, step.to) - from) * step.factor;
    from = step.to;
  }
  return demand;
};

/** The parts of a load that fall into each step, VA, without the empty ones. */
export const partsOf = (va: number, steps: readonly Step[]): { va: number; factor: number }[] =>
  steps.flatMap((step, i) => {
    const part = Math.min(va, step.to) - (steps[i - 1]?.to ?? 0);
    return part > 0 ? [{ va: part, factor: step.factor }] : [];
  });

/** General lighting and the small-appliance and laundry circuits, VA connected (220.41, 220.52; before 2023 220.12, 220.14(J)). */
export const generalLoad = (areaFt2: number, circuits: number, edition: Edition): number =>
  areaFt2 * UNIT_LOAD[edition] + circuits * APPLIANCE_CIRCUIT_VA;

/** The same after demand: 3000 VA at 100 %, to 120,000 at 35 %, the rest at 25 % (220.45; before 2023 220.42). */
export const lightingDemand = (va: number): number => bySteps(va, LIGHTING_DEMAND);

/** Share of appliances fastened in place: four or more at 75 % (220.53). */
export const fixedShare = (count: number): number => (count >= FIXED_DEMAND.from ? FIXED_DEMAND.factor : 1);
export const fixedDemand = (fixedVA: readonly number[]): number => sum(fixedVA) * fixedShare(fixedVA.length);

/** Dryers: 5000 VA or the nameplate each, then by their number (220.54). */
export const dryerDemand = (dryerVA: readonly number[]): Looked<number> => {
  const row = DRYER_DEMAND.find((r) => dryerVA.length <= r.to);
  return row ? sum(dryerVA.map((va) => Math.max(DRYER_LEAST_VA, va))) * row.factor : BEYOND;
};

/** Column C: so many appliances; each kW (or larger part of one) of their mean above 12 adds 5 %, smaller ones taken as 12 (notes 1 and 2). */
const columnC = (appliances: readonly number[]): Looked<number> => {
  if (appliances.length === 0) return 0;
  const row = COOKING[appliances.length - 1];
  if (!row || Math.max(...appliances) > COOKING_BANDS.most) return BEYOND;
  const mean = sum(appliances.map((va) => Math.max(COOKING_BANDS.cTo, va))) / appliances.length;
  const overKw = Math.floor((mean - COOKING_BANDS.cTo) / 1000 + 0.5);
  return row.c * (1 + COOKING_BANDS.perKw * overKw);
};
const share = (appliances: readonly number[], column: 'a' | 'b'): Looked<number> => {
  if (appliances.length === 0) return 0;
  const row = COOKING[appliances.length - 1];
  return row ? sum(appliances) * row[column] : BEYOND;
};

/**
 * Household cooking by Table 220.55: column C for all, or (note 3, permitted instead) columns A and B for those of not
 * more than 8.75 kW beside column C for the rest; the lesser. Up to 1.75 kW the table does not speak: nameplate.
 */
export const cookingDemand = (appliances: readonly number[]): Looked<number> => {
  const inTable = appliances.filter((va) => va > COOKING_BANDS.over);
  const small = sum(appliances) - sum(inTable);
  const all = columnC(inTable);
  const parts = [
    share(
      inTable.filter((va) => va < COOKING_BANDS.bFrom),
      'a',
    ),
    share(
      inTable.filter((va) => va >= COOKING_BANDS.bFrom && va <= COOKING_BANDS.bTo),
      'b',
    ),
    columnC(inTable.filter((va) => va > COOKING_BANDS.bTo)),
  ];
  const known = parts.filter((p) => p !== BEYOND);
  const split = known.length === parts.length ? sum(known) : BEYOND;
  if (all === BEYOND) return split === BEYOND ? BEYOND : split + small;
  return small + (split === BEYOND ? all : Math.min(all, split));
};

/** Heating or cooling, never both (220.60); from 2023 cooling that is the smaller is compared at 125 %. */
export const hvacDemand = (heatVA: number, coolVA: number, edition: Edition): number =>
  coolVA >= heatVA ? coolVA : Math.max(heatVA, coolVA * COOLING_COMPARED_AT[edition]);

/** Heating in the optional method, VA: 65 %, with four or more separately controlled units 40 % (220.82(C)). */
export const optionalHeatShare = (units: number): number =>
  units >= OPTIONAL_HEAT.manyFrom ? OPTIONAL_HEAT.manyUnits : OPTIONAL_HEAT.fewUnits;

/** Electric vehicle supply: nameplate, from 2023 not less than 7200 VA (220.57). */
export const evLoad = (evVA: number, edition: Edition): number => (evVA > 0 ? Math.max(evVA, EV_LEAST_VA[edition]) : 0);

/** Neutral load, VA (220.61): cooking and dryers at 70 %, then the part above 200 A at 70 %. */
export const neutralLoad = (lineToNeutralVA: number, cookingAndDryersVA: number): number => {
  const va = lineToNeutralVA + NEUTRAL.factor * cookingAndDryersVA;
  const knee = NEUTRAL.overAmps * SYSTEM_VOLTS;
  return Math.min(va, knee) + NEUTRAL.factor * Math.max(0, va - knee);
};
