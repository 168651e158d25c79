import { faceOf, wallFaces } from '../../job/site';
import { FINISHED, NO_CAVITY, SETBACK_MOST_IN, STUD_CAVITY } from '../../standards/editionsPlace';
import { isKnown } from '../../units/types';
import { placeWords as say } from '../../words/en/rulesPlace';
import { breakerPanels } from '../reading';
import { cannotBeTold, doesNotApply, holds, type Rule, stops } from '../rule';
import { atPlace, buildPath } from './placeReading';

/** A cabinet in a finished wall comes flush with the finished surface; a wall finished later around it is watched. */
export const flush: Rule = {
  id: 'FLUSH',
  subjects: breakerPanels,
  check: (facts, subject) =>
    atPlace(facts, subject, (place) => {
      const { panel, face } = place;
      const before = faceOf(wallFaces(facts.job.site, 'now'), panel.on)?.build;
      const recessed = panel.mount === 'recessed';
      if (!isKnown(face.build))
        return cannotBeTold(say.flushUnknown(), say.flushLook(), [buildPath(facts, place, 'after')]);
      if (!recessed) {
        const finishedLater = FINISHED.includes(face.build) && before !== undefined && before !== face.build;
        return finishedLater ? cannotBeTold(say.flushAround(), say.flushLook(), []) : doesNotApply();
      }
      if (NO_CAVITY.includes(face.build))
        return stops(say.flushNoCavity(), { remedies: [{ say: say.otherPlace(), cents: null, work: [] }] });
      const setback = FINISHED.includes(face.build) ? SETBACK_MOST_IN.noncombustible : SETBACK_MOST_IN.other;
      return STUD_CAVITY.includes(face.build)
        ? holds(say.flushHolds(), { look: say.flushLook(), required: setback, unit: 'in' })
        : cannotBeTold(say.flushThin(), say.flushLook(), []);
    }),
};
