import { canRunOnUndersides } from '../../calculations/supports';
import { cableName } from '../../standards/cableNames';
import { isKnown } from '../../units/types';
import { cableWords as say } from '../../words/en/rulesCables';
import { cablePaths, laidCable } from '../reading';
import { cannotBeTold, doesNotApply, holds, type Rule, stops } from '../rule';
import { homeRunIds, laid } from './cableReading';

/** Cable across the undersides of joists in an unfinished basement: only where it is stout enough, or armored. */
export const nmJoist: Rule = {
  id: 'NM-JOIST',
  subjects: homeRunIds,
  check: (facts, subject) => {
    const found = laid(facts, subject);
    if (!found?.legs.some((leg) => leg.by === 'joist underside')) return doesNotApply();
    const cable = laidCable(facts.job, found.run);
    const may = canRunOnUndersides(cable);
    if (!isKnown(may))
      return cannotBeTold(
        say.undersideUnknown(),
        say.undersideLook(),
        cablePaths(facts.job, subject, cable, ['kind', 'size', 'hots', 'neutral']),
      );
    return may
      ? holds(say.undersideHolds({ cable: cableName(cable) }))
      : stops(say.undersideFails({ cable: cableName(cable) }), {
          remedies: [{ say: say.undersideRemedy(), cents: null, work: [] }],
        });
  },
};
