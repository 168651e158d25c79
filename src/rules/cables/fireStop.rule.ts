import { SEALED_CABLES } from '../../standards/countAdjustment';
import { sectionOf } from '../../standards/sections';
import { panelWords } from '../../words/en/rulesPanel';
import { wiringWords as say } from '../../words/en/rulesWiring';
import { type Rule, reminder } from '../rule';
import { platesPassed } from './downWall';

const JOB = 'job';

/**
 * Holes through plates, floors and rims are sealed. Cables that go down inside walls are counted: each passes a top
 * plate, is bored clear of its edges, and not more than two share one sealed hole.
 */
export const fireStop: Rule = {
  id: 'FIRE-STOP',
  subjects: () => [JOB],
  check: (facts) => {
    const cables = platesPassed(facts);
    return cables > 0
      ? reminder(say.plates({ cables, most: SEALED_CABLES[facts.edition] }), panelWords.fireStopLook(), {
          section: `${sectionOf('FIRE-STOP', facts.edition).section}, ${sectionOf('NM-BORE', facts.edition).section}`,
          measured: cables,
          unit: cables > 1 ? 'cables' : 'cable',
        })
      : reminder(panelWords.fireStop(), panelWords.fireStopLook());
  },
};
