import { placeWords as say } from '../../words/en/rulesPlace';
import { breakerPanels } from '../reading';
import { cannotBeTold, holds, type Rule, stops } from '../rule';
import { atPlace, inFeet, namesOf, orOpen, part, remediesFor, shapeOf, waitsForMeasure } from './placeReading';
import { roomDoorsInto } from './roomDoors';

/** Clear width at full depth, which may slide as long as it holds the front; the panel's own door opens to 90°. */
export const wsWidth: Rule = {
  id: 'WS-WIDTH',
  subjects: breakerPanels,
  check: (facts, subject) =>
    atPlace(facts, subject, (place) => {
      const width = part(place, 'width');
      const door = part(place, 'door');
      const detail = {
        measured: width.measuredIn,
        required: width.requiredIn,
        unit: 'in',
        shape: shapeOf(place, place.answers[0].workingSpace),
      };
      if (width.outcome === 'fails')
        return stops(say.widthFails({ clear: inFeet(width.measuredIn), things: namesOf(facts, width.intruders) }), {
          ...detail,
          remedies: remediesFor(facts, width.intruders),
        });
      if (door.outcome === 'fails')
        return stops(say.doorFails({ things: namesOf(facts, door.intruders) }), {
          measured: door.measuredIn,
          required: door.requiredIn,
          unit: 'in',
          shape: shapeOf(place, door.shape),
          remedies: remediesFor(facts, door.intruders),
        });
      if (width.outcome === 'cannot be told') return waitsForMeasure(facts, place);
      if (door.outcome === 'cannot be told')
        return place.panel.doorHinge === 'unknown'
          ? cannotBeTold(say.doorUnknown(), say.doorLook(), [place.path('doorHinge')], detail)
          : waitsForMeasure(facts, place);
      const swinging = roomDoorsInto(facts, place);
      if (swinging)
        return cannotBeTold(
          swinging.waits.length > 0
            ? say.roomDoorUnknown({ door: swinging.door })
            : say.roomDoor({ door: swinging.door }),
          say.roomDoorLook(),
          swinging.waits,
          detail,
        );
      return holds(say.widthHolds({ clear: orOpen(width.measuredIn) }), detail);
    }),
};
