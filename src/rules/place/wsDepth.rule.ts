import { placeWords as say } from '../../words/en/rulesPlace';
import { breakerPanels } from '../reading';
import { holds, type Rule, stops } from '../rule';
import { atPlace, inFeet, namesOf, orOpen, part, remediesFor, shapeOf, waitsForMeasure } from './placeReading';

/** Clear depth in front of the panel, from its front after the finishing. */
export const wsDepth: Rule = {
  id: 'WS-DEPTH',
  subjects: breakerPanels,
  check: (facts, subject) =>
    atPlace(facts, subject, (place) => {
      const { outcome, measuredIn, requiredIn, intruders, shape } = part(place, 'depth');
      if (outcome === 'cannot be told') return waitsForMeasure(facts, place);
      const detail = { measured: measuredIn, required: requiredIn, unit: 'in', shape: shapeOf(place, shape) };
      return outcome === 'holds'
        ? holds(say.depthHolds({ clear: orOpen(measuredIn) }), detail)
        : stops(say.depthFails({ clear: inFeet(measuredIn), things: namesOf(facts, intruders) }), {
            ...detail,
            remedies: remediesFor(facts, intruders),
          });
    }),
};
