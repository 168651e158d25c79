import {
  APPLIANCE_CIRCUIT_RULE,
  APPLIANCE_CIRCUIT_VA,
  COOKING_RULE,
  COOLING_COMPARED_AT,
  DRYER_LEAST_VA,
  DRYER_RULE,
  EV_LEAST_VA,
  EV_RULE,
  EXISTING_FIRST_VA,
  EXISTING_HVAC,
  EXISTING_REST,
  EXISTING_RULE,
  FIXED_RULE,
  LIGHTING_DEMAND,
  LIGHTING_DEMAND_RULE,
  MEASURED_FACTOR,
  MEASURED_RULE,
  MOTOR_EXTRA,
  MOTOR_RULE,
  NONCOINCIDENT_RULE,
  OPTIONAL_FIRST_VA,
  OPTIONAL_REST,
  OPTIONAL_RULE,
  OPTIONAL_SUPPLEMENT,
  SUM_RULE,
  UNIT_LOAD,
  UNIT_LOAD_RULE,
  WHOLE_DWELLING_EV,
} from '../standards/loadDemand';
import { type ByEdition, cited, type Source } from '../standards/source';
import { loadCalcWords as say } from '../words/en/calcLoad';
import {
  bySteps,
  evLoad,
  fixedDemand,
  fixedShare,
  generalLoad,
  hvacDemand,
  lightingDemand,
  optionalHeatShare,
  partsOf,
  sum,
} from './loadParts';
import { tidy } from './refuse';
import type { CalcInput, Worked } from './types';

type Input = CalcInput['load'];
type Step = Worked['steps'][number];
/** What the load is the sum of, and the steps that lead there. */
export interface Total {
  readonly parts: readonly number[];
  /** What goes under one demand in the whole-dwelling methods, VA at nameplates. */
  readonly generalVA?: number;
  readonly steps: readonly Step[];
}
/** Cooking and dryers after their tables, VA. */
export interface Demand {
  readonly cooking: number;
  readonly dryers: number;
}

export const loadStep = (sentence: string, va: number, rule: ByEdition<Source>, input: Input): Step => ({
  say: sentence,
  value: tidy(va),
  unit: 'VA',
  section: cited(rule[input.edition]),
});
export const cookingOf = (input: Input): number[] => [...input.rangeVA, ...input.ovenVA, ...input.cooktopVA];
const circuitsOf = (input: Input): number => input.smallAppliance + input.laundry;
export const generalOf = (input: Input): number => generalLoad(input.areaFt2, circuitsOf(input), input.edition);
/** A worked example has no line for what is not there. */
const given = (steps: readonly Step[]): Step[] => steps.filter((s) => s.value !== 0);
const values = (steps: readonly Step[]): number[] => steps.map((s) => Number(s.value));

const lightingSteps = (input: Input): Step[] => {
  const { areaFt2, edition, smallAppliance: small, laundry } = input;
  const each = APPLIANCE_CIRCUIT_VA;
  return [
    loadStep(
      say.lighting({ areaFt2, each: UNIT_LOAD[edition] }),
      generalLoad(areaFt2, 0, edition),
      UNIT_LOAD_RULE,
      input,
    ),
    loadStep(
      say.applianceCircuits({ small, laundry, each }),
      generalLoad(0, circuitsOf(input), edition),
      APPLIANCE_CIRCUIT_RULE,
      input,
    ),
  ];
};
const evStep = (input: Input): Step =>
  loadStep(
    say.ev({ va: input.evVA, least: EV_LEAST_VA[input.edition] }),
    evLoad(input.evVA, input.edition),
    EV_RULE,
    input,
  );

/** Part III: for any feeder, and the only one of the calculated methods for a panel with part of the house. */
export const standard = (input: Input, demand: Demand): Total => {
  const { edition, heatVA, coolVA, fixedVA, largestMotorVA, supplementVA = 0 } = input;
  const general = generalOf(input);
  const hvac = hvacDemand(heatVA, coolVA, edition);
  const compared = hvac > Math.max(heatVA, coolVA);
  const hvacSay = compared
    ? say.hvacCompared({ heatVA, coolVA, share: COOLING_COMPARED_AT[edition] })
    : say.hvac({ heatVA, coolVA });
  const lighting = loadStep(
    say.lightingDemand({ va: general, steps: partsOf(general, LIGHTING_DEMAND) }),
    lightingDemand(general),
    LIGHTING_DEMAND_RULE,
    input,
  );
  const fixed = loadStep(
    say.fixedDemand({ count: fixedVA.length, share: fixedShare(fixedVA.length) }),
    fixedDemand(fixedVA),
    FIXED_RULE,
    input,
  );
  const others = given([
    loadStep(say.dryers({ list: input.dryerVA, least: DRYER_LEAST_VA }), demand.dryers, DRYER_RULE, input),
    loadStep(say.cooking({ list: cookingOf(input) }), demand.cooking, COOKING_RULE, input),
    loadStep(hvacSay, hvac, NONCOINCIDENT_RULE, input),
    loadStep(say.supplement, supplementVA, SUM_RULE, input),
    loadStep(say.motor({ va: largestMotorVA }), MOTOR_EXTRA * largestMotorVA, MOTOR_RULE, input),
    evStep(input),
    loadStep(say.other, input.otherVA, SUM_RULE, input),
  ]);
  const connected = loadStep(say.fixed({ list: fixedVA }), sum(fixedVA), FIXED_RULE, input);
  const summed = given([lighting, fixed, ...others]);
  return {
    parts: values(summed),
    steps: given([...lightingSteps(input), lighting, connected, fixed, ...others]),
  };
};

