import { GROUND_BAR_TERMINALS, GROUND_BARS_PLANNED } from '../../standards/editionsCircuits';
import { isKnown } from '../../units/types';
import { panelWords as say } from '../../words/en/rulesPanel';
import { newPanel } from '../reading';
import { cannotBeTold, extraWork, holds, type Rule, stops } from '../rule';
import { isFeederFed, theNewPanel } from './serviceReading';

/** Neutral and ground joined at the service and nowhere else; a terminal for every EGC. The plan has one ground bar; more are a cure. */
export const groundBond: Rule = {
  id: 'GND-BOND',
  subjects: theNewPanel,
  check: (facts) => {
    const { panel, path } = newPanel(facts);
    const fed = isFeederFed(facts);
    const needed = facts.arrangement.groundsToLand;
    const waits = [
      ...(isKnown(fed) ? [] : [path('role')]),
      ...(isKnown(panel.bonded) ? [] : [path('bonded')]),
      ...(isKnown(panel.groundTerminals) ? [] : [path('groundTerminals')]),
    ];
    if (isKnown(fed) && panel.bonded === fed)
      return stops(fed ? say.bondIn() : say.bondOut(), { look: say.bondLook() });
    if (!isKnown(fed) || !isKnown(panel.bonded) || !isKnown(panel.groundTerminals))
      return cannotBeTold(say.bondUnknown(), say.bondLook(), waits);
    // At the service the neutral bar takes grounds too.
    const shared =
      fed || !isKnown(panel.neutralTerminals)
        ? 0
        : Math.max(0, panel.neutralTerminals - facts.arrangement.neutralsToLand);
    const has = panel.groundTerminals + shared;
    const measure = { measured: has, required: needed, unit: 'terminals' };
    if (needed > has && !fed && !isKnown(panel.neutralTerminals))
      return cannotBeTold(say.bondUnknown(), say.bondLook(), [path('neutralTerminals')]);
    if (needed <= has) return holds(say.bondHolds({ service: !fed }), measure);
    const bars = Math.ceil((needed - has) / GROUND_BAR_TERMINALS) - (fed ? GROUND_BARS_PLANNED : 0);
    const cure =
      bars > 0 ? [{ item: 'ground bar', quantity: bars, homeRuns: [], rule: 'GND-BOND', alternate: null }] : [];
    return extraWork(say.bondBars({ needed, has }), { ...measure, cure });
  },
};
