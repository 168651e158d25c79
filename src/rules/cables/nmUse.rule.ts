import { answerOf, quoted } from '../../job/questions';
import { cableWords as say } from '../../words/en/rulesCables';
import { doesNotApply, holds, type Rule } from '../rule';

const AMENDMENT = 'nmAllowed';
const JOB = 'job';

/** New cable is of a kind allowed here: nonmetallic in a dry dwelling by the code, metal-clad where a city says so. */
export const nmUse: Rule = {
  id: 'NM-USE',
  subjects: () => [JOB],
  check: ({ job, runs }) => {
    if (!runs.some((run) => run.newCable !== null)) return doesNotApply();
    const barred = answerOf(job, AMENDMENT)?.answer === 'no';
    return holds(barred ? say.nmBarred() : say.nmAllowed(), { amendment: quoted(job, AMENDMENT) });
  },
};
