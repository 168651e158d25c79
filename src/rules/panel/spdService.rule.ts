import { isRequiredIn } from '../../standards/sections';
import { panelWords as say } from '../../words/en/rulesPanel';
import type { Rule } from '../rule';
import { isFeederFed, isServiceWork, theNewPanel } from './serviceReading';
import { surge } from './spd';

/**
 * Surge protection where service equipment is replaced: at it, or at the next panel downstream. One device in that
 * panel answers this rule and the feeder's, so it is priced once.
 */
export const spdService: Rule = {
  id: 'SPD-SVC',
  subjects: theNewPanel,
  check: (facts) => {
    const verdict = surge(facts, 'SPD-SVC', isServiceWork(facts), say.spdService());
    const priced = isFeederFed(facts) === true && isRequiredIn('SPD-FDR', facts.edition);
    return priced ? { ...verdict, cure: [] } : verdict;
  },
};
