import { panelSlots } from '../calculations/panelSlots';
import { splitPhases } from '../calculations/phaseSplit';
import type { Circuit } from '../job/schema';
import { type Id, isKnown } from '../units/types';
import type { Breaker } from './breakers';

export interface LegChoice {
  /** Leg of each single-pole breaker. */
  readonly legs: ReadonlyMap<Id, 'A' | 'B'>;
  /** Shared-neutral pairs whose second circuit stands on leg A. */
  readonly turned: ReadonlySet<Id>;
  /** VA on each leg, of the loads that are entered. */
  readonly legA: number;
  readonly legB: number;
}

/** Only entered loads count: a guess would be false precision. Where nothing is entered breakers are spread evenly. */
const va = (c: Circuit): number => (isKnown(c.va) ? c.va : 0);
const sum = (list: readonly Circuit[]): number => list.reduce((n, c) => n + va(c), 0);

/**
 * Single poles and shared-neutral pairs spread over the two legs as evenly as they can be; a 240 V load stands half on
 * each. `surge` = surge devices, which take a space of each leg.
 */
export const chooseLegs = (breakers: readonly Breaker[], spaces: number, surge: number): LegChoice => {
  const singles = breakers.filter((b) => b.poles === 1);
  const pairs = breakers.filter((b) => b.circuits.length === 2);
  const both = breakers.filter((b) => b.poles === 2 && b.circuits.length === 1);
  const slots = panelSlots(spaces);
  const twos = pairs.length + both.length + surge;
  const task = {
    singles: singles.map((b) => ({ id: b.id, va: sum(b.circuits) })),
    pairs: pairs.map((b) => ({ id: b.id, va: [va(b.circuits[0]!), va(b.circuits[1]!)] as const })),
  };
  const half = Math.ceil(singles.length / 2);
  // too small a panel is the SPACES rule's finding, not a reason to stop
  const split =
    splitPhases({ ...task, placesA: slots.legA - twos, placesB: slots.legB - twos }) ??
    splitPhases({ ...task, placesA: half, placesB: half });
  const onA = split?.onA ?? new Set<Id>();
  const turned = split?.turned ?? new Set<Id>();
  const legA =
    singles.filter((b) => onA.has(b.id)).reduce((n, b) => n + sum(b.circuits), 0) +
    pairs.reduce((n, b) => n + va(b.circuits[turned.has(b.id) ? 1 : 0]!), 0) +
    both.reduce((n, b) => n + sum(b.circuits) / 2, 0);
  return {
    legs: new Map(singles.map((b) => [b.id, onA.has(b.id) ? 'A' : 'B'])),
    turned,
    legA,
    legB: breakers.reduce((n, b) => n + sum(b.circuits), 0) - legA,
  };
};
