import { z } from 'zod';
import { compareText } from '../units/order';
import { type Job, type PriceBook, priceBookSchema, stockSchema } from './schema';

/** Texts a contractor keeps beside the jobs. One that cannot be read counts as none: it was written by this program only. */
const read = <T>(schema: z.ZodType<T>, text: string | null): T | null => {
  if (text === null) return null;
  try {
    const parsed = schema.safeParse(JSON.parse(text));
    return parsed.success ? parsed.data : null;
  } catch {
    return null;
  }
};

const books = z.array(priceBookSchema).readonly();
/** Newest first. */
const inOrder = (list: readonly PriceBook[]): readonly PriceBook[] =>
  [...list].sort((a, b) => compareText(b.dated, a.dated) || compareText(a.id, b.id));
export const readBooks = (text: string | null): readonly PriceBook[] => inOrder(read(books, text) ?? []);

const isSame = (a: PriceBook, b: PriceBook): boolean => JSON.stringify(a) === JSON.stringify(b);
/** The list with a book in it; null where one of that name and date is there with other prices. */
export const withBook = (list: readonly PriceBook[], book: PriceBook): readonly PriceBook[] | null => {
  const there = list.find((b) => b.id === book.id && b.dated === book.dated);
  if (there) return isSame(there, book) ? list : null;
  return inOrder([...list, book]);
};
export const booksText = (list: readonly PriceBook[]): string => JSON.stringify(list);
/** A later book of the same name than the job's. */
export const newerBook = (list: readonly PriceBook[], { priceBook }: Pick<Job, 'priceBook'>): PriceBook | null =>
  priceBook === 'default' ? null : (list.find((b) => b.id === priceBook.id && b.dated > priceBook.dated) ?? null);

export const readTruck = (text: string | null): Job['stock'] | null => read(stockSchema, text);
export const truckText = (stock: Job['stock']): string => JSON.stringify(stock);
