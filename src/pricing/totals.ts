import type { Line, Price } from '../facts/result';
import { roundHalfAway } from '../units/money';
import type { Cents } from '../units/types';
import { groupOf, isDirect } from './lines';
import { type Range, rangeOf } from './range';

export interface PriceTotals {
  readonly low: Cents;
  readonly likely: Cents;
  readonly high: Cents;
}
export const directRange = (lines: readonly Line[]): Range =>
  rangeOf(
    lines.map((line) => ({
      id: line.id,
      group: groupOf(line),
      low: line.lowCents,
      likely: line.likelyCents,
      high: line.highCents,
    })),
  );
export const inCents = ({ low, likely, high }: PriceTotals): PriceTotals => ({
  low: roundHalfAway(low),
  likely: roundHalfAway(likely),
  high: roundHalfAway(high),
});
export const centsOf = (line: Line): PriceTotals => ({
  low: line.lowCents,
  likely: line.likelyCents,
  high: line.highCents,
});
export const plus = (a: PriceTotals, b: PriceTotals): PriceTotals => ({
  low: a.low + b.low,
  likely: a.likely + b.likely,
  high: a.high + b.high,
});

/**
 * Low, likely and high of the whole. Likely is the sum of the lines. Low and high are not sums of lows and highs (not
 * everything goes wrong at once) but the 10th and 90th percentile of direct cost, and what is charged on it.
 */
export const priceTotals = (price: Pick<Price, 'lines'>): PriceTotals =>
  price.lines
    .filter((line) => !isDirect(line))
    .map(centsOf)
    .reduce(plus, inCents(directRange(price.lines.filter(isDirect))));
