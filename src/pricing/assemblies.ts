import type { UnitMills, Work } from '../facts/work';
import type { Practice, PriceBook } from '../job/schema';
import { type Mills, roundHalfAway } from '../units/money';
import { compareText } from '../units/order';
import type { Cents } from '../units/types';
import { assemblyOf } from './items';
import { hasRate, isPrice, RATE, takesTime } from './unusable';

/** Looks a price book up by id. The first entry wins where an id is written twice. */
export interface BookIndex {
  readonly book: PriceBook;
  readonly materials: ReadonlyMap<string, PriceBook['materials'][number]>;
  readonly tasks: ReadonlyMap<string, PriceBook['tasks'][number]>;
  readonly allowances: ReadonlyMap<string, PriceBook['allowances'][number]>;
}
const index = <T extends { readonly id: string }>(list: readonly T[]): ReadonlyMap<string, T> =>
  new Map([...list].reverse().map((entry) => [entry.id, entry]));

export type SplicePractice = Pick<Practice, 'spliceSpotCents'>;
const SPLICE_SPOT = 'splice spot';

/** `practice` is the job's own price of a splice spot; without it the book's allowance counts. */
export const indexBook = (book: PriceBook, practice?: SplicePractice): BookIndex => {
  const allowances = new Map(index(book.allowances));
  if (practice) {
    const dollars = practice.spliceSpotCents / 100;
    allowances.set(SPLICE_SPOT, { id: SPLICE_SPOT, low: dollars, likely: dollars, high: dollars });
  }
  return {
    book,
    materials: index(book.materials.filter(isPrice)),
    tasks: index(book.tasks.filter(takesTime)),
    allowances,
  };
};

/** The price book entries one unit of an item needs and the book does not have. An item unknown to the program is its own entry. */
export const missingFor = (books: BookIndex, item: string): readonly string[] => {
  const parts = assemblyOf(item);
  if (!parts) return [item];
  return [
    ...parts.materials.filter((part) => !books.materials.has(part.id)),
    ...parts.tasks.filter((part) => !books.tasks.has(part.id)),
    ...(parts.tasks.length > 0 && !hasRate(books.book) ? [{ id: RATE }] : []),
    ...(parts.allowance && !books.allowances.has(parts.allowance.id) ? [parts.allowance] : []),
  ].map((part) => part.id);
};

/** Direct cost of one unit in whole mills: material + likely hours × the price of a labor-hour + likely allowance. */
const millsOf = (books: BookIndex, item: string): Mills | undefined => {
  const parts = assemblyOf(item);
  if (!parts || missingFor(books, item).length > 0) return undefined;
  let dollars = parts.allowance ? books.allowances.get(parts.allowance.id)!.likely : 0;
  for (const part of parts.materials) dollars += part.quantity * books.materials.get(part.id)!.dollars;
  for (const part of parts.tasks)
    dollars += part.quantity * books.tasks.get(part.id)!.likely * books.book.dollarsPerCrewHour;
  return roundHalfAway(dollars * 1000);
};

/** Unit prices for routing. Answers are kept, since a search asks the same few items many times. */
export const unitMills = (book: PriceBook, practice?: SplicePractice): UnitMills => {
  const books = indexBook(book, practice);
  const kept = new Map<string, Mills | undefined>();
  return (item) => {
    if (!kept.has(item)) kept.set(item, millsOf(books, item));
    return kept.get(item);
  };
};

/** Work that brings its own price, and its words: a thing moved out of the way. null = the price is not known. */
export type PricedWork = Work & { readonly cents?: Cents | null; readonly say?: string };

/** Direct cost of all the work in whole mills, rounded once; items without a price count as nothing. */
export const directMills = (work: readonly PricedWork[], book: PriceBook, practice?: SplicePractice): Mills => {
  const unit = unitMills(book, practice);
  return roundHalfAway(
    work.reduce(
      (sum, { item, quantity, cents }) => sum + quantity * (cents != null ? cents * 10 : (unit(item) ?? 0)),
      0,
    ),
  );
};

/** One material and how much of it work takes; unit as in the price book. */
export interface MaterialNeed {
  readonly id: string;
  readonly quantity: number;
  readonly unit: string;
}
/** The materials all the work takes, sorted by id: what has to be bought before waste and whole coils. */
export const materialsOf = (work: readonly Work[], book: PriceBook): MaterialNeed[] => {
  const { materials } = indexBook(book);
  const needs = new Map<string, MaterialNeed>();
  for (const { item, quantity } of [...work].sort((a, b) => compareText(a.item, b.item)))
    for (const part of assemblyOf(item)?.materials ?? []) {
      const unit = materials.get(part.id)?.unit ?? 'each';
      needs.set(part.id, {
        id: part.id,
        quantity: (needs.get(part.id)?.quantity ?? 0) + quantity * part.quantity,
        unit,
      });
    }
  return [...needs.values()].sort((a, b) => compareText(a.id, b.id));
};
