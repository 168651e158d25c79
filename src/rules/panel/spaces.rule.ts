import { panelWords as say } from '../../words/en/rulesPanel';
import { newPanel } from '../reading';
import type { Rule } from '../rule';
import { enough } from './counts';
import { theNewPanel } from './serviceReading';

/** Breakers, surge protective device and reserves fit the panel. */
export const spaces: Rule = {
  id: 'SPACES',
  subjects: theNewPanel,
  check: (facts) => {
    const { panel, path } = newPanel(facts);
    return enough({
      needed: facts.arrangement.spacesNeeded,
      has: panel.spaces,
      unit: 'spaces',
      path: path('spaces'),
      say: {
        holds: say.spacesHold,
        fails: say.spacesFail,
        unknown: say.spacesUnknown,
        look: say.spacesLook,
        remedy: say.biggerPanel,
      },
    });
  },
};
