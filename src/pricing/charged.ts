import type { PriceBook } from '../job/schema';
import type { Cents } from '../units/types';
import type { PricedWork, SplicePractice } from './assemblies';
import { type Priced, price } from './price';

/** What a piece of work more costs the owner: direct cost with overhead, profit and tax, no least charge and no round sum. */
export const charged = (
  work: readonly PricedWork[],
  book: PriceBook,
  practice: SplicePractice,
): { readonly cents: Cents; readonly complete: boolean; readonly lines: Priced['lines'] } => {
  const priced = price({
    work: work.map((piece) => ({ ...piece, alternate: null })),
    book: { ...book, minimumDollars: 0, roundToDollars: 0 },
    practice,
    surveyGrade: 'full',
    alternates: [],
  });
  return {
    cents: priced.lines.reduce((sum, line) => sum + line.likelyCents, 0),
    complete: priced.complete,
    lines: priced.lines,
  };
};
