import { BATH_RELIEF } from '../../standards/editionsPlace';
import { placeWords as say } from '../../words/en/rulesPlace';
import { breakerPanels } from '../reading';
import { cannotBeTold, type Rule } from '../rule';
import { atPlace } from './placeReading';
import { judgeRoom } from './rooms';

/** Not in a bathroom; a code year may let a panel stay that was there lawfully. */
export const bath: Rule = {
  id: 'BATH',
  subjects: breakerPanels,
  check: (facts, subject) =>
    atPlace(facts, subject, (place) => {
      const verdict = judgeRoom(facts, place, 'BATH', {
        fails: say.bathFails(),
        ask: say.bathFails(),
        holds: say.bathHolds,
      });
      const mayStay = BATH_RELIEF[facts.edition] && facts.option.kind === 'in place';
      return verdict.outcome === 'fails' && mayStay ? cannotBeTold(say.bathRelief(), say.askLook(), []) : verdict;
    }),
};
