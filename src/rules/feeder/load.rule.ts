import { isKnown } from '../../units/types';
import { panelWords as say } from '../../words/en/rulesPanel';
import { theNewPanel } from '../panel/serviceReading';
import { newPanel } from '../reading';
import { cannotBeTold, holds, type Rule, stops } from '../rule';
import { checkCable, feederApplies, feederCables, feederWaits } from './feederReading';

/** The calculated load is not over the device, the bus or what the feeder carries. */
export const load: Rule = {
  id: 'LOAD',
  subjects: theNewPanel,
  check: (facts) => {
    const { panel, path } = newPanel(facts);
    const { amps, missing } = facts.load;
    const fed = feederApplies(facts);
    const device = fed === true ? facts.feeder.breakerAmps : isKnown(panel.mainAmps) ? panel.mainAmps : null;
    const limits = [device, isKnown(panel.busAmps) ? panel.busAmps : null].filter((n) => n !== null);
    const waits = [
      ...(isKnown(amps) ? [] : missing),
      ...(isKnown(panel.busAmps) ? [] : [path('busAmps')]),
      ...(fed === true ? feederWaits(facts) : []),
      ...(fed === false && !isKnown(panel.mainAmps) ? [path('mainAmps')] : []),
      ...(isKnown(fed) ? [] : [path('role')]),
    ];
    const untold = cannotBeTold(say.loadUnknown(), say.loadLook(), waits);
    if (!isKnown(amps)) return untold;
    const most = Math.min(...limits);
    const remedies = [{ say: say.loadRemedy(), cents: null, work: [] }];
    const rounded = Math.round(amps);
    if (isKnown(fed) && limits.length > 0 && amps > most)
      return stops(say.loadFails({ amps: rounded, most }), { measured: amps, required: most, unit: 'A', remedies });
    const carried = fed === true ? feederCables(facts).map((cable) => checkCable(facts, cable, amps, amps)) : [];
    const failing = carried.find((c) => c?.outcome === 'fails');
    if (failing)
      return stops(say.loadFails({ amps: rounded, most: failing.ampacity }), {
        measured: amps,
        required: failing.ampacity,
        unit: 'A',
        remedies,
      });
    if (!isKnown(fed) || device === null || !isKnown(panel.busAmps) || carried.some((c) => c?.outcome !== 'holds'))
      return untold;
    return holds(say.loadHolds({ amps: rounded, most }), { measured: amps, required: most, unit: 'A' });
  },
};
