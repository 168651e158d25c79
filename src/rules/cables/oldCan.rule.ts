import { quoted } from '../../job/questions';
import { cableWords as say } from '../../words/en/rulesCables';
import { spliceCans } from '../reading';
import { cannotBeTold, holds, type Rule, stops } from '../rule';

const AMENDMENT = 'spliceCan';

/** An old cabinet emptied and kept for splices: read as a cabinet by some, as a box by others; the inspector says. */
export const oldCan: Rule = {
  id: 'OLD-CAN',
  subjects: (facts) => spliceCans(facts).map((e) => e.id),
  check: ({ job }) => {
    const answer = job.code.amendments[AMENDMENT];
    const look = say.canLook();
    const amendment = quoted(job, AMENDMENT);
    if (answer === 'yes' || answer === true) return holds(say.canAccepted(), { look, amendment });
    if (answer === 'no' || answer === false) return stops(say.canRefused(), { look, amendment });
    return cannotBeTold(say.canAsk(), look, []);
  },
};
