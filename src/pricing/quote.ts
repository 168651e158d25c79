import type { Line, Price, Quote } from '../facts/result';
import type { PriceBook, Terms } from '../job/schema';
import { roundHalfAway } from '../units/money';
import type { Cents } from '../units/types';
import { quoteWords as say } from '../words/en/quote';
import type { SurveyGrade } from './lines';
import { linesOnTop, markupOf } from './onTop';

export interface QuoteAsk {
  readonly terms: Pick<Terms, 'quote'>;
  readonly surveyGrade: SurveyGrade;
  readonly price: Pick<Price, 'complete'>;
  readonly likelyCents: Cents;
  readonly book: PriceBook;
}

/** One labor-hour as the only line of a job, with what is charged on it. */
const hourCents = (book: PriceBook): Cents => {
  const cents = roundHalfAway(book.dollarsPerCrewHour * 100);
  const hour: Line = {
    id: 'hour',
    kind: 'labor',
    item: 'hour',
    say: '',
    quantity: 1,
    unit: 'h',
    dollarsEach: book.dollarsPerCrewHour,
    lowCents: cents,
    likelyCents: cents,
    highCents: cents,
    homeRuns: [],
    rule: null,
    alternate: null,
  };
  const plain = { ...book, minimumDollars: 0, roundToDollars: 0 };
  return [hour, ...linesOnTop([hour], plain)].reduce((sum, line) => sum + line.likelyCents, 0);
};

/** A fixed sum needs a survey with the cover off and nothing missing; else the same job is offered as a range. */
export const quoteOf = ({ terms, surveyGrade, price, likelyCents, book }: QuoteAsk): Quote => {
  const why = surveyGrade === 'walk-through' ? say.walkThrough : price.complete ? null : say.incomplete;
  const as = terms.quote === 'fixed' && why !== null ? 'range' : terms.quote;
  const markup = markupOf(book.profit) ?? 0;
  return {
    asked: terms.quote,
    as,
    fixedCents: as === 'fixed' ? likelyCents : null,
    hourCents: hourCents(book),
    materialShare: roundHalfAway(((1 + book.overheadRate) * (1 + markup) - 1) * 1e4) / 1e4,
    say: as === terms.quote ? say.as[as] : (why ?? say.as[as]),
  };
};
