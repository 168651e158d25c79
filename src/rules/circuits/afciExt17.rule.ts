import { AFCI_EDITIONS, AFCI_EXEMPT_IN, LENGTH_NOISE_IN } from '../../standards/editionsAfci';
import { formatFeetInches } from '../../units/length';
import { circuitWords as say } from '../../words/en/rulesCircuit';
import { judgeCircuit } from '../afci';
import { circuitById } from '../reading';
import { cannotBeTold, doesNotApply, holds, type Rule } from '../rule';
import { liveCircuits } from './circuitReading';

/** A code year that does not say whether conductors inside cabinets and boxes count in the length that is excused. */
export const afciExt17: Rule = {
  id: 'AFCI-EXT-17',
  subjects: liveCircuits,
  check: ({ job, option, runs, edition }, subject) => {
    const { amendments } = job.code;
    const judged = judgeCircuit(job, option, runs, circuitById(job, subject));
    const { circuit, codeLength: outside, codeLengthWithTails: all } = judged;
    const settled =
      amendments.afciCountsTails !== undefined || amendments.afciOnPanelReplacement === 'none' || circuit.addsOutlet;
    const silent = AFCI_EDITIONS[edition].tails === 'text silent';
    if (settled || !silent || all === 0 || judged.inScope !== 'yes') return doesNotApply();
    const limit = AFCI_EXEMPT_IN[edition];
    const measure = { measured: all, required: limit, unit: 'in' };
    const v = { label: circuit.label, outside: formatFeetInches(outside), all: formatFeetInches(all) };
    if (all <= limit + LENGTH_NOISE_IN) return holds(say.afci17Holds(v), measure);
    return outside <= limit + LENGTH_NOISE_IN
      ? cannotBeTold(say.afci17(v), say.afci17Look(), [], measure)
      : doesNotApply();
  },
};
