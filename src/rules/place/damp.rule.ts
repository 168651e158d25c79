import { AIR_GAP_IN, MASONRY } from '../../standards/editionsPlace';
import { isKnown } from '../../units/types';
import { placeWords as say } from '../../words/en/rulesPlace';
import { breakerPanels, sitePath } from '../reading';
import { cannotBeTold, holds, holdsNearly, type Rule, stops } from '../rule';
import { atPlace, buildPath } from './placeReading';

const OUTDOORS = 'outdoors';

/** Moisture: masonry wants air behind a surface panel, which the plan's standoffs give; outdoors the panel is weatherproof. */
export const damp: Rule = {
  id: 'DAMP',
  subjects: breakerPanels,
  check: (facts, subject) =>
    atPlace(facts, subject, (place) => {
      const { panel, face, room, path } = place;
      const use = room?.state.after.use;
      if (use === OUTDOORS && panel.weatherproof === false)
        return stops(say.dampOutdoors(), { remedies: [{ say: say.dampRemedy(), cents: null, work: [] }] });
      if (use === OUTDOORS && !isKnown(panel.weatherproof))
        return cannotBeTold(say.dampOutdoorsUnknown(), say.dampLook(), [path('weatherproof')]);
      if (use !== undefined && !isKnown(use) && panel.weatherproof !== true)
        return cannotBeTold(say.roomUnknown(), say.roomLook(), [
          sitePath(facts.job, 'areas', room!.id, 'state', 'after', 'use'),
        ]);
      if (!isKnown(face.build))
        return cannotBeTold(say.dampUnknown(), say.dampLook(), [buildPath(facts, place, 'after')]);
      return MASONRY.includes(face.build)
        ? holdsNearly(say.dampMasonry(), say.dampLook(), { required: AIR_GAP_IN, unit: 'in' })
        : holds(say.dampHolds());
    }),
};