/** Everything that goes under one demand in the whole-dwelling methods, at its nameplate. */
const pileOf = (input: Input, rule: ByEdition<Source>) => {
  const inPile = WHOLE_DWELLING_EV[input.edition] === 'in the pile';
  const steps = given([
    ...lightingSteps(input).map((s) => ({ ...s, section: cited(rule[input.edition]) })),
    loadStep(say.fixed({ list: input.fixedVA }), sum(input.fixedVA), rule, input),
    loadStep(say.cookingNameplate({ list: cookingOf(input) }), sum(cookingOf(input)), rule, input),
    loadStep(say.dryerNameplate({ list: input.dryerVA }), sum(input.dryerVA), rule, input),
    loadStep(say.other, input.otherVA, rule, input),
    ...(inPile ? [evStep(input)] : []),
  ]);
  return { va: sum(values(steps)), steps };
};
const evBeside = (input: Input): Step[] =>
  WHOLE_DWELLING_EV[input.edition] === 'at 100 %' ? given([evStep(input)]) : [];
const underDemand = (va: number, first: number, rest: number): number =>
  bySteps(va, [
    { to: first, factor: 1 },
    { to: Number.POSITIVE_INFINITY, factor: rest },
  ]);

/** The larger of cooling, heating at its share, and a heat pump with its supplement, 220.82(C). */
const optionalHvac = (input: Input): Step => {
  const { heatVA, coolVA, supplementVA = 0, heatUnits: units = 1 } = input;
  if (supplementVA > 0) {
    const pump = heatVA + OPTIONAL_SUPPLEMENT * supplementVA;
    const words = say.optionalPump({ pumpVA: heatVA, supplementVA, share: OPTIONAL_SUPPLEMENT });
    if (pump >= coolVA) return loadStep(words, pump, OPTIONAL_RULE, input);
  }
  const share = optionalHeatShare(units);
  const words = say.optionalHvac({ heatVA, coolVA, share, units });
  return loadStep(words, Math.max(coolVA, share * heatVA), OPTIONAL_RULE, input);
};

export const optional = (input: Input): Total => {
  const first = OPTIONAL_FIRST_VA[input.edition];
  const pile = pileOf(input, OPTIONAL_RULE);
  const demand = underDemand(pile.va, first, OPTIONAL_REST);
  const added = given([
    loadStep(say.pileDemand({ first, va: pile.va }), demand, OPTIONAL_RULE, input),
    optionalHvac(input),
    ...evBeside(input),
  ]);
  return {
    parts: values(added),
    generalVA: pile.va,
    steps: [...pile.steps, loadStep(say.pile, pile.va, OPTIONAL_RULE, input), ...added],
  };
};

export const existing = (input: Input): Total => {
  const { heatVA, coolVA, edition, supplementVA = 0 } = input;
  const first = EXISTING_FIRST_VA[edition];
  const pile = pileOf(input, EXISTING_RULE);
  const hvac = Math.max(heatVA + supplementVA, coolVA);
  const beside = input.newHvac || EXISTING_HVAC[edition] === 'at 100 %';
  const general = pile.va + (beside ? 0 : hvac);
  const climate = { heatVA: heatVA + supplementVA, coolVA };
  const added = given([
    loadStep(say.pileDemand({ first, va: general }), underDemand(general, first, EXISTING_REST), EXISTING_RULE, input),
    ...(beside ? [loadStep(say.newHvac(climate), hvac, EXISTING_RULE, input)] : []),
    ...evBeside(input),
  ]);
  const within = beside ? [] : given([loadStep(say.hvac(climate), hvac, EXISTING_RULE, input)]);
  return {
    parts: values(added),
    generalVA: general,
    steps: [...pile.steps, ...within, loadStep(say.pile, general, EXISTING_RULE, input), ...added],
  };
};

/** Recorded demand at 125 % and what is to be added: electric vehicle supply, other loads and, where new, heating or cooling. */
export const measured = (input: Input, peakVA: number): Total => {
  const hvac = Math.max(input.heatVA + (input.supplementVA ?? 0), input.coolVA);
  const added = evLoad(input.evVA, input.edition) + input.otherVA + (input.newHvac ? hvac : 0);
  const parts = given([
    loadStep(say.peakDemand({ va: peakVA }), MEASURED_FACTOR * peakVA, MEASURED_RULE, input),
    loadStep(say.newLoad, added, MEASURED_RULE, input),
  ]);
  return { parts: values(parts), steps: [loadStep(say.peak, peakVA, MEASURED_RULE, input), ...parts] };
};
