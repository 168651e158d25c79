import type { Work } from '../../facts/work';
import type { Cable } from '../../standards/cable';
import { cableName } from '../../standards/cableNames';
import type { RuleId } from '../../standards/sections';
import { isKnown } from '../../units/types';
import { panelWords as say } from '../../words/en/rulesPanel';
import { cannotBeTold, extraWork, type FactsInYear, holds, type Says, stops } from '../rule';
import { checkCable, feederWaits } from './feederReading';

/**
 * Conductors against the device in front of them, without the load: LOAD looks at that, and at what the conductors
 * carry. A device too large is cured by a smaller one at the source, at the strictest reading of what is not known.
 */
export const sizing = (facts: FactsInYear, cables: readonly Cable[], rule: RuleId, cures: boolean): Says => {
  const device = facts.feeder.breakerAmps;
  const untold = cannotBeTold(say.feederUnknown(), say.feederLook(), feederWaits(facts));
  if (device === null) return untold;
  const checks = cables.map((cable) => ({ cable, answer: checkCable(facts, cable, device, 0) }));
  const failing = checks.find(({ answer }) => answer?.outcome === 'fails');
  if (failing?.answer) {
    const known = checks.flatMap(({ answer }) => (answer ? [answer.breakerMax] : []));
    const most = Math.min(...known);
    const v = { cable: cableName(failing.cable), breaker: device, most };
    const measure = { measured: device, required: most, unit: 'A' };
    const item = `feeder breaker:2p ${most}`;
    const smaller: Work = { item, quantity: 1, homeRuns: [], rule, alternate: null };
    const remedies = [
      { say: say.feederSmallerBreaker({ amps: most }), cents: null, work: [smaller] },
      { say: say.feederNew(), cents: null, work: [] },
    ];
    const text = rule === 'FDR-2AL' ? say.twoAlFails(v) : say.feederFails(v);
    return most > 0
      ? extraWork(text, { ...measure, remedies, cure: cures ? [smaller] : [] })
      : stops(text, { ...measure, remedies: remedies.slice(1) });
  }
  if (checks.some(({ answer }) => answer?.outcome !== 'holds') || cables.some((c) => !isKnown(c.kind))) return untold;
  const most = Math.min(...checks.map(({ answer }) => answer!.breakerMax));
  return holds(
    rule === 'FDR-2AL'
      ? say.twoAlHolds({ breaker: device, most })
      : say.feederHolds({ cable: cables.map(cableName).join(' + '), breaker: device }),
    { measured: device, required: most, unit: 'A' },
  );
};
