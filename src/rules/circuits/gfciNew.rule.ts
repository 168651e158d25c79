import { GFCI_PLACES } from '../../standards/editionsCircuits';
import { circuitWords } from '../../words/en/rulesCircuit';
import { protectionWords as say } from '../../words/en/rulesProtection';
import { circuitById } from '../reading';
import { cannotBeTold, doesNotApply, type Rule } from '../rule';
import { liveCircuits } from './circuitReading';

/** An outlet added by this job: its place, which the survey does not hold, decides on GFCI protection. */
export const gfciNew: Rule = {
  id: 'GFCI-NEW',
  subjects: liveCircuits,
  check: ({ job, edition }, subject) => {
    const { addsOutlet, label } = circuitById(job, subject);
    return addsOutlet
      ? cannotBeTold(say.gfciNew({ label, ...GFCI_PLACES[edition] }), circuitWords.gfciNewLook(), [])
      : doesNotApply();
  },
};
