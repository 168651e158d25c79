import type { Leg } from '../facts/result';
import type { Cable } from '../standards/cable';
import type { In, Pt3 } from '../units/types';
import { distance3 } from './cutLength';
import type { Member } from './legsMembers';
import type { Counted } from './pricer';
import { supportsOf } from './supports';

/** What a cable's way takes that is its own, counted from its legs alone. */
export interface LegWork {
  /** Top plates and studs bored, and joists behind opened drywall. */
  readonly plateHoles: number;
  readonly supports: number;
  readonly sleeve: In;
}

const NEAR = 0.01;
const isOn = (p: Pt3, leg: Leg) => distance3(leg.from, p) + distance3(p, leg.to) < distance3(leg.from, leg.to) + NEAR;

export const legWorkOf = (
  legs: readonly Leg[],
  members: readonly Member[],
  startsAtEntry: boolean,
  kind: Cable['kind'],
): LegWork => {
  const drywall = legs.filter((leg) => leg.by === 'opened drywall');
  const plateHoles = members.filter((m) => m.kind !== 'joist' || drywall.some((leg) => isOn(m.at, leg))).length;
  const sleeve = legs.reduce((sum, leg) => sum + (leg.by === 'sleeve' ? distance3(leg.from, leg.to) : 0), 0);
  return { plateHoles, supports: supportsOf(legs, startsAtEntry, kind), sleeve };
};

/** Items a cable needs for itself alone along its way. */
export const ownItems = (w: LegWork): Counted[] =>
  [
    { item: 'staple', quantity: w.supports },
    { item: 'sleeve', quantity: w.sleeve / 12 },
  ].filter((x) => x.quantity > 0);
