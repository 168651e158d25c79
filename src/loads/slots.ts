import { legOfSpace } from '../calculations/panelSlots';
import { LEG_BAND_VA } from '../standards/insideCan';
import type { Id } from '../units/types';
import { assignment } from './assignment';

type Leg = 'A' | 'B';
export interface Placing {
  readonly id: Id;
  /** VA of a single pole; of a two-pole unit no matter. */
  readonly va: number;
  /** Hot conductor to each space, inches. */
  readonly tail: (space: number) => number;
}
export interface Placed {
  /** Spaces of each unit that found some: two of a two-pole, one of a single pole. */
  readonly at: ReadonlyMap<Id, readonly number[]>;
  readonly legs: ReadonlyMap<Id, Leg>;
}

/** Tails that differ by less are one to the crew; the lower space is taken then. */
const TIE = 1e-6;

/** Pairs of spaces one under the other, taken two rows by two, so that none is left over between two of them. */
const pairsOf = (spaces: number): (readonly [number, number])[] =>
  Array.from({ length: spaces }, (_, i) => i + 1)
    .filter((s) => Math.ceil(s / 2) % 2 === 1 && s + 2 <= spaces)
    .map((s) => [s, s + 2]);

const nearest = (units: readonly Placing[], spaces: readonly number[]): Map<Id, number> => {
  const some = units.slice(0, spaces.length);
  const cost = some.map((u) => spaces.map((s) => u.tail(s) + TIE * s));
  return new Map(assignment(cost).map((column, i) => [some[i]!.id, spaces[column]!]));
};

/** Single poles of the two legs change places where that shortens their tails and leaves the legs within the band. */
const exchange = (singles: readonly Placing[], at: Map<Id, number>, differsVA: number): number => {
  const limit = Math.max(Math.abs(differsVA), LEG_BAND_VA);
  let differs = differsVA;
  const onLeg = (leg: Leg) => singles.filter((u) => at.has(u.id) && legOfSpace(at.get(u.id)!) === leg);
  for (const a of onLeg('A'))
    for (const b of onLeg('B')) {
      const [sa, sb] = [at.get(a.id)!, at.get(b.id)!];
      if (legOfSpace(sa) !== 'A' || legOfSpace(sb) !== 'B') continue;
      const after = differs - 2 * (a.va - b.va);
      const saved = a.tail(sa) + b.tail(sb) - a.tail(sb) - b.tail(sa);
      if (saved <= TIE || Math.abs(after) > limit) continue;
      at.set(a.id, sb);
      at.set(b.id, sa);
      differs = after;
    }
  return differs;
};

const ROUNDS = 4;

/**
 * Spaces for a panel's units by the shortest conductors: two-pole units first, in the order given, then single poles
 * each on its leg, then exchanges between the legs as far as the balance allows. `differsVA` = leg A less leg B.
 */
export const placeUnits = (
  spaces: number,
  doubles: readonly Placing[],
  singles: readonly Placing[],
  wished: ReadonlyMap<Id, Leg>,
  differsVA: number,
): Placed => {
  const pairs = pairsOf(spaces);
  const inPairs = doubles.slice(0, pairs.length);
  const cost = inPairs.map((u) => pairs.map(([s, t]) => (u.tail(s) + u.tail(t)) / 2 + TIE * s));
  const at = new Map<Id, readonly number[]>(assignment(cost).map((p, i) => [inPairs[i]!.id, pairs[p]!]));
  const used = new Set([...at.values()].flat());
  const free = Array.from({ length: spaces }, (_, i) => i + 1).filter((s) => !used.has(s));
  const freeOn = (leg: Leg) => free.filter((s) => legOfSpace(s) === leg);
  const wishing = (leg: Leg) => singles.filter((u) => (wished.get(u.id) ?? 'A') === leg);
  const one = new Map<Id, number>([...nearest(wishing('A'), freeOn('A')), ...nearest(wishing('B'), freeOn('B'))]);
  // a leg with more breakers than spaces lends what is over to the other
  const left = singles.filter((u) => !one.has(u.id));
  const still = new Set(one.values());
  for (const [id, s] of nearest(
    left,
    free.filter((s) => !still.has(s)),
  ))
    one.set(id, s);

  let differs = differsVA;
  for (let round = 0; round < ROUNDS; round++) {
    const before = new Map(one);
    differs = exchange(singles, one, differs);
    for (const leg of ['A', 'B'] as const) {
      const here = singles.filter((u) => one.has(u.id) && legOfSpace(one.get(u.id)!) === leg);
      for (const [id, s] of nearest(here, freeOn(leg))) one.set(id, s);
    }
    if ([...one].every(([id, s]) => before.get(id) === s)) break;
  }
  for (const [id, s] of one) at.set(id, [s]);
  return { at, legs: new Map([...one].map(([id, s]) => [id, legOfSpace(s)])) };
};
