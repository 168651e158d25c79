import { overlap, slabProjection } from '../../geometry/freeIntervals';
import { enclosureOnFace, solids } from '../../job/site';
import { DWELLING_DEPTH_IN } from '../../standards/workingSpace';
import { placeWords as say } from '../../words/en/rulesPlace';
import { breakerPanels } from '../reading';
import { type FactsInYear, type Rule, stops } from '../rule';
import { atPlace, remediesFor, type Standing, settled, waitsForMeasure } from './placeReading';
import { judgeRoom } from './rooms';
import { onFace } from './surroundings';

const STAIR = 'stair';

/** Flights with steps under the panel or under whoever stands before it. A flight overhead is another thing. */
const stepsUnder = (facts: FactsInYear, { panel, face }: Standing, end: 'least' | 'most') => {
  const on = enclosureOnFace(panel);
  const place = onFace(face);
  return solids(settled(facts.job.site, end), 'after', facts.option.moves).filter(
    (s) =>
      s.kind === STAIR &&
      s.fromZ < on.bottom &&
      slabProjection(s.outline.map(place), 0, on.out + DWELLING_DEPTH_IN).some((i) => overlap(i, [on.left, on.right])),
  );
};

/** Not over the steps of a stair. */
export const stairs: Rule = {
  id: 'STAIRS',
  subjects: breakerPanels,
  check: (facts, subject) =>
    atPlace(facts, subject, (place) => {
      const flights = stepsUnder(facts, place, 'most');
      if (flights.length > 0)
        return stops(say.stairFails(), {
          remedies: remediesFor(
            facts,
            flights.map(({ id }) => ({ id, byIn: 0 })),
          ),
        });
      // a flight that only an unmeasured size would bring there
      if (stepsUnder(facts, place, 'least').length > 0) return waitsForMeasure(facts, place);
      return judgeRoom(facts, place, 'STAIRS', {
        fails: say.stairFails(),
        ask: say.stairFails(),
        holds: say.stairHolds,
      });
    }),
};
