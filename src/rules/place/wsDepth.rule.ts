import { placeWords as say } from '../../words/en/rulesPlace';
import { spaceWords } from '../../words/en/rulesSpace';
import { breakerPanels } from '../reading';
import { holds, holdsNearly, type Rule, stops } from '../rule';
import { atPlace, inFeet, namesOf, orOpen, part, remediesFor, shapeOf, waitsForMeasure } from './placeReading';
import { goneLater } from './underfoot';

/** Clear depth in front of the panel, from its front after the finishing. */
export const wsDepth: Rule = {
  id: 'WS-DEPTH',
  subjects: breakerPanels,
  check: (facts, subject) =>
    atPlace(facts, subject, (place) => {
      const { outcome, measuredIn, requiredIn, intruders, shape } = part(place, 'depth');
      if (outcome === 'cannot be told') return waitsForMeasure(facts, place);
      const detail = { measured: measuredIn, required: requiredIn, unit: 'in', shape: shapeOf(place, shape) };
      if (outcome === 'fails')
        return stops(say.depthFails({ clear: inFeet(measuredIn), things: namesOf(facts, intruders) }), {
          ...detail,
          remedies: remediesFor(facts, intruders),
        });
      const said = say.depthHolds({ clear: orOpen(measuredIn) });
      const today = goneLater(facts, place).map(({ id }) => ({ id, byIn: 0 }));
      return today.length > 0
        ? holdsNearly(said, spaceWords.goneLater({ things: namesOf(facts, today) }), detail)
        : holds(said, detail);
    }),
};
