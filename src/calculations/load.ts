import {
  APPLIANCE_CIRCUIT_RULE,
  COOKING_RULE,
  DRYER_RULE,
  EV_RULE,
  EXISTING_FIRST_VA,
  EXISTING_HVAC,
  EXISTING_REST,
  EXISTING_RULE,
  FIXED_RULE,
  LIGHTING_DEMAND_RULE,
  MEASURED_FACTOR,
  MEASURED_RULE,
  MOTOR_EXTRA,
  MOTOR_RULE,
  NEUTRAL_RULE,
  NONCOINCIDENT_RULE,
  OPTIONAL_FIRST_VA,
  OPTIONAL_HEAT,
  OPTIONAL_REST,
  OPTIONAL_RULE,
  SYSTEM_VOLTS,
  UNIT_LOAD_RULE,
  WHOLE_DWELLING_EV,
} from '../standards/loadDemand';
import { BEYOND, type ByEdition, type Source } from '../standards/source';
import type { Fault } from '../units/fault';
import { ok, type Result } from '../units/result';
import { electricalWords as say } from '../words/en/calcElectrical';
import type { Steps } from './carrying';
import {
  bySteps,
  cookingDemand,
  dryerDemand,
  evLoad,
  fixedDemand,
  generalLoad,
  hvacDemand,
  lightingDemand,
  neutralLoad,
  sum,
} from './loadParts';
import { refuse, tidy } from './refuse';
import type { CalcInput, CalcOutput } from './types';

type Input = CalcInput['load'];
type Total = { readonly va: number; readonly steps: Steps };
type Demand = { readonly cooking: number; readonly dryers: number };

const step = (sentence: string, va: number, rule: ByEdition<Source>, input: Input): Steps[number] => ({
  say: sentence,
  value: tidy(va),
  unit: 'VA',
  section: rule[input.edition].section,
});
const cookingOf = (input: Input): number[] => [...input.rangeVA, ...input.ovenVA, ...input.cooktopVA];
const generalOf = (input: Input): number =>
  generalLoad(input.areaFt2, input.smallAppliance + input.laundry, input.edition);

/** Part III: for any feeder, and the only one of the calculated methods for a panel with part of the house. */
const standard = (input: Input, demand: Demand): Total => {
  const { edition, heatVA, coolVA } = input;
  const general = generalOf(input);
  const circuits = generalLoad(0, input.smallAppliance + input.laundry, edition);
  const hvac = hvacDemand(heatVA, coolVA, edition);
  const compared = hvac > Math.max(heatVA, coolVA);
  const parts: Steps[number][] = [
    step(say.lightingDemand, lightingDemand(general), LIGHTING_DEMAND_RULE, input),
    step(say.fixedDemand, fixedDemand(input.fixedVA), FIXED_RULE, input),
    step(say.dryers, demand.dryers, DRYER_RULE, input),
    step(say.cooking, demand.cooking, COOKING_RULE, input),
    step(compared ? say.hvacCompared : say.hvac, hvac, NONCOINCIDENT_RULE, input),
    step(say.motor, MOTOR_EXTRA * input.largestMotorVA, MOTOR_RULE, input),
    step(say.ev, evLoad(input.evVA, edition), EV_RULE, input),
    step(say.other, input.otherVA, UNIT_LOAD_RULE, input),
  ];
  const connected = [
    step(say.lighting, general - circuits, UNIT_LOAD_RULE, input),
    step(say.applianceCircuits, circuits, APPLIANCE_CIRCUIT_RULE, input),
    step(say.fixed, sum(input.fixedVA), FIXED_RULE, input),
  ];
  return { va: sum(parts.map((p) => Number(p.value))), steps: [...connected, ...parts] };
};

/** Everything that goes under one demand in the whole-dwelling methods, at its nameplate. */
const pileOf = (input: Input, rule: ByEdition<Source>): Total => {
  const ev = WHOLE_DWELLING_EV[input.edition] === 'in the pile' ? evLoad(input.evVA, input.edition) : 0;
  const steps = [
    step(say.lighting, generalOf(input), rule, input),
    step(say.fixed, sum(input.fixedVA), rule, input),
    step(say.cookingNameplate, sum(cookingOf(input)), rule, input),
    step(say.dryerNameplate, sum(input.dryerVA), rule, input),
    step(say.other, input.otherVA, rule, input),
    ...(ev > 0 ? [step(say.ev, ev, EV_RULE, input)] : []),
  ];
  return { va: sum(steps.map((p) => Number(p.value))), steps };
};
const evBeside = (input: Input): Steps => {
  const ev = WHOLE_DWELLING_EV[input.edition] === 'at 100 %' ? evLoad(input.evVA, input.edition) : 0;
  return ev > 0 ? [step(say.ev, ev, EV_RULE, input)] : [];
};
const underDemand = (va: number, first: number, rest: number): number =>
  bySteps(va, [
    { to: first, factor: 1 },
    { to: Number.POSITIVE_INFINITY, factor: rest },
  ]);

