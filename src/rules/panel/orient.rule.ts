import { isKnown } from '../../units/types';
import { panelWords as say } from '../../words/en/rulesPanel';
import { newPanel } from '../reading';
import { cannotBeTold, holds, type Rule } from '../rule';
import { theNewPanel } from './serviceReading';

/** Vertical, and handles that move up and down are up when on: an inverted panel is fine for its branch breakers, not always for its main. */
export const orient: Rule = {
  id: 'ORIENT',
  subjects: theNewPanel,
  check: (facts) => {
    const { panel, path } = newPanel(facts);
    if (panel.upright) return holds(say.orientHolds());
    if (!isKnown(panel.mainAmps)) return cannotBeTold(say.orientUnknown(), say.orientLook(), [path('mainAmps')]);
    return panel.mainAmps === null ? holds(say.orientPairs()) : cannotBeTold(say.orientMain(), say.orientLook(), []);
  },
};
