import { panelWords as say } from '../../words/en/rulesPanel';
import { newPanel } from '../reading';
import type { Rule } from '../rule';
import { enough } from './counts';
import { theNewPanel } from './serviceReading';

/** A knockout for every cable, the feeder's among them. */
export const knockouts: Rule = {
  id: 'KNOCKOUTS',
  subjects: theNewPanel,
  check: (facts) => {
    const { panel, path } = newPanel(facts);
    return enough({
      needed: facts.knockoutsUsed,
      has: panel.knockouts,
      unit: 'knockouts',
      path: path('knockouts'),
      say: {
        holds: say.knockoutsHold,
        fails: say.knockoutsFail,
        unknown: say.knockoutsUnknown,
        look: say.knockoutsLook,
        remedy: say.biggerPanel,
      },
    });
  },
};
