import { quoted } from '../../job/questions';
import { SPACE_SOURCES } from '../../standards/workingSpace';
import { isKnown } from '../../units/types';
import { placeWords as say } from '../../words/en/rulesPlace';
import { breakerPanels } from '../reading';
import { cannotBeTold, holds, holdsNearly, type Rule, stops } from '../rule';
import { atPlace, inFeet, namesOf, orOpen, part, remediesFor, shapeOf, waitsForMeasure } from './placeReading';

const AMENDMENT = 'headroomInNewSpot';

/** Headroom over the working space; an existing dwelling is let off up to a rating, and inspectors differ on a new spot. */
export const wsHeight: Rule = {
  id: 'WS-HEIGHT',
  subjects: breakerPanels,
  check: (facts, subject) =>
    atPlace(facts, subject, (place) => {
      const { outcome, exception, measuredIn, requiredIn, intruders, shape } = part(place, 'height');
      const allowed = facts.job.code.amendments[AMENDMENT];
      const refused = (allowed === 'no' || allowed === false) && facts.option.kind === 'relocate';
      const detail = { measured: measuredIn, required: requiredIn, unit: 'in', shape: shapeOf(place, shape, 'top') };
      if (outcome === 'fails')
        return stops(say.heightFails({ clear: inFeet(measuredIn), things: namesOf(facts, intruders) }), {
          ...detail,
          amendment: refused ? quoted(facts.job, AMENDMENT) : null,
          remedies: remediesFor(facts, intruders),
        });
      if (outcome === 'cannot be told')
        return isKnown(place.panel.busAmps)
          ? waitsForMeasure(facts, place)
          : cannotBeTold(say.heightUnknown(), say.heightLook(), [place.path('busAmps')], detail);
      // A ceiling nobody measured is let off like a low one: then it is the exception that holds.
      const excepted = exception || place.answers.some((a) => a.height.exception);
      if (!excepted) return holds(say.heightHolds({ clear: orOpen(measuredIn) }), detail);
      if (!place.answers.every((a) => a.height.exception)) return waitsForMeasure(facts, place);
      const said = say.heightException({ clear: inFeet(measuredIn) });
      const { section } = SPACE_SOURCES.headroomException[facts.edition];
      if (allowed === 'yes' || allowed === true)
        return holds(said, { ...detail, section, amendment: quoted(facts.job, AMENDMENT) });
      return holdsNearly(said, say.heightLook(), { ...detail, section });
    }),
};
