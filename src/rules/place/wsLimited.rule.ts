import { LIMITED_ACCESS } from '../../standards/workingSpace';
import { isKnown } from '../../units/types';
import { placeWords } from '../../words/en/rulesPlace';
import { spaceWords as say } from '../../words/en/rulesSpace';
import { breakerPanels, sitePath } from '../reading';
import { cannotBeTold, doesNotApply, type Rule } from '../rule';
import { atPlace } from './placeReading';

/** A panel one has to climb to: the opening is not in the survey. A low basement is no place of limited access. */
export const wsLimited: Rule = {
  id: 'WS-LIMITED',
  subjects: breakerPanels,
  check: (facts, subject) =>
    atPlace(facts, subject, ({ room }) => {
      const use = room?.state.after.use ?? 'unknown';
      if (!isKnown(use))
        return cannotBeTold(placeWords.roomUnknown(), placeWords.roomLook(), [
          room ? sitePath(facts.job, 'areas', room.id, 'state', 'after', 'use') : '/site/areas',
        ]);
      return LIMITED_ACCESS.uses.includes(use)
        ? cannotBeTold(say.limited(LIMITED_ACCESS.openingIn), say.limitedLook(), [])
        : doesNotApply();
    }),
};
