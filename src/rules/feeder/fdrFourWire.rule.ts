import { FEEDER_WIRES } from '../../standards/editionsService';
import { isKnown } from '../../units/types';
import { panelWords as say } from '../../words/en/rulesPanel';
import { rolePaths } from '../panel/serviceReading';
import { cannotBeTold, doesNotApply, holds, type Rule, stops } from '../rule';
import { feederApplies, theFeeder } from './feederReading';

/** Two hots, an insulated neutral and an EGC, which a metal raceway may be. */
export const fdrFourWire: Rule = {
  id: 'FDR-4W',
  subjects: theFeeder,
  check: (facts) => {
    const { feeder, job, edition } = facts;
    const applies = feederApplies(facts);
    if (applies === false) return doesNotApply();
    const anew = feeder.way === 'replaced';
    const { neutral, ground } = anew ? feeder.cable : job.feeder.cable;
    const raceway = anew ? 'none' : job.feeder.raceway;
    const wires = anew ? FEEDER_WIRES[edition] : job.feeder.wires;
    const remedies = [{ say: say.feederNew(), cents: null, work: [] }];
    const inMetal = raceway === 'metal';
    const noRaceway = isKnown(raceway) && !inMetal;
    const lacks =
      neutral === 'bare' ||
      neutral === 'none' ||
      (noRaceway && (ground === false || (isKnown(wires) && wires < FEEDER_WIRES[edition])));
    if (isKnown(applies) && lacks) return stops(say.fourWireFails(), { look: say.fourWireLook(), remedies });
    const waits = [
      ...(isKnown(neutral) ? [] : ['/feeder/cable/neutral']),
      ...(inMetal || isKnown(ground) ? [] : ['/feeder/cable/ground']),
      ...(inMetal || isKnown(wires) ? [] : ['/feeder/wires']),
      ...(noRaceway || inMetal || (ground === true && wires === FEEDER_WIRES[edition]) ? [] : ['/feeder/raceway']),
    ];
    if (!isKnown(applies) || waits.length > 0)
      return cannotBeTold(say.fourWireUnknown(), say.fourWireLook(), [
        ...waits,
        ...(isKnown(applies) ? [] : rolePaths(facts)),
      ]);
    return holds(say.fourWireHolds());
  },
};
