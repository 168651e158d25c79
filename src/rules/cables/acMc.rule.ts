import { heldAtEveryJoist } from '../../calculations/supports';
import { cableWords as say } from '../../words/en/rulesCables';
import { laidCable } from '../reading';
import { doesNotApply, type Rule, reminder } from '../rule';
import { homeRunIds, laid } from './cableReading';

/** Armored and metal-clad cable across the undersides of joists is held at every joist. */
export const acMc: Rule = {
  id: 'AC-MC',
  subjects: homeRunIds,
  check: (facts, subject) => {
    const found = laid(facts, subject);
    const across = found?.legs.some((leg) => leg.by === 'joist underside');
    return found && across && heldAtEveryJoist(laidCable(facts.job, found.run).kind)
      ? reminder(say.armored(), say.armoredLook())
      : doesNotApply();
  },
};
