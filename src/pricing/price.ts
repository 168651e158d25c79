import type { Line, Price } from '../facts/result';
import type { PriceBook } from '../job/schema';
import { roundHalfAway } from '../units/money';
import { compareText } from '../units/order';
import type { Cents, Id } from '../units/types';
import { bookItemWords as words } from '../words/en/bookItems';
import { type BookIndex, indexBook, type PricedWork, type SplicePractice } from './assemblies';
import { assemblyOf } from './items';
import { directLines, isDirect, type SurveyGrade } from './lines';
import { linesOnTop, markupOf } from './onTop';
import { directRange, priceTotals } from './totals';

/** What the homeowner may take or leave; a required one cannot be left. Work whose alternate is not named here is not taken. */
export interface Alternate {
  readonly id: Id;
  readonly required: boolean;
  readonly taken: boolean;
  readonly rule: string | null;
  /** Spaces of the panel it takes; less than nothing where it brings some. */
  readonly spaces?: number;
  /** Others that cannot be had beside it. */
  readonly insteadOf?: readonly Id[];
}
/** Alternates of the owner's choice that are offered as one. */
export interface Package {
  readonly id: Price['packages'][number]['id'];
  readonly alternates: readonly Id[];
}
export interface PriceAsk {
  readonly work: readonly PricedWork[];
  readonly book: PriceBook;
  readonly practice?: SplicePractice;
  readonly surveyGrade: SurveyGrade;
  readonly alternates: readonly Alternate[];
  /** None, and their prices are not worked out: a live plan. */
  readonly packages?: readonly Package[];
}
/** A price without what is found out from more than its lines. */
export type Priced = Omit<Price, 'missingSay' | 'assumed' | 'unitChanges' | 'forgettingAfci' | 'quote'>;

const MOST_DRIVERS = 8;

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

/** Likely hours of work, by what the book says its tasks take. */
export const likelyHours = (work: readonly PricedWork[], books: BookIndex): number =>
  work.reduce(
    (all, { item, quantity }) =>
      (assemblyOf(item)?.tasks ?? []).reduce(
        (sum, task) => sum + quantity * task.quantity * (books.tasks.get(task.id)?.likely ?? 0),
        all,
      ),
    0,
  );
const tidy = (hours: number): number => Math.round(hours * 1e4) / 1e4;
const same = (a: ReadonlySet<Id>, b: ReadonlySet<Id>): boolean => a.size === b.size && [...a].every((id) => b.has(id));

/** Direct cost lines from quantities and the book, then overhead, profit and tax; the lines' likely cents are the price. */
export const price = ({ work, book, practice, surveyGrade, alternates, packages = [] }: PriceAsk): Priced => {
  const books = indexBook(book, practice);
  const { lines: all, unverified } = directLines(work, books, surveyGrade);
  const taken = chosenIds(alternates);
  const linesWith = (chosen: ReadonlySet<Id>): Line[] => {
    const direct = all.filter((line) => line.alternate === null || chosen.has(line.alternate));
    return [...direct, ...linesOnTop(direct, book)];
  };
  const likelyWith = (chosen: ReadonlySet<Id>): Cents =>
    linesWith(chosen).reduce((sum, line) => sum + line.likelyCents, 0);
  const named = new Map(alternates.map((alternate) => [alternate.id, alternate]));
  const effectOf = (id: Id): Cents => {
    const others = [...taken].filter((other) => other !== id && !named.get(id)?.insteadOf?.includes(other));
    return likelyWith(new Set([...others, id])) - likelyWith(new Set(others));
  };
  const hoursOf = (chosen: ReadonlySet<Id>) =>
    likelyHours(
      work.filter(({ alternate }) => alternate === null || chosen.has(alternate)),
      books,
    );
  const offered = new Set(packages.flatMap((p) => p.alternates));
  const priced = (p: Package): Price['packages'][number] => {
    const kept = [...taken].filter((id) => !offered.has(id) || named.get(id)?.required);
    const chosen = new Set([...kept, ...p.alternates]);
    const { low, likely, high } = priceTotals({ lines: linesWith(chosen) });
    return {
      id: p.id,
      say: words.packages[p.id],
      alternates: [...p.alternates].sort(compareText),
      lowCents: low,
      likelyCents: likely,
      highCents: high,
      hours: tidy(hoursOf(chosen)),
      taken: same(chosen, taken),
    };
  };

  const ids = [...new Set([...named.keys(), ...work.flatMap((piece) => piece.alternate ?? [])])].sort(compareText);
  const lines = linesWith(taken);
  const direct = lines.filter(isDirect);
  const size = (list: readonly Line[]) => list.reduce((sum, line) => sum + Math.abs(line.likelyCents), 0);
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
    lines: lines.sort((a, b) => compareText(a.id, b.id)),
    alternates: ids.map((id) => ({
      id,
      say: words.alternate[id] ?? id,
      required: named.get(id)?.required ?? false,
      taken: taken.has(id),
      cents: effectOf(id),
      rule: named.get(id)?.rule ?? null,
      spaces: named.get(id)?.spaces ?? 0,
      hours: tidy(
        likelyHours(
          work.filter((piece) => piece.alternate === id),
          books,
        ),
      ),
    })),
    packages: packages.map(priced),
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
