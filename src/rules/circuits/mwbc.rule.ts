import type { DirectoryEntry } from '../../facts/result';
import { circuitWords as say } from '../../words/en/rulesCircuit';
import { cablesOf, runOf } from '../reading';
import { doesNotApply, type FactsInYear, holds, type Rule, stops } from '../rule';
import { sharedPairs } from './circuitReading';

const inNewPanel = (facts: FactsInYear, circuit: string): boolean =>
  cablesOf(facts.job, circuit).every((h) => runOf(facts, h.id)?.way !== 'stays on old panel');

const entryOf = (facts: FactsInYear, circuit: string): DirectoryEntry | undefined =>
  facts.arrangement.directory.find((e) => e.circuit === circuit);

/** Two circuits that share a neutral: one panel, opposite legs, disconnected together. Asked of the pair by its smaller id. */
export const mwbc: Rule = {
  id: 'MWBC',
  subjects: ({ job }) => sharedPairs(job).map(([circuit]) => circuit.id),
  check: (facts, subject) => {
    const [one, other] = sharedPairs(facts.job).find(([c]) => c.id === subject)!;
    const labels = `${one.label} · ${other.label}`;
    const stay = [one, other].map((c) => inNewPanel(facts, c.id));
    if (!stay.includes(true)) return doesNotApply();
    const [a, b] = [entryOf(facts, one.id), entryOf(facts, other.id)];
    const look = say.mwbcLook();
    if (stay.includes(false) || !a || !b)
      return stops(say.mwbcApart({ labels }), { look, remedies: [{ say: say.mwbcMove(), cents: null, work: [] }] });
    return a.leg === b.leg
      ? stops(say.mwbcSameLeg({ labels }), { look, remedies: [{ say: say.mwbcMove(), cents: null, work: [] }] })
      : holds(say.mwbcHolds({ labels }), { look });
  },
};
