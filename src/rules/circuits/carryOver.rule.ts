import { isKnown } from '../../units/types';
import { circuitWords as say } from '../../words/en/rulesCircuit';
import { cablesOf, circuitById, pathTo, runOf } from '../reading';
import { cannotBeTold, doesNotApply, extraWork, type Rule } from '../rule';
import { liveCircuits } from './circuitReading';

/** Protection a circuit has is provided again: breakers are listed by panel, so the old ones do not move over. The breaker is in the plan. */
export const carryOver: Rule = {
  id: 'CARRY-OVER',
  subjects: liveCircuits,
  check: (facts, subject) => {
    const circuit = circuitById(facts.job, subject);
    const { label, protection } = circuit;
    const moves = cablesOf(facts.job, subject).some((h) => runOf(facts, h.id)?.way !== 'stays on old panel');
    if (!moves || protection === 'none') return doesNotApply();
    if (!isKnown(protection))
      return cannotBeTold(say.carryUnknown({ label }), say.carryLook(), [
        pathTo(facts.job, 'circuits', subject, 'protection'),
      ]);
    return extraWork(say.carryOver({ label, protection }));
  },
};
