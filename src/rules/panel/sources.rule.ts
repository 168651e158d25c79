import { isKnown } from '../../units/types';
import { panelWords as say } from '../../words/en/rulesPanel';
import { cannotBeTold, doesNotApply, holds, type Rule } from '../rule';
import { hungOn, isSource, panelsWith } from './attached';

const JOB = 'job';

/** Solar, battery, generator: power that can feed back into the panel. Asked of each old panel, and of the house. */
export const sources: Rule = {
  id: 'SOURCES',
  subjects: (facts) => [...panelsWith(facts, isSource), JOB],
  check: (facts, subject) => {
    if (subject === JOB) {
      const { otherSource } = facts.job.house;
      if (!isKnown(otherSource)) return cannotBeTold(say.sourceHouse(), say.sourceLook(), ['/house/otherSource']);
      return otherSource ? cannotBeTold(say.sourceHouseSome(), say.sourceLook(), []) : doesNotApply();
    }
    const { open, waits, all, answers } = hungOn(facts, subject, isSource);
    return waits.length > 0
      ? cannotBeTold(say.sourceOpen({ kinds: open }), say.sourceLook(), waits)
      : holds(say.hangAnswered({ kind: all, answer: answers }));
  },
};
