import type { Work } from '../../facts/work';
import type { Cable } from '../../standards/cable';
import { cableName } from '../../standards/cableNames';
import { HIGHER_MARKING } from '../../standards/editionsService';
import type { RuleId } from '../../standards/sections';
import { isKnown } from '../../units/types';
import { panelWords as say } from '../../words/en/rulesPanel';
import { newPanel } from '../reading';
import { cannotBeTold, extraWork, type FactsInYear, holds, type Says, stops } from '../rule';
import { bothEnds, carriesOf, checkCable, feederWaits } from './feederReading';

const knownLoad = ({ load }: FactsInYear): number => (isKnown(load.amps) ? load.amps : load.least);

const nameOf = (cable: Cable, rule: RuleId): string => (rule === 'FDR-2AL' ? say.twoAl() : cableName(cable));

/** What a cable carries by the marking of its ends, and which facts keep the device from being judged; null where the cable is not known. */
const untoldOf = (facts: FactsInYear, cable: Cable, rule: RuleId): string | null => {
  const at = carriesOf(facts, cable);
  if (at.length === 0) return null;
  const { job, feeder } = facts;
  const marking = bothEnds(facts);
  const unread = [
    ...(isKnown(marking) || isKnown(job.feeder.from.lugs) ? [] : [say.unreadMarking({ where: say.atSource() })]),
    ...(isKnown(marking) || isKnown(newPanel(facts).panel.lugs) ? [] : [say.unreadMarking({ where: say.atPanel() })]),
    ...(isKnown(job.feeder.wholeDwelling) ? [] : [say.unreadWhole()]),
    ...(isKnown(cable.kind) && isKnown(cable.insulation) ? [] : [say.unreadJacket()]),
    ...(feeder.breakerAmps === null ? [say.unreadBreaker()] : []),
  ];
  return `${say.feederCarries({ cable: nameOf(cable, rule), at })} ${say.feederUntold({ unread, breaker: feeder.breakerAmps })}`;
};

/**
 * The breaker that cures it: with the marking of the ends not read, the larger one they may allow is named too. One
 * that the load is known to exceed cures nothing: the feeder is replaced.
 */
const smallerBreaker = (facts: FactsInYear, cables: readonly Cable[], most: number): string => {
  const better = cables.map((cable) => carriesOf(facts, cable).find(({ column }) => column === HIGHER_MARKING)?.most);
  const best = Math.min(...better.map((amps) => amps ?? most));
  const byMarking = best > most && !isKnown(bothEnds(facts));
  const known = knownLoad(facts);
  if (known > most) {
    const amps = byMarking ? best : most;
    return byMarking && known <= best
      ? say.feederOnlyByMarking({ column: HIGHER_MARKING, best, amps: most, load: Math.floor(known) })
      : say.feederNoSmaller({ amps, load: Math.floor(known) });
  }
  return byMarking
    ? say.feederSmallerByMarking({ column: HIGHER_MARKING, best, amps: most })
    : say.feederSmallerBreaker({ amps: most });
};

/**
 * Conductors against the device in front of them, without the load: LOAD looks at that, and at what the conductors
 * carry. A device too large is cured by a smaller one at the source, at the strictest reading of what is not known.
 */
export const sizing = (facts: FactsInYear, cables: readonly Cable[], rule: RuleId, cures: boolean): Says => {
  const device = facts.feeder.breakerAmps;
  const untold = (doubtful: Cable | undefined) =>
    cannotBeTold(
      (doubtful && untoldOf(facts, doubtful, rule)) ?? say.feederUnknown(),
      say.feederLook(),
      feederWaits(facts),
    );
  if (device === null) return untold(cables[0]);
  const checks = cables.map((cable) => ({ cable, answer: checkCable(facts, cable, device, 0) }));
  const failing = checks.find(({ answer }) => answer?.outcome === 'fails');
  if (failing?.answer) {
    const known = checks.flatMap(({ answer }) => (answer ? [answer.breakerMax] : []));
    const most = Math.min(...known);
    const cable = nameOf(failing.cable, rule);
    const carries = say.feederCarries({ cable, at: carriesOf(facts, failing.cable) });
    const measure = { measured: device, required: most, unit: 'A' };
    const carriesLoad = knownLoad(facts) <= most;
    const item = `feeder breaker:2p ${most}`;
    const smaller: Work = { item, quantity: 1, homeRuns: [], rule, alternate: null };
    const anew = { say: say.feederNew(), cents: null, work: [] };
    const cure = { say: smallerBreaker(facts, cables, most), cents: null, work: carriesLoad ? [smaller] : [] };
    const text =
      rule === 'FDR-2AL'
        ? say.twoAlFails({ breaker: device, carries })
        : say.feederFails({ cable, breaker: device, most });
    return most > 0 && carriesLoad
      ? extraWork(text, { ...measure, remedies: [cure, anew], cure: cures ? [smaller] : [] })
      : stops(text, { ...measure, remedies: [most > 0 ? cure : anew] });
  }
  const doubtful = checks.find(({ cable, answer }) => answer?.outcome !== 'holds' || !isKnown(cable.kind));
  if (doubtful) return untold(doubtful.cable);
  const most = Math.min(...checks.map(({ answer }) => answer!.breakerMax));
  return holds(
    rule === 'FDR-2AL'
      ? say.twoAlHolds({ breaker: device, most })
      : say.feederHolds({ cable: cables.map(cableName).join(' + '), breaker: device }),
    { measured: device, required: most, unit: 'A' },
  );
};
