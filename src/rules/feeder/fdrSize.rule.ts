import { isKnown } from '../../units/types';
import { panelWords as say } from '../../words/en/rulesPanel';
import { cannotBeTold, doesNotApply, type Rule } from '../rule';
import { feederApplies, feederCables, feederWaits, isCommonestError, theFeeder } from './feederReading';
import { sizing } from './sizing';

/** The feeder holds the device in front of it. */
export const fdrSize: Rule = {
  id: 'FDR-SIZE',
  subjects: theFeeder,
  check: (facts) => {
    const applies = feederApplies(facts);
    if (applies === false) return doesNotApply();
    if (!isKnown(applies)) return cannotBeTold(say.feederUnknown(), say.feederLook(), feederWaits(facts));
    const cables = feederCables(facts);
    // FDR-2AL prices the smaller device where it speaks.
    return sizing(facts, cables, 'FDR-SIZE', !cables.some((cable) => isCommonestError(cable) === true));
  },
};
