import type { Price } from '../facts/result';
import { isDirect } from './lines';
import { type Bar, barsOf, drawnCosts } from './simulate';
import { directRange, type PriceTotals, priceTotals } from './totals';

export interface Picture {
  readonly bars: readonly Bar[];
  readonly totals: PriceTotals;
}

/** The drawn costs as prices: what comes on top of direct cost grows with it, so a straight line through the ends of both ranges. */
export const rangePicture = (price: Pick<Price, 'lines'>, count: number): Picture => {
  const direct = price.lines.filter(isDirect);
  const cost = directRange(direct);
  const totals = priceTotals(price);
  const slope = cost.high > cost.low ? (totals.high - totals.low) / (cost.high - cost.low) : 0;
  const asPrice = (cents: number): number => totals.low + (cents - cost.low) * slope;
  const bars = slope === 0 ? [] : barsOf(drawnCosts(direct), count);
  return { bars: bars.map((bar) => ({ ...bar, from: asPrice(bar.from), to: asPrice(bar.to) })), totals };
};
