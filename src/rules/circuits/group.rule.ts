import { circuitWords as say } from '../../words/en/rulesCircuit';
import { cablesOf, circuitById } from '../reading';
import { doesNotApply, extraWork, type Rule } from '../rule';
import { liveCircuits } from './circuitReading';

/** All conductors of a circuit run together: a neutral borrowed from another circuit is found and put right before anything is landed. */
export const group: Rule = {
  id: 'GROUP',
  subjects: liveCircuits,
  check: ({ job }, subject) => {
    const circuit = circuitById(job, subject);
    if (!circuit.flags.includes('borrowed neutral')) return doesNotApply();
    const homeRuns = cablesOf(job, subject).map((h) => h.id);
    return extraWork(say.groupBorrowed({ label: circuit.label }), {
      cure: [{ item: 'trace', quantity: 1, homeRuns, rule: 'GROUP', alternate: null }],
    });
  },
};
