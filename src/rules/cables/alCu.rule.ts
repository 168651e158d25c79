import { SMALL_ALUMINUM } from '../../standards/editionsCables';
import { isKnown } from '../../units/types';
import { cableWords as say } from '../../words/en/rulesCables';
import { homeRunById, isExtended, isUntouched, pathTo, runOf } from '../reading';
import { cannotBeTold, doesNotApply, extraWork, type Rule } from '../rule';
import { homeRunIds } from './cableReading';

const FLAG = 'aluminum';

/** Small aluminum conductors: joined to copper only in listed connectors, which the plan prices; landed only where marked for it. */
export const alCu: Rule = {
  id: 'AL-CU',
  subjects: homeRunIds,
  check: (facts, subject) => {
    const { job } = facts;
    const run = runOf(facts, subject);
    const { cable, circuits } = homeRunById(job, subject);
    if (!run || run.way === 'new home run' || (isUntouched(run) && run.way !== 'stays')) return doesNotApply();
    const flagged = job.circuits.some((c) => circuits.includes(c.id) && c.flags.includes(FLAG));
    if (!flagged && cable.metal === 'Cu') return doesNotApply();
    if (!flagged && isKnown(cable.size) && !SMALL_ALUMINUM.includes(cable.size)) return doesNotApply();
    const waits = (['metal', 'size'] as const)
      .filter((key) => !isKnown(cable[key]))
      .map((key) => pathTo(job, 'homeRuns', subject, 'cable', key));
    if (!flagged && waits.length > 0) return cannotBeTold(say.alUnknown(), say.alLook(), waits);
    return isExtended(run) ? extraWork(say.alSplice()) : cannotBeTold(say.alLand(), say.alLook(), []);
  },
};
