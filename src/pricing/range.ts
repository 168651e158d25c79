import { compareText } from '../units/order';

/**
 * The spread of a sum, analytic: each part a Beta-PERT with variance (mean - low)(high - mean) / 7 (not the cruder
 * ((high - low)/6)²); parts of one group move together: var = Σ s² (1 - rho) + rho (Σ s)². Without the common factor
 * the band is far too narrow.
 */
export interface RangePart {
  readonly id: string;
  readonly group: Group;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}
export interface Range {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  /** How much of high - low each part brings; they sum to it, largest first. */
  readonly shares: readonly { readonly id: string; readonly amount: number }[];
}
/** Correlation inside a group of lines. Common practice, no source: one crew's pace, one metal's price. */
export const GROUPS = { labor: 0.5, copper: 0.8, aluminum: 0.8, parts: 0.3, single: 0 } as const;
export type Group = keyof typeof GROUPS;

/** Low and high are the 10th and 90th percentile of the sum, taken as normal. */
const Z_90 = 1.2815515655446004;

export const pertMean = (low: number, likely: number, high: number): number => (low + 4 * likely + high) / 6;
export const pertVariance = (low: number, likely: number, high: number): number => {
  const mean = pertMean(low, likely, high);
  return ((mean - low) * (high - mean)) / 7;
};

/** Parts that are credits (likely below nothing) move the sum the other way. */
export const rangeOf = (parts: readonly RangePart[]): Range => {
  const sum = { mean: 0, low: 0, likely: 0, high: 0, variance: 0 };
  const spread = parts.map(({ id, group, low, likely, high }) => {
    sum.mean += pertMean(low, likely, high);
    sum.low += low;
    sum.likely += likely;
    sum.high += high;
    return { id, group, s: (likely < 0 ? -1 : 1) * Math.sqrt(Math.max(0, pertVariance(low, likely, high))) };
  });
  const groupSum = new Map<Group, number>();
  for (const { group, s } of spread) groupSum.set(group, (groupSum.get(group) ?? 0) + s);
  const covariance = spread.map(({ id, group, s }) => {
    const rho = GROUPS[group];
    return { id, amount: s * ((1 - rho) * s + rho * groupSum.get(group)!) };
  });
  for (const part of covariance) sum.variance += part.amount;
  const reach = Z_90 * Math.sqrt(Math.max(0, sum.variance));
  // The sum cannot leave its own ends, and "likely" (the sum of likely parts) always lies between low and high.
  const low = Math.min(sum.likely, Math.max(sum.low, sum.mean - reach));
  const high = Math.max(sum.likely, Math.min(sum.high, sum.mean + reach));
  const each = sum.variance > 0 ? (high - low) / sum.variance : 0;
  return {
    low,
    likely: sum.likely,
    high,
    shares: covariance
      .map(({ id, amount }) => ({ id, amount: amount * each }))
      .sort((a, b) => b.amount - a.amount || compareText(a.id, b.id)),
  };
};
