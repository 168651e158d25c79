import { cableName } from '../../job/names';
import { byId } from '../../units/order';
import { isKnown } from '../../units/types';
import { circuitWords as say } from '../../words/en/rulesCircuit';
import { homeRunById, isExtended, pathTo, runOf } from '../reading';
import { cannotBeTold, doesNotApply, type Rule } from '../rule';

/** An old cable without an EGC that is lengthened: where its ground may connect is for the inspector. */
export const ungrounded: Rule = {
  id: 'UNGROUNDED',
  subjects: ({ job }) => byId(job.homeRuns).map((h) => h.id),
  check: (facts, subject) => {
    const run = runOf(facts, subject);
    const { cable } = homeRunById(facts.job, subject);
    if (!run || !isExtended(run) || cable.ground === true) return doesNotApply();
    const v = { cable: cableName(facts.job, subject) };
    return isKnown(cable.ground)
      ? cannotBeTold(say.ungrounded(v), say.ungroundedLook(), [])
      : cannotBeTold(say.ungroundedUnknown(v), say.ungroundedLook(), [
          pathTo(facts.job, 'homeRuns', subject, 'cable', 'ground'),
        ]);
  },
};
