import { quoted } from '../../job/questions';
import { circuitWords as say } from '../../words/en/rulesCircuit';
import { judgeCircuit } from '../afci';
import { circuitById } from '../reading';
import { doesNotApply, holds, type Rule } from '../rule';
import { liveCircuits } from './circuitReading';

const KEY = 'afciOnPanelReplacement';

/** A state or city that asks for no arc-fault protection when a panel is replaced: said of each circuit it relieves. */
export const afciLocal: Rule = {
  id: 'AFCI-LOCAL',
  subjects: liveCircuits,
  check: ({ job, option, runs }, subject) => {
    const circuit = circuitById(job, subject);
    if (job.code.amendments[KEY] !== 'none' || circuit.addsOutlet) return doesNotApply();
    const { [KEY]: _relief, ...amendments } = job.code.amendments;
    const asNec = judgeCircuit({ ...job, code: { ...job.code, amendments } }, option, runs, circuit);
    return asNec.touched && asNec.inScope === 'yes' && asNec.required !== 'no'
      ? holds(say.local({ label: circuit.label }), { amendment: quoted(job, KEY) })
      : doesNotApply();
  },
};