const optional = (input: Input): Total => {
  const first = OPTIONAL_FIRST_VA[input.edition];
  const pile = pileOf(input, OPTIONAL_RULE);
  const added = [
    step(say.pileDemand({ first }), underDemand(pile.va, first, OPTIONAL_REST), OPTIONAL_RULE, input),
    step(say.optionalHvac, Math.max(input.coolVA, OPTIONAL_HEAT * input.heatVA), OPTIONAL_RULE, input),
    ...evBeside(input),
  ];
  const steps = [...pile.steps, step(say.pile, pile.va, OPTIONAL_RULE, input), ...added];
  return { va: sum(added.map((p) => Number(p.value))), steps };
};

const existing = (input: Input): Total => {
  const first = EXISTING_FIRST_VA[input.edition];
  const pile = pileOf(input, EXISTING_RULE);
  const hvac = Math.max(input.heatVA, input.coolVA);
  const beside = input.newHvac || EXISTING_HVAC[input.edition] === 'at 100 %';
  const general = pile.va + (beside ? 0 : hvac);
  const added = [
    step(say.pileDemand({ first }), underDemand(general, first, EXISTING_REST), EXISTING_RULE, input),
    ...(beside ? [step(say.newHvac, hvac, EXISTING_RULE, input)] : []),
    ...evBeside(input),
  ];
  const within = beside ? [] : [step(say.hvac, hvac, EXISTING_RULE, input)];
  const steps = [...pile.steps, ...within, step(say.pile, general, EXISTING_RULE, input), ...added];
  return { va: sum(added.map((p) => Number(p.value))), steps };
};

/** Recorded demand at 125 % and what is to be added: electric vehicle supply, other loads and, where new, heating or cooling. */
const measured = (input: Input, peakVA: number): Total => {
  const added =
    evLoad(input.evVA, input.edition) + input.otherVA + (input.newHvac ? Math.max(input.heatVA, input.coolVA) : 0);
  const parts = [
    step(say.peakDemand, MEASURED_FACTOR * peakVA, MEASURED_RULE, input),
    step(say.newLoad, added, MEASURED_RULE, input),
  ];
  const steps = [step(say.peak, peakVA, MEASURED_RULE, input), ...parts];
  return { va: sum(parts.map((p) => Number(p.value))), steps };
};

/**
 * `load`: figures va, amps (at 240 V, not rounded), neutralVA. Whole-dwelling methods are refused for a panel with part
 * of the house. Appliances count on the neutral whatever their voltage, which the input does not say: never too little.
 */
export const calcLoad = (input: Input): Result<CalcOutput, Fault> => {
  const { method, peakVA } = input;
  if ((method === 'optional' || method === 'existing') && !input.wholeDwelling)
    return refuse('method-not-allowed', '/wholeDwelling', say.wholeDwellingOnly);
  if (method === 'measured' && peakVA === null) return refuse('missing-value', '/peakVA', say.peakNeeded);
  const cooking = cookingDemand(cookingOf(input));
  const table = COOKING_RULE[input.edition].section;
  if (cooking === BEYOND)
    return refuse(
      'beyond-table',
      '/rangeVA',
      say.notInTable({ what: `Cooking of ${cookingOf(input).join(', ')} VA`, table }),
    );
  const dryers = dryerDemand(input.dryerVA);
  if (dryers === BEYOND) {
    const what = `${input.dryerVA.length} dryers`;
    return refuse('beyond-table', '/dryerVA', say.notInTable({ what, table: DRYER_RULE[input.edition].section }));
  }
  const total =
    method === 'standard'
      ? standard(input, { cooking, dryers })
      : method === 'optional'
        ? optional(input)
        : method === 'existing'
          ? existing(input)
          : measured(input, peakVA ?? 0);
  const va = tidy(total.va);
  const amps = tidy(va / SYSTEM_VOLTS);
  const lineToNeutral = lightingDemand(generalOf(input)) + fixedDemand(input.fixedVA) + input.otherVA;
  const neutralVA = method === 'measured' ? va : tidy(neutralLoad(lineToNeutral, cooking + dryers));
  return ok({
    outcome: 'value',
    figures: { va, amps, neutralVA },
    worked: {
      id: 'load',
      value: va,
      unit: 'VA',
      steps: [
        ...total.steps,
        step(say.total, va, NONCOINCIDENT_RULE, input),
        { say: say.totalAmps, value: amps, unit: 'A', section: NONCOINCIDENT_RULE[input.edition].section },
        step(method === 'measured' ? say.neutralMeasured : say.neutral, neutralVA, NEUTRAL_RULE, input),
      ],
    },
  });
};
