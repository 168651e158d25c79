import type { Leg, Reach } from '../facts/result';
import type { Job, Option, Practice, Way } from '../job/schema';
import type { Cable } from '../standards/cable';
import { connectorToOrder } from '../standards/connectors';
import { compareSizes, isSize } from '../standards/sizes';
import type { Mills } from '../units/money';
import { type Id, type In, isKnown, type Pt3 } from '../units/types';
import { codeLengthOf, cutLengthOf, HIDDEN_SLACK_SHARE, oldPathOf } from './cutLength';
import { joistHoles } from './holes';
import type { HomeRunFacts } from './homeRunFacts';
import { ownItems } from './legWork';
import type { Counted, Pricer } from './pricer';
import type { Way3 } from './routes';
import { COST_PER_MILL, type Network } from './types';

/** One way for one home run, worked out in full and priced as if it ran alone. */
export interface Candidate {
  /** Stable text: decides ties. */
  readonly id: string;
  readonly way: Way;
  /** Splice spot it needs: 'box <place>' or 'can <id>'; null = none. */
  readonly spot: string | null;
  /** A cut-in into a box of its own making, to be packed with others. */
  readonly needsBox: boolean;
  readonly reach: Reach | null;
  readonly cutIn: Pt3 | null;
  readonly newCable: Cable | null;
  readonly legs: readonly Leg[];
  readonly codeLength: In;
  readonly codeLengthWithTails: In;
  readonly cutLength: In;
  readonly holes: number;
  readonly plateHoles: number;
  readonly supports: number;
  readonly conductorsSpliced: number;
  /** Work of this home run alone. */
  readonly own: readonly Counted[];
  /** Work that stands in no list of routing's but changes with the way: plan/ counts it. Steers the choice. */
  readonly beside: readonly Counted[];
  readonly mills: Mills;
  /** Its part of what is shared, in `mills`. */
  readonly sharedMills: Mills;
  readonly why: string;
  readonly blockedBy: readonly Id[];
}

/** What every way is worked out with. */
export interface Terms {
  readonly job: Job;
  readonly option: Option;
  readonly practice: Practice;
  readonly pricer: Pricer;
  readonly racewayCounts: boolean;
  readonly network: Network;
}

export const item = (name: string, quantity: number): Counted => ({ item: name, quantity });

const LARGE_FROM = '8';
/** Joints of a cable, counted in pairs of insulated conductors; aluminum or unknown metal takes listed connectors. */
export const splices = (f: HomeRunFacts, conductors = f.conductors): Counted => {
  const { size, metal } = f.homeRun.cable;
  const large = isKnown(size) && isSize(size) && compareSizes(size, LARGE_FROM) >= 0;
  const name = large ? 'splice large' : metal === 'Cu' ? 'splice' : 'splice Al';
  return item(name, conductors / 2);
};

/** Testing and tracing that plan/ adds for every cable that is joined or replaced. */
export const besideSpliced = (f: HomeRunFacts): Counted[] => [
  item('pre-test', 1),
  ...(f.homeRun.traced ? [] : [item('trace', 1)]),
];

/** New cable along a way: cut, pulled, stapled, entered into the panel. `free`: what stays inside at its ends. */
export const newCableItems = (
  f: HomeRunFacts,
  path: In,
  cutLength: In,
  staples: readonly Counted[],
  entries = 1,
): Counted[] => [
  item(f.type, cutLength / 12),
  item('pull', 1),
  item('pull ft', path / 12),
  ...staples,
  item(`connector:${connectorToOrder(f.newCable)}`, entries),
];

interface Parts {
  readonly way: Way;
  readonly id: string;
  readonly spot?: string | null;
  readonly needsBox?: boolean;
  readonly reach?: Reach | null;
  readonly cutIn?: Pt3 | null;
  readonly newCable?: Cable | null;
  readonly stretches: readonly Way3[];
  readonly inside?: readonly Leg[];
  /** Cable hidden in the house beyond the visible legs. */
  readonly hidden?: In;
  /** Conductor left free inside boxes and panel; null = no new cable. */
  readonly free?: In | null;
  readonly conductorsSpliced?: number;
  /** Work for so much path and new cable; what old cable, staples and sleeves take is counted from the stretches. */
  readonly own: (path: In, cutLength: In) => readonly Counted[];
  readonly beside?: readonly Counted[];
  readonly why: string;
  readonly blockedBy?: readonly Id[];
}

/**
 * Puts a candidate together from its stretches, its work re-measured and counted from the legs. What it weighs in the
 * choice is what the search found, to the 1/128 mill, and what does not hang on the way: whole staples and lengths
 * rounded up to the crew's step would make equal ways unequal by a few cents, one way in a mirrored house and another
 * in this one.
 */
export const candidate = (terms: Terms, p: Parts): Candidate => {
  const legs = [...p.stretches.flatMap((s) => s.legs), ...(p.inside ?? [])];
  const hidden = p.hidden ?? 0;
  const free = p.free ?? null;
  const path = codeLengthOf(legs);
  const codeLength = free === null ? 0 : codeLengthOf(legs, terms.racewayCounts) + hidden;
  const cutLength = free === null ? 0 : cutLengthOf(path, free, terms.practice, hidden);
  const sum = (of: (s: Way3) => number) => p.stretches.reduce((n, s) => n + of(s), 0);
  const moved = oldPathOf(p.stretches.flatMap((s) => s.legs));
  const own = [
    ...p.own(path + hidden, cutLength),
    ...(moved > 0 ? [item('pull ft', moved / 12)] : []),
    ...p.stretches.flatMap((s) => ownItems(s.work)),
  ];
  const beside = p.beside ?? [];
  const inside = free === null ? 0 : free + hidden * (1 + Math.max(terms.practice.slackShare, HIDDEN_SLACK_SHARE));
  const apart = terms.pricer.cost([...p.own(hidden, inside), ...beside]);
  return {
    id: p.id,
    way: p.way,
    spot: p.spot ?? null,
    needsBox: p.needsBox ?? false,
    reach: p.reach ?? null,
    cutIn: p.cutIn ?? null,
    newCable: p.newCable ?? null,
    legs,
    codeLength,
    codeLengthWithTails: free === null ? 0 : codeLength + free,
    cutLength,
    holes: joistHoles(terms.network, legs).length,
    plateHoles: sum((s) => s.work.plateHoles),
    supports: sum((s) => s.work.supports),
    conductorsSpliced: p.conductorsSpliced ?? 0,
    own,
    beside,
    mills: apart + Math.round(sum((s) => s.cost) / COST_PER_MILL),
    sharedMills: Math.round(sum((s) => s.shared) / COST_PER_MILL),
    why: p.why,
    blockedBy: p.blockedBy ?? [],
  };
};
