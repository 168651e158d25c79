import type { Leg } from '../facts/result';
import type { Cable } from '../standards/cable';
import type { In, Pt3 } from '../units/types';
import { distance3 } from './cutLength';
import { joistCrossings } from './holes';
import type { Member } from './legsMembers';
import type { Counted } from './pricer';
import type { Share } from './share';
import { supportsOf } from './supports';
import type { Network } from './types';

/** What a cable's own way takes, counted from its legs alone and as if it ran alone. */
export interface LegWork {
  /** Inches outside boxes and panels. */
  readonly length: In;
  /** Joists bored. */
  readonly holes: number;
  /** Top plates and studs bored, and joists behind opened drywall. */
  readonly plateHoles: number;
  readonly supports: number;
  readonly board: In;
  readonly sleeve: In;
  readonly patch: In;
  readonly tile: In;
}

const NEAR = 0.01;
const isOn = (p: Pt3, leg: Leg) => distance3(leg.from, p) + distance3(p, leg.to) < distance3(leg.from, leg.to) + NEAR;

export const legWorkOf = (
  network: Pick<Network, 'frame' | 'framing'>,
  legs: readonly Leg[],
  members: readonly Member[],
  startsAtEntry: boolean,
  kind: Cable['kind'],
): LegWork => {
  const drywall = legs.filter((leg) => leg.by === 'opened drywall');
  const plateHoles = members.filter((m) => m.kind !== 'joist' || drywall.some((leg) => isOn(m.at, leg))).length;
  const sum = { length: 0, holes: 0, board: 0, sleeve: 0, patch: 0, tile: 0 };
  for (const leg of legs) {
    if (leg.by === 'inside box' || leg.by === 'inside panel') continue;
    const length = distance3(leg.from, leg.to);
    sum.length += length;
    switch (leg.by) {
      case 'through joists':
        sum.holes += joistCrossings(network, leg.from, leg.to).length;
        break;
      case 'running board':
        sum.board += length;
        break;
      case 'sleeve':
        sum.sleeve += length;
        break;
      case 'opened drywall':
        sum.patch += length;
        break;
      case 'above lay-in':
        sum.tile += length;
        break;
      default:
    }
  }
  return { ...sum, plateHoles, supports: supportsOf(legs, startsAtEntry, kind) };
};

/** The same as items of work that cables on one way share, at the share the sweeps charge. */
export const sharedItems = (w: LegWork, share: Share): Counted[] =>
  [
    { item: 'hole', quantity: (w.holes + w.plateHoles) / share.hole },
    { item: 'running board', quantity: w.board / 12 / share.board },
    { item: 'patch', quantity: w.patch / 12 / share.patch },
    { item: 'lift tile', quantity: w.tile / 12 / share.tile },
  ].filter((x) => x.quantity > 0);

/** Items a cable needs for itself alone along its way. */
export const ownItems = (w: LegWork): Counted[] =>
  [
    { item: 'staple', quantity: w.supports },
    { item: 'sleeve', quantity: w.sleeve / 12 },
  ].filter((x) => x.quantity > 0);
