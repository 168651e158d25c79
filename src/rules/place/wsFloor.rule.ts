import { placeWords as say } from '../../words/en/rulesPlace';
import { theNewPanel } from '../panel/serviceReading';
import { type Rule, reminder } from '../rule';

/** A clear, level floor in front: to be looked at. */
export const wsFloor: Rule = {
  id: 'WS-FLOOR',
  subjects: theNewPanel,
  check: () => reminder(say.floor(), say.floorLook()),
};
