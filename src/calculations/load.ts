import { COOKING_RULE, DRYER_RULE, NEUTRAL, NEUTRAL_RULE, SUM_RULE, SYSTEM_VOLTS } from '../standards/loadDemand';
import { BEYOND, cited } from '../standards/source';
import type { Fault } from '../units/fault';
import { ok, type Result } from '../units/result';
import { loadCalcWords as say } from '../words/en/calcLoad';
import { cookingOf, existing, generalOf, loadStep, measured, optional, standard } from './loadMethods';
import { cookingDemand, dryerDemand, fixedShare, lightingDemand, neutralLoad, sum } from './loadParts';
import { refuse, tidy } from './refuse';
import type { CalcInput, CalcOutput } from './types';

type Input = CalcInput['load'];

/** Lighting, appliances with a neutral and other loads after demand, VA (220.61(A)). */
const lineToNeutral = (input: Input): number => {
  const fixed = Math.max(0, sum(input.fixedVA) - (input.fixedNoNeutralVA ?? 0));
  return lightingDemand(generalOf(input)) + fixed * fixedShare(input.fixedVA.length) + input.otherVA;
};

/**
 * `load`: figures va, amps (at 240 V, not rounded), neutralVA, and generalVA where a method puts all under one demand. Whole-dwelling methods are refused for a panel with part
 * of the house. Fixed appliances count on the neutral unless said to have none: never too little.
 */
export const calcLoad = (input: Input): Result<CalcOutput, Fault> => {
  const { method, peakVA, edition } = input;
  if ((method === 'optional' || method === 'existing') && !input.wholeDwelling)
    return refuse('method-not-allowed', '/wholeDwelling', say.wholeDwellingOnly);
  if (method === 'measured' && peakVA === null) return refuse('missing-value', '/peakVA', say.peakNeeded);
  const appliances = cookingOf(input);
  const cooking = cookingDemand(appliances);
  if (cooking === BEYOND) {
    const what = say.cookingList({ list: appliances });
    return refuse('beyond-table', '/rangeVA', say.notInTable({ what, table: COOKING_RULE[edition].section }));
  }
  const dryers = dryerDemand(input.dryerVA);
  if (dryers === BEYOND) {
    const what = say.dryerCount({ count: input.dryerVA.length });
    return refuse('beyond-table', '/dryerVA', say.notInTable({ what, table: DRYER_RULE[edition].section }));
  }
  const total =
    method === 'standard'
      ? standard(input, { cooking, dryers })
      : method === 'optional'
        ? optional(input)
        : method === 'existing'
          ? existing(input)
          : measured(input, peakVA ?? 0);
  const va = tidy(sum(total.parts));
  const amps = tidy(va / SYSTEM_VOLTS);
  const lineToNeutralVA = lineToNeutral(input);
  const neutralVA = method === 'measured' ? va : tidy(neutralLoad(lineToNeutralVA, cooking + dryers));
  const over = lineToNeutralVA + NEUTRAL.factor * (cooking + dryers) > NEUTRAL.overAmps * SYSTEM_VOLTS;
  const neutralSay =
    method === 'measured'
      ? say.neutralMeasured
      : say.neutral({ lineToNeutralVA, cookingAndDryersVA: cooking + dryers, over });
  return ok({
    outcome: 'value',
    figures: { va, amps, neutralVA, ...(total.generalVA !== undefined && { generalVA: total.generalVA }) },
    worked: {
      id: 'load',
      value: va,
      unit: 'VA',
      steps: [
        ...total.steps,
        loadStep(say.total({ parts: total.parts }), va, SUM_RULE, input),
        {
          say: say.totalAmps({ va, volts: SYSTEM_VOLTS }),
          value: amps,
          unit: 'A',
          section: cited(SUM_RULE[edition]),
        },
        loadStep(neutralSay, neutralVA, NEUTRAL_RULE, input),
      ],
    },
  });
};
