import { byId } from '../units/order';
import type { Id } from '../units/types';
import { type SubsetSums, type SumItem, subsetSums } from './subsetSums';

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

/** The lighter side: the most it can weigh within half, the evenest count of that weight, on leg B where that has room. */
const heaviest = (task: PhaseTask, n: number, half: number, sums: SubsetSums) => {
  const counts = Array.from({ length: n + 1 }, (_, count) => count)
    .map((count) => ({
      count,
      lightOnB: count <= task.placesB && n - count <= task.placesA,
      lightOnA: count <= task.placesA && n - count <= task.placesB,
    }))
    .filter((c) => c.lightOnA || c.lightOnB)
    .sort((a, b) => Math.abs(2 * a.count - n) - Math.abs(2 * b.count - n) || a.count - b.count);
  for (let sum = half; sum >= 0; sum--)
    for (const { count, lightOnB } of counts) if (sums.reached(count, sum)) return { count, sum, lightOnB };
  return null;
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
  // A pair puts its smaller load on one leg for certain; taking its item puts the larger there.
  const items: SumItem[] = [
    ...singles.map((s): SumItem => ({ weight: units(s.va), place: 1 })),
    ...pairs.map((p): SumItem => ({ weight: Math.abs(units(p.va[0]) - units(p.va[1])), place: 0 })),
  ];
  // The sure part of the pairs weighs the same on both legs. Of every split one side takes half or less of the rest:
  // the heaviest such side is the best balance.
  const half = Math.floor(total(items.map((item) => item.weight)) / 2);
  const sums = subsetSums(items, half);
  const best = heaviest(task, n, half, sums);
  if (!best) return null;

  const light = sums.choice(best.count, best.sum);
  const isOnA = (item: number) => light.has(item) !== best.lightOnB;
  const onA = new Set(singles.filter((_, i) => isOnA(i)).map((s) => s.id));
  const turned = new Set(
    pairs.filter((p, i) => p.va[0] !== p.va[1] && p.va[1] > p.va[0] === isOnA(n + i)).map((p) => p.id),
  );
  const legA =
    total(singles.filter((s) => onA.has(s.id)).map((s) => s.va)) +
    total(pairs.map((p) => p.va[turned.has(p.id) ? 1 : 0]));
  const all = total(singles.map((s) => s.va)) + total(pairs.flatMap((p) => p.va));
  return { onA, turned, legA, legB: all - legA, exact };
};
