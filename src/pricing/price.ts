import type { Line, Price } from '../facts/result';
import type { PriceBook } from '../job/schema';
import { roundHalfAway } from '../units/money';
import { compareText } from '../units/order';
import type { Cents, Id } from '../units/types';
import { bookItemWords as words } from '../words/en/bookItems';
import { indexBook, type PricedWork, type SplicePractice } from './assemblies';
import { directLines, groupOf, isDirect, type SurveyGrade } from './lines';
import { rangeOf } from './range';

/** What the homeowner may take or leave; a required one cannot be left. Work whose alternate is not named here is not taken. */
export interface Alternate {
  readonly id: Id;
  readonly required: boolean;
  readonly taken: boolean;
  readonly rule: string | null;
}
export interface PriceAsk {
  readonly work: readonly PricedWork[];
  readonly book: PriceBook;
  readonly practice?: SplicePractice;
  readonly surveyGrade: SurveyGrade;
  readonly alternates: readonly Alternate[];
}
export interface PriceTotals {
  readonly low: Cents;
  readonly likely: Cents;
  readonly high: Cents;
}

const MOST_DRIVERS = 8;

const directRange = (lines: readonly Line[]) =>
  rangeOf(
    lines.map((line) => ({
      id: line.id,
      group: groupOf(line),
      low: line.lowCents,
      likely: line.likelyCents,
      high: line.highCents,
    })),
  );
const inCents = ({ low, likely, high }: PriceTotals): PriceTotals => ({
  low: roundHalfAway(low),
  likely: roundHalfAway(likely),
  high: roundHalfAway(high),
});
const times = (factor: number, base: PriceTotals): PriceTotals =>
  inCents({ low: factor * base.low, likely: factor * base.likely, high: factor * base.high });

/** Above it a price is more than a hundred times its cost: a slip of the pen, and near 1 no number at all. */
const MOST_MARGIN = 0.99;

/** A margin is a share of the price, a markup a share of the cost: margin g = markup g / (1 - g). null = no price can have it. */
export const markupOf = (profit: PriceBook['profit']): number | null => {
  if (profit.as === 'markup') return profit.rate;
  return profit.rate <= MOST_MARGIN ? profit.rate / (1 - profit.rate) : null;
};

/** A line that is a rate on a sum of others. */
const onTop = (kind: 'overhead' | 'profit' | 'tax', item: string, rate: number, base: PriceTotals): Line => {
  const cents = times(rate, base);
  return {
    id: kind === 'tax' ? `tax:${item}` : kind,
    kind,
    item,
    say: kind === 'tax' ? words.tax({ on: item }) : words.money(item),
    quantity: base.likely / 100,
    unit: '$',
    dollarsEach: rate,
    lowCents: cents.low,
    likelyCents: cents.likely,
    highCents: cents.high,
    homeRuns: [],
    rule: null,
    alternate: null,
  };
};
const centsOf = (line: Line): PriceTotals => ({ low: line.lowCents, likely: line.likelyCents, high: line.highCents });
const plus = (a: PriceTotals, b: PriceTotals): PriceTotals => ({
  low: a.low + b.low,
  likely: a.likely + b.likely,
  high: a.high + b.high,
});

/** Overhead on direct cost, profit on both, tax on the lines the book taxes, each line once. */
const linesOnTop = (direct: readonly Line[], book: PriceBook): Line[] => {
  const cost = inCents(directRange(direct));
  const overhead = onTop('overhead', 'overhead', book.overheadRate, cost);
  const markup = markupOf(book.profit);
  const profit = markup === null ? [] : [onTop('profit', 'profit', markup, plus(cost, centsOf(overhead)))];
  const untaxed = new Set([...direct, overhead, ...profit]);
  const taxes = [...new Set(book.tax.on)].sort(compareText).flatMap((name) => {
    const taxed = [...untaxed].filter((line) => line.kind === name || line.item === name);
    if (taxed.length === 0) return [];
    for (const line of taxed) untaxed.delete(line);
    const directBase = inCents(directRange(taxed.filter(isDirect)));
    return [
      onTop(
        'tax',
        name,
        book.tax.rate,
        taxed
          .filter((line) => !isDirect(line))
          .map(centsOf)
          .reduce(plus, directBase),
      ),
    ];
  });
  return [overhead, ...profit, ...taxes];
};

