import { panelWords as say } from '../../words/en/rulesPanel';
import { cannotBeTold, holds, type Rule } from '../rule';
import { hungOn, isSource, panelsWith } from './attached';

/** What hangs on an old panel loses its support with it: each thing is a task, and the price waits until it is answered. */
export const hang: Rule = {
  id: 'HANG',
  subjects: (facts) => panelsWith(facts, (thing) => !isSource(thing)),
  check: (facts, subject) => {
    const { open, waits, all, answers } = hungOn(facts, subject, (thing) => !isSource(thing));
    return waits.length > 0
      ? cannotBeTold(say.hangOpen({ kinds: open }), say.hangLook(), waits)
      : holds(say.hangAnswered({ kind: all, answer: answers }));
  },
};
