import { BARE_NEUTRAL_ON_SUBPANEL } from '../../standards/editionsCircuits';
import { isKnown } from '../../units/types';
import { circuitWords as say } from '../../words/en/rulesCircuit';
import { circuitById } from '../reading';
import { cannotBeTold, doesNotApply, extraWork, holds, type Rule, stops } from '../rule';
import { hasBareNeutral, isRunAnew, onSubpanel, rolePath, threeWire, threeWirePaths, twoPole } from './threeWire';

/** An old three-wire range or dryer circuit: what may stay depends on what its panel is. */
export const oldThreeWire: Rule = {
  id: 'OLD-3WIRE',
  subjects: twoPole,
  check: (facts, subject) => {
    const { job, edition } = facts;
    const circuit = circuitById(job, subject);
    const v = { label: circuit.label };
    const three = threeWire(job, circuit);
    if (three === false) return doesNotApply();
    const subpanel = onSubpanel(facts);
    const waits = [...threeWirePaths(job, circuit), ...(isKnown(subpanel) ? [] : [rolePath(facts)])];
    if (!isKnown(three) || !isKnown(subpanel) || waits.length > 0)
      return cannotBeTold(say.threeWireUnknown(v), say.threeWireLook(), waits);
    if (isRunAnew(facts, circuit)) return extraWork(say.threeWireNew(v));
    if (!subpanel) return holds(say.threeWireService(v));
    if (!hasBareNeutral(job, circuit)) return holds(say.threeWireInsulated(v));
    if (BARE_NEUTRAL_ON_SUBPANEL[edition] === 'may be covered')
      return cannotBeTold(say.threeWireCover(v), say.threeWireCoverLook(), []);
    return stops(say.threeWireBare(v), { remedies: [{ say: say.threeWireRemedy(), cents: null, work: [] }] });
  },
};
