import { placeWords as say } from '../../words/en/rulesPlace';
import { breakerPanels } from '../reading';
import { failsNote, holds, type Rule } from '../rule';
import { atPlace, namesOf, remediesFor, shapeOf } from './placeReading';

/** Goods anyone can carry away never stop the job; the working space is no store. */
export const wsStore: Rule = {
  id: 'WS-STORE',
  subjects: breakerPanels,
  check: (facts, subject) =>
    atPlace(facts, subject, (place) => {
      const [answer] = place.answers;
      const goods = answer.stored.map((id) => ({ id, byIn: 0 }));
      return goods.length === 0
        ? holds(say.storeHolds())
        : failsNote(say.storeFails({ things: namesOf(facts, goods) }), {
            shape: shapeOf(place, answer.workingSpace),
            remedies: remediesFor(facts, goods).filter((r) => r.cents !== null),
          });
    }),
};
