import { panelWords as say } from '../../words/en/rulesPanel';
import { newPanel } from '../reading';
import type { Rule } from '../rule';
import { enough } from './counts';
import { theNewPanel } from './serviceReading';

/** One neutral to a terminal. */
export const neutralBar: Rule = {
  id: 'NEUTRAL-BAR',
  subjects: theNewPanel,
  check: (facts) => {
    const { panel, path } = newPanel(facts);
    return enough({
      needed: facts.arrangement.neutralsToLand,
      has: panel.neutralTerminals,
      unit: 'terminals',
      path: path('neutralTerminals'),
      say: {
        holds: say.neutralHold,
        fails: say.neutralFail,
        unknown: say.neutralUnknown,
        look: say.neutralLook,
        remedy: say.neutralRemedy,
      },
    });
  },
};
