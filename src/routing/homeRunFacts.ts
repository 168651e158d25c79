import type { RowCable } from '../calculations/cableRows';
import { toPointer } from '../job/pointer';
import type { CableGroup, Circuit, Enclosure, HomeRun, Job, Option, Tails } from '../job/schema';
import { visibleRun } from '../job/site';
import type { Cable } from '../standards/cable';
import { cableItem } from '../standards/cableNames';
import { connectorToOrder } from '../standards/connectors';
import { BARE_NEUTRAL_ON_SUBPANEL } from '../standards/editionsCircuits';
import { isThreeWire } from '../standards/threeWire';
import { compareText } from '../units/order';
import type { Id, In, Pt3, U } from '../units/types';
import { isKnown } from '../units/types';
import { shortestTail } from './cutIn';
import { lengthAlong } from './cutLength';
import { conductorsOf, newCableFor } from './newHomeRun';
import type { SpliceLoad } from './packing';
import type { Assumed } from './types';

/** A home run with what the survey says of it and what continues it. */
export interface HomeRunFacts {
  readonly id: Id;
  readonly homeRun: HomeRun;
  readonly group: CableGroup;
  readonly circuits: readonly Circuit[];
  readonly path: readonly Pt3[];
  readonly pathLength: In;
  readonly pivot: U<In>;
  readonly tails: U<Tails>;
  /** Shortest free conductor in the old can; unknown counts as none. */
  readonly tail: In;
  readonly can: Enclosure | undefined;
  /** What the option makes of its old panel; null = the option leaves that panel alone. */
  readonly becomes: Option['replaces'][number]['becomes'] | null;
  readonly newCable: Cable;
  /** Cables of one type share routes and prices. */
  readonly type: string;
  readonly conductors: number;
  readonly load: SpliceLoad;
  /** An old three-wire range or dryer cable: new conductors all the way, always or as soon as it is lengthened. */
  readonly runAnew: 'never' | 'when lengthened' | 'always';
  /** Largest breaker of its circuits; unknown if any is. */
  readonly amps: U<number>;
  /** Equal for home runs whose way, tail and reachable part are the same. */
  readonly alike: string;
  readonly assumed: readonly Assumed[];
}

const loadOf = (old: Cable, fresh: Cable): SpliceLoad => {
  const awg = isKnown(old.size) ? old.size : (fresh.size as string);
  const conductors = [
    { awg, count: conductorsOf(old) },
    { awg: fresh.size as string, count: conductorsOf(fresh) },
  ];
  const grounds = [...(old.ground === false ? [] : [{ awg, count: 1 }]), { awg: fresh.size as string, count: 1 }];
  const connectors = [connectorToOrder(old), connectorToOrder(fresh)];
  const text = (list: readonly { awg: string; count: number }[]) => list.map((c) => `${c.count}x${c.awg}`).join('+');
  return { key: `${text(conductors)} g ${text(grounds)} c ${connectors.join('+')}`, conductors, grounds, connectors };
};

/**
 * 250.140 excuses a range's or dryer's three wires only in the circuit that exists: lengthened it needs four. A bare
 * neutral may not come from a subpanel, save as the code years since 2023 let it be covered there.
 */
const runAnewOf = (job: Job, option: Option, { cable }: HomeRun, circuits: readonly Circuit[]) => {
  const appliance = circuits.length === 1 && circuits[0]!.poles === 2 && circuits[0]!.partner === null;
  if (!appliance || isThreeWire(cable) !== true) return 'never';
  const { edition } = job.code;
  const onSubpanel = option.enclosure.role === 'feeder-fed';
  const barred = isKnown(edition) && BARE_NEUTRAL_ON_SUBPANEL[edition] === 'not allowed';
  return cable.neutral === 'bare' && onSubpanel && barred ? 'always' : 'when lengthened';
};

export const factsOf = (job: Job, option: Option, homeRun: HomeRun): HomeRunFacts | null => {
  const seen = visibleRun(job, homeRun.id);
  if (!seen) return null;
  const { group, path, pivot, tails } = seen;
  const fresh = newCableFor(job, homeRun);
  const at = job.homeRuns.indexOf(homeRun);
  const circuits = job.circuits.filter((c) => homeRun.circuits.includes(c.id)).sort((a, b) => compareText(a.id, b.id));
  const tail = shortestTail(tails, homeRun.cable);
  return {
    id: homeRun.id,
    homeRun,
    group,
    circuits,
    path,
    pathLength: lengthAlong(path),
    pivot,
    tails,
    tail,
    alike: JSON.stringify([path, tail, group.reachable, group.drawsBack]),
    can: job.enclosures.find((e) => e.id === group.enclosure),
    becomes: option.replaces.find((r) => r.enclosure === group.enclosure)?.becomes ?? null,
    newCable: fresh.cable,
    type: cableItem(fresh.cable),
    conductors: conductorsOf(homeRun.cable),
    load: loadOf(homeRun.cable, fresh.cable),
    runAnew: runAnewOf(job, option, homeRun, circuits),
    amps: circuits.some((c) => !isKnown(c.amps)) ? 'unknown' : Math.max(0, ...circuits.map((c) => c.amps as number)),
    assumed: fresh.assumed.map((a) => ({ path: toPointer(['homeRuns', at, 'cable', a.field]), value: a.value })),
  };
};

export const rowCableOf =
  (f: HomeRunFacts) =>
  (which: 'old' | 'new'): RowCable => ({ cable: which === 'old' ? f.homeRun.cable : f.newCable, amps: f.amps });
