import { GFCI_OTHER_OUTDOORS } from '../../standards/editionsCircuits';
import { isKnown } from '../../units/types';
import { protectionWords as say } from '../../words/en/rulesProtection';
import { cablesOf, circuitById, isUntouched, runOf } from '../reading';
import { doesNotApply, type Rule, reminder } from '../rule';
import { liveCircuits } from './circuitReading';

const OUTDOORS = 'outdoors';

/** Outlets outdoors: a moved panel alone brings them nothing, and the protection they have is not lost with it. */
export const gfciOut: Rule = {
  id: 'GFCI-OUT',
  subjects: liveCircuits,
  check: (facts, subject) => {
    const { serves, label } = circuitById(facts.job, subject);
    const stays = cablesOf(facts.job, subject).every((h) => {
      const run = runOf(facts, h.id);
      return run !== undefined && isUntouched(run) && run.way === 'stays on old panel';
    });
    if (stays || (isKnown(serves) && !serves.includes(OUTDOORS))) return doesNotApply();
    return reminder(
      say.gfciOut({ label, known: isKnown(serves) }),
      say.gfciOutLook({ others: GFCI_OTHER_OUTDOORS[facts.edition] }),
    );
  },
};
