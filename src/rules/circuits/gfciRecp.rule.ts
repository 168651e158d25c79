import { protectionWords as say } from '../../words/en/rulesProtection';
import { gfciAdded } from '../gfci';
import { circuitById } from '../reading';
import { extraWork, type Rule, reminder } from '../rule';

const JOB = 'job';

/** Replaced receptacles: those this job puts in with a new range or dryer run, whose breaker is in the plan; any other is a duty of the day. */
export const gfciRecp: Rule = {
  id: 'GFCI-RECP',
  subjects: ({ job, runs }) => [...gfciAdded(job, runs), JOB],
  check: ({ job }, subject) => {
    if (subject === JOB) return reminder(say.gfciRecp(), say.gfciRecpLook());
    return extraWork(say.gfciReplaced({ label: circuitById(job, subject).label }), { look: say.gfciReplacedLook() });
  },
};
