import { quoted } from '../../job/questions';
import { AFCI_EXEMPT_IN } from '../../standards/editionsAfci';
import { formatFeetInches } from '../../units/length';
import type { Id } from '../../units/types';
import { circuitWords as say } from '../../words/en/rulesCircuit';
import { judgeCircuit } from '../afci';
import { cablesOf, circuitById, isExtended } from '../reading';
import { cannotBeTold, doesNotApply, extraWork, type FactsInYear, holds, holdsNearly, type Rule } from '../rule';
import { afciRemedies } from './afciRemedies';
import { liveCircuits, scopePaths } from './circuitReading';

/** Local readings that bear on the measure, and on what is done to the wiring. */
const MEASURE = ['afciOnPanelReplacement', 'afciCountsTails', 'racewayCountsIn6ft'] as const;
const BY_WORK = { reuse: 'afciShortened', 'new home run': 'afciShortNewRun' } as const;
type Judged = keyof typeof BY_WORK;

/** Of these the ones that bear on this circuit, as they stand in the job. */
const settingsQuoted = ({ job, runs }: FactsInYear, circuit: Id): string | null => {
  const own = cablesOf(job, circuit).flatMap((h) => runs.filter((r) => r.homeRun === h.id));
  const works = own.flatMap((r) => (Object.hasOwn(BY_WORK, r.way) ? [BY_WORK[r.way as Judged]] : []));
  return quoted(job, ...(own.some(isExtended) ? MEASURE : []), ...works);
};

/** What is done to the wiring, where that alone is a question. */
const workOn = ({ job, runs }: FactsInYear, circuit: Id): 'shortened' | 'new home run' | 'extended' => {
  const ways = cablesOf(job, circuit).flatMap((h) => runs.filter((r) => r.homeRun === h.id).map((r) => r.way));
  return ways.includes('new home run') ? 'new home run' : ways.includes('reuse') ? 'shortened' : 'extended';
};

/** Wiring extended, replaced or added to: does arc-fault protection come with it? The breaker itself is in the plan. */
export const afciExt: Rule = {
  id: 'AFCI-EXT',
  subjects: liveCircuits,
  check: (facts, subject) => {
    const { job, option, runs, edition } = facts;
    const judged = judgeCircuit(job, option, runs, circuitById(job, subject));
    const { circuit, codeLength } = judged;
    if (!judged.touched || judged.inScope === 'no') return doesNotApply();
    if (job.code.amendments.afciOnPanelReplacement === 'none' && !circuit.addsOutlet) return doesNotApply();
    const v = { label: circuit.label, length: formatFeetInches(codeLength) };
    const counts = job.code.amendments.afciCountsTails;
    const measure = {
      measured: counts === 'yes' || counts === true ? judged.codeLengthWithTails : codeLength,
      required: AFCI_EXEMPT_IN[edition],
      unit: 'in',
      amendment: settingsQuoted(facts, subject),
    };
    const work = workOn(facts, subject);
    switch (judged.required) {
      case 'yes': {
        const newHomeRun = runs.some(
          (r) =>
            r.way === 'new home run' && job.homeRuns.some((h) => h.id === r.homeRun && h.circuits.includes(subject)),
        );
        return extraWork(say.afciRequired({ ...v, adds: circuit.addsOutlet, newHomeRun }), {
          ...(circuit.addsOutlet ? { amendment: measure.amendment } : measure),
          look: judged.tapeIt ? say.afciTape() : null,
          remedies: afciRemedies(facts, judged),
        });
      }
      case 'no':
        // Excused by length whatever it serves: only a circuit known to be inside the rule can be said to hold.
        if (judged.inScope !== 'yes') return doesNotApply();
        return judged.tapeIt
          ? holdsNearly(say.afciNear(v), say.afciTape(), measure)
          : holds(say.afciExempt(v), measure);
      case 'inspector decides':
        if (judged.together.length > 0)
          return cannotBeTold(
            say.afciTogether({
              label: circuit.label,
              lengths: judged.together.map((length) => formatFeetInches(length)),
              all: formatFeetInches(judged.together.reduce((sum, length) => sum + length, 0)),
            }),
            say.afciTogetherLook(),
            scopePaths(job, circuit),
            measure,
          );
        return cannotBeTold(
          say.afciAsk({ ...v, work }),
          say.afciAskLook(),
          [],
          work === 'shortened' ? { amendment: measure.amendment } : measure,
        );
      case 'cannot be told':
        return cannotBeTold(say.afciUntold(v), say.afciUntoldLook(), scopePaths(job, circuit), measure);
    }
  },
};
