import { panelWords as say } from '../../words/en/rulesPanel';
import type { Rule } from '../rule';
import { isFeederFed, theNewPanel } from './serviceReading';
import { surge } from './spd';

/** Surge protection in or beside a feeder-fed panel that is replaced. */
export const spdFeeder: Rule = {
  id: 'SPD-FDR',
  subjects: theNewPanel,
  check: (facts) => surge(facts, 'SPD-FDR', isFeederFed(facts), say.spdFeeder()),
};
