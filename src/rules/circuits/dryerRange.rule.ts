import type { Work } from '../../facts/work';
import { APPLIANCE_RECEPTACLES, DRYER_RANGE_GFCI } from '../../standards/editionsCircuits';
import { isKnown } from '../../units/types';
import { circuitWords as say } from '../../words/en/rulesCircuit';
import { cablesOf, circuitById, isExtended, pathTo, runOf } from '../reading';
import { cannotBeTold, doesNotApply, extraWork, type Rule, stops } from '../rule';
import { isRunAnew, threeWire, threeWirePaths, twoPole } from './threeWire';

/** A three-wire range or dryer circuit that is lengthened or run anew: four wires, a receptacle and a cord for them, and GFCI where the code year asks. */
export const dryerRange: Rule = {
  id: 'DRYER-RANGE',
  subjects: twoPole,
  check: (facts, subject) => {
    const { job, edition } = facts;
    const circuit = circuitById(job, subject);
    const v = { label: circuit.label };
    const homeRuns = cablesOf(job, subject).map((h) => h.id);
    const runs = homeRuns.flatMap((id) => runOf(facts, id) ?? []);
    const anew = isRunAnew(facts, circuit);
    if (!anew && !runs.some((r) => isExtended(r) || r.way === 'new home run')) return doesNotApply();
    const three = threeWire(job, circuit);
    if (three === false) return doesNotApply();
    if (!isKnown(three)) return cannotBeTold(say.rangeUnknown(v), say.threeWireLook(), threeWirePaths(job, circuit));
    if (!anew)
      return stops(say.rangeExtended(v), { remedies: [{ say: say.threeWireRemedy(), cents: null, work: [] }] });
    if (!isKnown(circuit.amps))
      return cannotBeTold(say.rangeUnknown(v), say.threeWireLook(), [pathTo(job, 'circuits', subject, 'amps')]);
    const gfci = DRYER_RANGE_GFCI[edition];
    const kind = APPLIANCE_RECEPTACLES.find((r) => r.amps === circuit.amps)?.receptacle;
    const work = (item: string): Work => ({ item, quantity: 1, homeRuns, rule: 'DRYER-RANGE', alternate: null });
    const cure =
      kind === undefined || circuit.hardWired === true ? [] : [work(`receptacle:${kind}`), work(`cord:${kind}`)];
    return extraWork(say.rangeNew({ ...v, gfci }), { cure });
  },
};
