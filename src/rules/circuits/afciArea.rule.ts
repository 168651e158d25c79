import type { Use } from '../../standards/uses';
import { isKnown } from '../../units/types';
import { circuitWords as say } from '../../words/en/rulesCircuit';
import { judgeCircuit } from '../afci';
import { circuitById } from '../reading';
import { cannotBeTold, doesNotApply, holds, type Rule } from '../rule';
import { liveCircuits, scopePaths } from './circuitReading';

/** A room that is in the list for certain: what would this work ask for, did the circuit serve it? */
const LISTED_ROOM: Use = 'bedroom';

/** Work that may ask for arc-fault protection waits for the rooms a circuit serves. */
export const afciArea: Rule = {
  id: 'AFCI-AREA',
  subjects: liveCircuits,
  check: ({ job, option, runs }, subject) => {
    const circuit = circuitById(job, subject);
    const asked = judgeCircuit(job, option, runs, { ...circuit, serves: [LISTED_ROOM] });
    if (!asked.touched || asked.required === 'no') return doesNotApply();
    if (judgeCircuit(job, option, runs, circuit).inScope === 'no') return doesNotApply();
    const waits = scopePaths(job, circuit);
    if (waits.length > 0 || asked.required === 'cannot be told' || !isKnown(circuit.serves))
      return cannotBeTold(say.areaUnknown({ label: circuit.label }), say.areaLook(), waits);
    return holds(say.areaKnown({ label: circuit.label, rooms: [...circuit.serves].sort().join(', ') || '-' }));
  },
};
