import { egcFor } from '../../calculations/egc';
import { bareConductorOf } from '../../standards/editionsFeeder';
import { compareSizes } from '../../standards/sizes';
import { isBeyond } from '../../standards/source';
import { isKnown } from '../../units/types';
import { panelWords as say } from '../../words/en/rulesPanel';
import { rolePaths } from '../panel/serviceReading';
import { cannotBeTold, doesNotApply, holds, type Rule, stops } from '../rule';
import { feederApplies, feederCables, theFeeder } from './feederReading';

/** The feeder's EGC is at least what the device in front of it asks for. */
export const fdrEgc: Rule = {
  id: 'FDR-EGC',
  subjects: theFeeder,
  check: (facts) => {
    const { job, feeder, edition } = facts;
    const applies = feederApplies(facts);
    if (applies === false) return doesNotApply();
    const kept = feeder.way !== 'replaced';
    const device = feeder.breakerAmps;
    const untold = (waits: readonly string[]) => cannotBeTold(say.egcUnknown(), say.egcLook(), waits);
    if (!isKnown(applies)) return untold(rolePaths(facts));
    if (kept && job.feeder.raceway === 'metal') return holds(say.egcRaceway());
    const keys = (['kind', 'size', 'metal', 'ground'] as const).filter((k) => kept && !isKnown(job.feeder.cable[k]));
    const waits = [
      ...keys.map((key) => `/feeder/cable/${key}`),
      ...(device === null ? ['/feeder/from/breakerAmps'] : []),
      ...(kept && !isKnown(job.feeder.raceway) ? ['/feeder/raceway'] : []),
    ];
    const cables = feederCables(facts);
    // Without an EGC at all FDR-4W has said what there is to say.
    if (cables.some((cable) => cable.ground === false)) return waits.length > 0 ? untold(waits) : doesNotApply();
    if (waits.length > 0 || device === null) return untold(waits);
    const sizes = cables.flatMap((cable) => {
      const has = bareConductorOf(cable);
      const { metal, size } = cable;
      if (has === null || !isKnown(metal) || !isKnown(size)) return [];
      const least = egcFor(metal, device, size, null, edition).size;
      return isBeyond(least) ? [] : [{ has, least, metal }];
    });
    if (sizes.length < cables.length) return untold([]);
    const v = [...sizes].sort((a, b) => compareSizes(a.has, b.has))[0]!;
    return compareSizes(v.has, v.least) < 0
      ? stops(say.egcFails(v), { remedies: [{ say: say.feederNew(), cents: null, work: [] }] })
      : holds(say.egcHolds(v));
  },
};
