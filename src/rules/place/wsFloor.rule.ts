import { formatFeetInches } from '../../units/length';
import { placeWords } from '../../words/en/rulesPlace';
import { spaceWords as say } from '../../words/en/rulesSpace';
import { theNewPanel } from '../panel/serviceReading';
import { cannotBeTold, type Rule, reminder } from '../rule';
import { atPlace, namesOf } from './placeReading';
import { pitsIn, stepIn } from './underfoot';

/** A clear, level floor in front: pits and steps that were measured are asked about, the rest is to be looked at. */
export const wsFloor: Rule = {
  id: 'WS-FLOOR',
  subjects: theNewPanel,
  check: (facts, subject) =>
    atPlace(facts, subject, (place) => {
      const pits = pitsIn(facts, place).map(({ id }) => ({ id, byIn: 0 }));
      if (pits.length > 0) return cannotBeTold(say.pit({ things: namesOf(facts, pits) }), say.pitLook(), []);
      const step = stepIn(facts, place);
      return step > 0
        ? cannotBeTold(say.step({ step: formatFeetInches(step) }), say.stepLook(), [], {
            measured: step,
            required: 0,
            unit: 'in',
          })
        : reminder(placeWords.floor(), placeWords.floorLook());
    }),
};
