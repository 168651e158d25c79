import { isKnown } from '../../units/types';
import { panelWords as say } from '../../words/en/rulesPanel';
import { cannotBeTold, doesNotApply, type Rule } from '../rule';
import { feederApplies, feederCables, feederWaits, isCommonestError, theFeeder } from './feederReading';
import { sizing } from './sizing';

/** 2 AWG aluminum on 100 A to a panel that does not carry the whole dwelling: the error inspectors find most. */
export const fdrTwoAl: Rule = {
  id: 'FDR-2AL',
  subjects: theFeeder,
  check: (facts) => {
    const applies = feederApplies(facts);
    if (applies === false) return doesNotApply();
    const cables = feederCables(facts);
    const which = cables.map(isCommonestError);
    const known = cables.filter((_, i) => which[i] === true);
    const untold = () => cannotBeTold(say.feederUnknown(), say.feederLook(), feederWaits(facts));
    if (known.length === 0) return which.includes('unknown') ? untold() : doesNotApply();
    return isKnown(applies) ? sizing(facts, known, 'FDR-2AL', true) : untold();
  },
};
