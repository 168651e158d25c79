import { FULL_NEUTRAL_KINDS } from '../../standards/editionsFeeder';
import { isKnown } from '../../units/types';
import { serviceWords as say } from '../../words/en/rulesService';
import { rolePaths } from '../panel/serviceReading';
import { cannotBeTold, doesNotApply, holds, type Rule } from '../rule';
import { feederApplies, feederCables, theFeeder } from './feederReading';

/** The feeder's neutral carries the largest unbalance: one as large as the hots always does. A bare or missing one is FDR-4W's. */
export const fdrNeutral: Rule = {
  id: 'FDR-N',
  subjects: theFeeder,
  check: (facts) => {
    const applies = feederApplies(facts);
    if (applies === false) return doesNotApply();
    const untold = (waits: readonly string[]) => cannotBeTold(say.neutralUnknown(), say.neutralLook(), waits);
    if (!isKnown(applies)) return untold(rolePaths(facts));
    const cables = feederCables(facts);
    if (cables.some((cable) => cable.neutral === 'bare' || cable.neutral === 'none')) return doesNotApply();
    const waits = (['kind', 'neutral'] as const).filter((key) => cables.some((cable) => !isKnown(cable[key])));
    if (waits.length > 0) return untold(waits.map((key) => `/feeder/cable/${key}`));
    return cables.every(({ kind }) => isKnown(kind) && FULL_NEUTRAL_KINDS.includes(kind))
      ? holds(say.neutralFull())
      : untold([]);
  },
};
