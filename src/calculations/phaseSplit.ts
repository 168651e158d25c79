import { byId } from '../units/order';
import type { Id } from '../units/types';
import { type SumItem, subsetSums } from './subsetSums';

/** Single-pole loads to spread over two legs, each leg with so many places; pairs share a neutral and sit on opposite legs. */
export interface PhaseTask {
  readonly singles: readonly { readonly id: Id; readonly va: number }[];
  readonly pairs: readonly { readonly id: Id; readonly va: readonly [number, number] }[];
  /** Places for single poles on each leg, after pairs and 2-pole breakers took one of each. */
  readonly placesA: number;
  readonly placesB: number;
}
export interface PhaseSplit {
  /** Single poles on leg A; the others are on B. */
  readonly onA: ReadonlySet<Id>;
  /** Pairs whose second load is on leg A instead of the first. */
  readonly turned: ReadonlySet<Id>;
  readonly legA: number;
  readonly legB: number;
  /** False only where loads were so fine that they had to be rounded to keep the search small. */
  readonly exact: boolean;
}

/** Most sums the search keeps per count: every house at 1 VA; finer loads are rounded to fit. */
const MOST_SUMS = 1 << 18;

const total = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);
const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/** Loads as whole multiples of one unit, VA: their own greatest common divisor (to 0.01 VA), or coarser where that is too fine. */
const unitOf = (loads: readonly number[]): { unit: number; exact: boolean } => {
  const hundredths = loads.map((va) => Math.round(va * 100));
  const own = hundredths.reduce(gcd, 0) || 100;
  const least = Math.ceil(total(hundredths) / MOST_SUMS);
  const whole = hundredths.every((h, i) => Math.abs(h / 100 - loads[i]!) < 1e-9);
  return { unit: Math.max(own, least) / 100, exact: own >= least && whole };
};

/**
 * Exact balance of two legs. Rows of a panel alternate legs, so a 2-pole breaker or a shared-neutral pair takes one
 * place on each wherever it stands; only the single poles and the turn of each pair are free: a subset sum with a bound
 * on how many are taken. Null when the places do not suffice. Equal balances: the heavier leg A, then the evener count.
 */
export const splitPhases = (task: PhaseTask): PhaseSplit | null => {
  const singles = byId(task.singles);
  const pairs = byId(task.pairs);
  const n = singles.length;
  const { unit, exact } = unitOf([...singles.map((s) => s.va), ...pairs.flatMap((p) => p.va)]);
  const units = (va: number) => Math.round(va / unit);
  // A pair puts its smaller load on A for certain; taking its item puts the larger there.
  const items: SumItem[] = [
    ...singles.map((s): SumItem => ({ weight: units(s.va), place: 1 })),
    ...pairs.map((p): SumItem => ({ weight: Math.abs(units(p.va[0]) - units(p.va[1])), place: 0 })),
  ];
  const free = total(items.map((item) => item.weight));
  const sums = subsetSums(items);
  let best: { gap: number; count: number; sum: number } | null = null;
  // The sure part of the pairs weighs the same on both legs, so the gap is between what is taken and what is not.
  for (let sum = free; sum >= 0; sum--)
    for (let count = Math.max(0, n - task.placesB); count <= Math.min(n, task.placesA); count++) {
      const gap = Math.abs(2 * sum - free);
      const better =
        !best ||
        gap < best.gap ||
        (gap === best.gap && sum === best.sum && Math.abs(2 * count - n) < Math.abs(2 * best.count - n));
      if (better && sums.reached(count, sum)) best = { gap, count, sum };
    }
  if (!best) return null;

  const chosen = sums.choice(best.count, best.sum);
  const onA = new Set(singles.filter((_, i) => chosen.has(i)).map((s) => s.id));
  const turned = new Set(
    pairs
      .filter((p, i) => units(p.va[1]) > units(p.va[0]) === chosen.has(n + i) && p.va[0] !== p.va[1])
      .map((p) => p.id),
  );
  const legA =
    total(singles.filter((s) => onA.has(s.id)).map((s) => s.va)) +
    total(pairs.map((p) => p.va[turned.has(p.id) ? 1 : 0]));
  const all = total(singles.map((s) => s.va)) + total(pairs.flatMap((p) => p.va));
  return { onA, turned, legA, legB: all - legA, exact };
};
