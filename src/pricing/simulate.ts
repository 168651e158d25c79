import type { Line } from '../facts/result';
import { groupOf } from './lines';
import { GROUPS } from './range';

/**
 * The range as a picture: the same lines drawn at random, each Beta-PERT, lines of one group tied by a shared factor
 * (a Gaussian copula of the group's correlation). Seeded: the same lines give the same picture. Low and high that are
 * printed stay the analytic ones of `range.ts`; a test holds the two against each other.
 */

/** mulberry32: a small generator of public domain, whole 32 bits of state. */
const generator = (seed: number) => {
  let state = seed | 0;
  return (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
};
/** Box and Muller, 1958: one normal number of two even ones. */
const normal = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
/** Share of a normal below z: Abramowitz and Stegun 26.2.17, within 7.5e-8. */
const below = (z: number): number => {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  const tail =
    density * t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return z > 0 ? 1 - tail : tail;
};

const STEPS = 64;
/** Quantiles of Beta(1 + 4 (m - a)/(b - a), 1 + 4 (b - m)/(b - a)) on 0 to 1, at even shares, by adding up its density. */
const quantiles = (peak: number): readonly number[] => {
  const [p, q] = [4 * peak, 4 * (1 - peak)];
  const fine = STEPS * 8;
  const density = Array.from({ length: fine }, (_, i) => ((i + 0.5) / fine) ** p * (1 - (i + 0.5) / fine) ** q);
  const total = density.reduce((all, d) => all + d, 0);
  const out: number[] = [0];
  let sum = 0;
  density.forEach((d, i) => {
    const before = sum / total;
    sum += d;
    while (out.length < STEPS && out.length / STEPS <= sum / total) {
      const share = (out.length / STEPS - before) / (d / total);
      out.push((i + share) / fine);
    }
  });
  out.push(1);
  return out;
};
const between = (table: readonly number[], share: number): number => {
  const at = Math.min(STEPS - 1, Math.floor(share * STEPS));
  const rest = share * STEPS - at;
  return table[at]! * (1 - rest) + table[at + 1]! * rest;
};

const DRAWS = 2000;
const SEED = 20_260_101;

/** Direct cost in cents, drawn so many times, smallest first. */
export const drawnCosts = (lines: readonly Line[], draws = DRAWS): number[] => {
  const parts = lines.map((line) => {
    const span = line.highCents - line.lowCents;
    return {
      low: line.lowCents,
      span,
      group: groupOf(line),
      table: span > 0 ? quantiles((line.likelyCents - line.lowCents) / span) : null,
    };
  });
  const random = generator(SEED);
  const groups = Object.keys(GROUPS) as (keyof typeof GROUPS)[];
  const out = Array.from({ length: draws }, () => {
    const shared = new Map(groups.map((group) => [group, normal(random)]));
    let sum = 0;
    for (const { low, span, group, table } of parts) {
      sum += low;
      if (!table) continue;
      const rho = GROUPS[group];
      const z = Math.sqrt(rho) * shared.get(group)! + Math.sqrt(1 - rho) * normal(random);
      sum += span * between(table, below(z));
    }
    return sum;
  });
  return out.sort((a, b) => a - b);
};

export interface Bar {
  readonly from: number;
  readonly to: number;
  readonly count: number;
}
/** The draws in bars of one width, from the smallest to the largest. */
export const barsOf = (costs: readonly number[], count: number): Bar[] => {
  const [least, most] = [costs[0] ?? 0, costs.at(-1) ?? 0];
  if (costs.length === 0 || most <= least) return [];
  const width = (most - least) / count;
  const bars = Array.from({ length: count }, (_, i) => ({
    from: least + i * width,
    to: least + (i + 1) * width,
    count: 0,
  }));
  for (const cost of costs) bars[Math.min(count - 1, Math.floor((cost - least) / width))]!.count++;
  return bars;
};
