import { LOWER_MARKING } from '../../standards/editionsService';
import { isKnown } from '../../units/types';
import { panelWords as say } from '../../words/en/rulesPanel';
import { newPanel } from '../reading';
import { cannotBeTold, doesNotApply, holds, type Rule } from '../rule';
import { hasFeeder } from './serviceReading';

const FEEDER = 'feeder';

/** The marking of the terminals at both ends decides from which column conductors are taken. */
export const temp: Rule = {
  id: 'TEMP',
  subjects: ({ option }) => [option.enclosure.id, FEEDER],
  check: (facts, subject) => {
    const atSource = subject === FEEDER;
    if (atSource && !hasFeeder(facts)) return doesNotApply();
    const { panel, path } = newPanel(facts);
    const marking = atSource ? facts.job.feeder.from.lugs : panel.lugs;
    const where = atSource ? say.atSource() : say.atPanel();
    return isKnown(marking)
      ? holds(say.tempMarked({ column: marking, method: LOWER_MARKING }), { measured: marking, unit: '°C' })
      : cannotBeTold(say.tempUnknown({ where }), say.tempLook({ where }), [
          atSource ? '/feeder/from/lugs' : path('lugs'),
        ]);
  },
};
