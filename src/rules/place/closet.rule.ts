import { placeWords as say } from '../../words/en/rulesPlace';
import { breakerPanels } from '../reading';
import type { Rule } from '../rule';
import { atPlace } from './placeReading';
import { judgeRoom } from './rooms';

/** Not among clothes. */
export const closet: Rule = {
  id: 'CLOSET',
  subjects: breakerPanels,
  check: (facts, subject) =>
    atPlace(facts, subject, (place) =>
      judgeRoom(facts, place, 'CLOSET', { fails: say.closetFails(), ask: say.closetAsk(), holds: say.closetHolds }),
    ),
};
