import { circuitWords as say } from '../../words/en/rulesCircuit';
import { circuitById } from '../reading';
import { cannotBeTold, doesNotApply, type Rule } from '../rule';
import { liveCircuits } from './circuitReading';

/** An outlet added by this job: its place, which the survey does not hold, decides on GFCI protection. */
export const gfciNew: Rule = {
  id: 'GFCI-NEW',
  subjects: liveCircuits,
  check: ({ job }, subject) => {
    const circuit = circuitById(job, subject);
    return circuit.addsOutlet
      ? cannotBeTold(say.gfciNew({ label: circuit.label }), say.gfciNewLook(), [])
      : doesNotApply();
  },
};
