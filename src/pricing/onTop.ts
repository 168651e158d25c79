import type { Line } from '../facts/result';
import type { PriceBook } from '../job/schema';
import { roundHalfAway } from '../units/money';
import { compareText } from '../units/order';
import { bookItemWords as words } from '../words/en/bookItems';
import { isDirect } from './lines';
import { centsOf, directRange, inCents, type PriceTotals, plus } from './totals';

/** Above it a price is more than a hundred times its cost: a slip of the pen, and near 1 no number at all. */
const MOST_MARGIN = 0.99;

/** A margin is a share of the price, a markup a share of the cost: margin g = markup g / (1 - g). null = no price can have it. */
export const markupOf = (profit: PriceBook['profit']): number | null => {
  if (profit.as === 'markup') return profit.rate;
  return profit.rate <= MOST_MARGIN ? profit.rate / (1 - profit.rate) : null;
};

const times = (factor: number, base: PriceTotals): PriceTotals =>
  inCents({ low: factor * base.low, likely: factor * base.likely, high: factor * base.high });

type Kind = 'overhead' | 'profit' | 'tax';
const lineOf = (kind: Kind, item: string, quantity: number, dollarsEach: number, cents: PriceTotals): Line => ({
  id: kind === 'tax' ? `tax:${item}` : item,
  kind,
  item,
  say: kind === 'tax' ? words.tax({ on: item }) : words.money(item),
  quantity,
  unit: '$',
  dollarsEach,
  lowCents: cents.low,
  likelyCents: cents.likely,
  highCents: cents.high,
  homeRuns: [],
  rule: null,
  alternate: null,
});
/** A line that is a rate on a sum of others. */
const onTop = (kind: Kind, item: string, rate: number, base: PriceTotals): Line =>
  lineOf(kind, item, base.likely / 100, rate, times(rate, base));

const isNothing = ({ low, likely, high }: PriceTotals): boolean => low === 0 && likely === 0 && high === 0;

/** What lifts each end to the least charge; no line where all three are above it. A job of nothing costs nothing. */
const upToMinimum = (sum: PriceTotals, book: PriceBook): Line[] => {
  const least = roundHalfAway(book.minimumDollars * 100);
  const lift = (cents: number): number => (sum.high > 0 ? Math.max(0, least - cents) : 0);
  const cents = { low: lift(sum.low), likely: lift(sum.likely), high: lift(sum.high) };
  return isNothing(cents) ? [] : [lineOf('profit', 'minimum', 1, cents.likely / 100, cents)];
};

/** What brings each end to a round sum, half up. It is the contractor's: tax stays what it is on the lines above. */
const toRoundSum = (sum: PriceTotals, book: PriceBook): Line[] => {
  const step = roundHalfAway(book.roundToDollars * 100);
  if (step <= 0) return [];
  const off = (cents: number): number => roundHalfAway(cents / step) * step - cents;
  const cents = { low: off(sum.low), likely: off(sum.likely), high: off(sum.high) };
  return isNothing(cents) ? [] : [lineOf('profit', 'rounding', 1, cents.likely / 100, cents)];
};

/** Tax on the lines the book taxes, each line once. */
const taxLines = (lines: readonly Line[], book: PriceBook): Line[] => {
  const untaxed = new Set(lines);
  return [...new Set(book.tax.on)].sort(compareText).flatMap((name) => {
    const taxed = [...untaxed].filter((line) => line.kind === name || line.item === name);
    if (taxed.length === 0) return [];
    for (const line of taxed) untaxed.delete(line);
    const directBase = inCents(directRange(taxed.filter(isDirect)));
    const base = taxed
      .filter((line) => !isDirect(line))
      .map(centsOf)
      .reduce(plus, directBase);
    return [onTop('tax', name, book.tax.rate, base)];
  });
};

/** Overhead on direct cost, profit on both, the least charge before tax, tax by line, and last the round sum. */
export const linesOnTop = (direct: readonly Line[], book: PriceBook): Line[] => {
  const cost = inCents(directRange(direct));
  const overhead = onTop('overhead', 'overhead', book.overheadRate, cost);
  const markup = markupOf(book.profit);
  const profit = markup === null ? [] : [onTop('profit', 'profit', markup, plus(cost, centsOf(overhead)))];
  const charged = [overhead, ...profit];
  const beforeTax = [...charged, ...upToMinimum(charged.map(centsOf).reduce(plus, cost), book)];
  const taxed = [...beforeTax, ...taxLines([...direct, ...beforeTax], book)];
  return [...taxed, ...toRoundSum(taxed.map(centsOf).reduce(plus, cost), book)];
};
