import { isKnown } from '../../units/types';
import { panelWords as say } from '../../words/en/rulesPanel';
import { newPanel } from '../reading';
import { cannotBeTold, type FactsInYear, holds, type Rule, stops } from '../rule';
import { isFeederFed, theNewPanel } from './serviceReading';

/** Ratings of the devices that stand in front of the bus: the main, where there is one, and the feeder's breaker. */
const devices = (facts: FactsInYear): { known: number[]; waits: string[] } => {
  const { panel, path } = newPanel(facts);
  const fed = isFeederFed(facts);
  const feeder = fed === true ? facts.feeder.breakerAmps : null;
  const noBreaker = fed === true && feeder === null;
  return {
    known: [
      ...(isKnown(panel.mainAmps) && panel.mainAmps !== null ? [panel.mainAmps] : []),
      ...(feeder === null ? [] : [feeder]),
    ],
    waits: [
      ...(isKnown(panel.mainAmps) ? [] : [path('mainAmps')]),
      ...(isKnown(fed) ? [] : [path('role')]),
      ...(noBreaker ? ['/feeder/from/breakerAmps'] : []),
    ],
  };
};

/** The bus is protected at its rating or below, in the panel or ahead of it. */
export const ocpdPanel: Rule = {
  id: 'OCPD-PANEL',
  subjects: theNewPanel,
  check: (facts) => {
    const { panel, path } = newPanel(facts);
    const { known, waits } = devices(facts);
    const bus = panel.busAmps;
    const remedies = [{ say: say.ocpdRemedy(), cents: null, work: [] }];
    if (!isKnown(bus)) return cannotBeTold(say.ocpdUnknown(), say.ocpdLook(), [path('busAmps'), ...waits]);
    const amps = known.length > 0 ? Math.min(...known) : null;
    // One device that is small enough protects the bus whatever the other may be.
    if (amps !== null && amps <= bus)
      return holds(say.ocpdHolds({ amps, bus }), { measured: amps, required: bus, unit: 'A' });
    if (waits.length > 0) return cannotBeTold(say.ocpdUnknown(), say.ocpdLook(), waits);
    if (amps === null) return stops(say.ocpdNone(), { remedies });
    return stops(say.ocpdFails({ amps, bus }), { measured: amps, required: bus, unit: 'A', remedies });
  },
};
