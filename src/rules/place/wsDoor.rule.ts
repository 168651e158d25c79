import { OPEN_DOOR_WAY } from '../../standards/workingSpace';
import { placeWords as say } from '../../words/en/rulesPlace';
import { breakerPanels } from '../reading';
import { cannotBeTold, doesNotApply, holds, type Rule } from '../rule';
import { atPlace, inFeet, part } from './placeReading';

/** Room to pass with the panel door open. What stands opposite may or may not be on the way out: never more than a question. */
export const wsDoor: Rule = {
  id: 'WS-DOOR',
  subjects: breakerPanels,
  check: (facts, subject) =>
    atPlace(facts, subject, (place) => {
      const way = OPEN_DOOR_WAY[facts.edition];
      if (way === null) return doesNotApply();
      if (place.panel.doorHinge === 'lift-off') return holds(say.wayHolds());
      const { measuredIn, outcome } = part(place, 'depth');
      const detail = { required: way.widthIn, unit: 'in' };
      if (measuredIn === null && outcome === 'holds') return holds(say.wayHolds(), detail);
      if (measuredIn === null) return cannotBeTold(say.wayUnknown(), say.wayLook(), [], detail);
      const left = measuredIn - place.panel.size.width;
      const headroom = part(place, 'height').measuredIn;
      const high = headroom === null || headroom >= way.heightIn;
      return left >= way.widthIn && high && outcome !== 'cannot be told'
        ? holds(say.wayHolds(), { ...detail, measured: left })
        : cannotBeTold(say.wayTight({ left: inFeet(Math.max(0, left)) }), say.wayLook(), [], {
            ...detail,
            measured: left,
          });
    }),
};
