import { quoted } from '../../job/questions';
import { HANDLE_MOST_IN } from '../../standards/workingSpace';
import { formatFeetInches } from '../../units/length';
import { isKnown } from '../../units/types';
import { placeWords as say } from '../../words/en/rulesPlace';
import { breakerPanels } from '../reading';
import { cannotBeTold, holds, type Rule, stops } from '../rule';
import { atPlace } from './placeReading';

const AMENDMENT = 'handleMaxIn';

/** The highest handle, in its highest position, above the floor or platform one stands on. */
export const handle: Rule = {
  id: 'HANDLE',
  subjects: breakerPanels,
  check: (facts, subject) =>
    atPlace(facts, subject, ({ panel, path, floor }) => {
      const local = facts.job.code.amendments[AMENDMENT];
      const limit = typeof local === 'number' ? local : HANDLE_MOST_IN;
      const amendment = quoted(facts.job, AMENDMENT);
      if (!isKnown(panel.topHandle))
        return cannotBeTold(say.handleUnknown(), say.handleLook(), [path('topHandle')], {
          required: limit,
          unit: 'in',
          amendment,
        });
      const measured = panel.on.bottom + panel.topHandle - floor;
      const detail = { measured, required: limit, unit: 'in', amendment };
      const v = { height: formatFeetInches(measured) };
      return measured <= limit
        ? holds(say.handleHolds(v), detail)
        : stops(say.handleFails(v), { ...detail, remedies: [{ say: say.handleRemedy(), cents: null, work: [] }] });
    }),
};