/**
 * Low, likely and high of the whole. Likely is the sum of the lines. Low and high are not sums of lows and highs (not
 * everything goes wrong at once) but the 10th and 90th percentile of direct cost, and what is charged on it.
 */
export const priceTotals = (price: Pick<Price, 'lines'>): PriceTotals =>
  price.lines
    .filter((line) => !isDirect(line))
    .map(centsOf)
    .reduce(plus, inCents(directRange(price.lines.filter(isDirect))));

const chosenIds = (alternates: readonly Alternate[]): ReadonlySet<Id> =>
  new Set(alternates.filter(({ required, taken }) => required || taken).map(({ id }) => id));

/** The work that will be done: all that is no alternate, and the alternates taken or required. */
export const takenWork = <W extends Pick<PricedWork, 'alternate'>>(
  work: readonly W[],
  alternates: readonly Alternate[],
): W[] => {
  const chosen = chosenIds(alternates);
  return work.filter(({ alternate }) => alternate === null || chosen.has(alternate));
};

/** Direct cost lines from quantities and the book, then overhead, profit and tax; the lines' likely cents are the price. */
export const price = ({ work, book, practice, surveyGrade, alternates }: PriceAsk): Omit<Price, 'missingSay'> => {
  const books = indexBook(book, practice);
  const { lines: all, unverified } = directLines(work, books, surveyGrade);
  const taken = chosenIds(alternates);
  const directWith = (chosen: ReadonlySet<Id>) =>
    all.filter((line) => line.alternate === null || chosen.has(line.alternate));
  const likelyWith = (chosen: ReadonlySet<Id>): Cents => {
    const direct = directWith(chosen);
    return [...direct, ...linesOnTop(direct, book)].reduce((sum, line) => sum + line.likelyCents, 0);
  };
  const effectOf = (id: Id): Cents =>
    likelyWith(new Set([...taken, id])) - likelyWith(new Set([...taken].filter((other) => other !== id)));

  const named = new Map(alternates.map((alternate) => [alternate.id, alternate]));
  const ids = [...new Set([...named.keys(), ...work.flatMap((piece) => piece.alternate ?? [])])].sort(compareText);
  const direct = directWith(taken);
  const size = (lines: readonly Line[]) => lines.reduce((sum, line) => sum + Math.abs(line.likelyCents), 0);
  const cost = size(direct);
  const doubtful = size(direct.filter((line) => unverified.has(line.id)));
  const missing = [
    ...directLines(takenWork(work, alternates), books, surveyGrade).missing,
    ...(markupOf(book.profit) === null ? ['profit'] : []),
  ].sort(compareText);
  return {
    complete: missing.length === 0,
    missing,
    unverifiedShare: cost === 0 ? 0 : Math.round((doubtful / cost) * 1e4) / 1e4,
    lines: [...direct, ...linesOnTop(direct, book)].sort((a, b) => compareText(a.id, b.id)),
    alternates: ids.map((id) => ({
      id,
      say: words.alternate[id] ?? id,
      required: named.get(id)?.required ?? false,
      taken: taken.has(id),
      cents: effectOf(id),
      rule: named.get(id)?.rule ?? null,
    })),
    drivers: directRange(direct)
      .shares.slice(0, MOST_DRIVERS)
      .map(({ id, amount }) => ({
        id,
        say: direct.find((line) => line.id === id)?.say ?? id,
        cents: roundHalfAway(amount),
      }))
      .filter((driver) => driver.cents !== 0)
      .sort((a, b) => compareText(a.id, b.id)),
  };
};
