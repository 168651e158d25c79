import { NOT_TO_BEND } from '../../standards/editionsCables';
import { cableWords as say } from '../../words/en/rulesCables';
import { homeRunById, runOf } from '../reading';
import { doesNotApply, holds, type Rule, stops } from '../rule';
import { homeRunIds } from './cableReading';

/** A cable drawn back is bent again: brittle, cloth-covered or damaged cable is not. */
export const cableBend: Rule = {
  id: 'CABLE-BEND',
  subjects: homeRunIds,
  check: (facts, subject) => {
    if (runOf(facts, subject)?.way !== 'reuse') return doesNotApply();
    const bad = homeRunById(facts.job, subject).condition.filter((c) => NOT_TO_BEND.includes(c));
    return bad.length === 0
      ? holds(say.bendHolds())
      : stops(say.bendFails({ condition: [...bad].sort().join(', ') }), {
          remedies: [{ say: say.bendRemedy(), cents: null, work: [] }],
        });
  },
};
