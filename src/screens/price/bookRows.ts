import { bookNumber, LIMITS } from '../../documents/bookCsv';
import type { PriceBook } from '../../job/schema';
import { ok, type Result } from '../../units/result';
import { bookWords as say } from '../../words/en/book';
import { bookItemWords } from '../../words/en/bookItems';

/** The lists of a price book as rows of a grid: which columns each has, how a cell is read and written. */
export const LISTS = ['materials', 'tasks', 'allowances', 'lead'] as const;
export type ListName = (typeof LISTS)[number];
export type ColumnName = 'unit' | 'dollars' | 'low' | 'likely' | 'high' | 'days' | 'source';

export const COLUMNS: Readonly<Record<ListName, readonly ColumnName[]>> = {
  materials: ['unit', 'dollars', 'source'],
  tasks: ['unit', 'low', 'likely', 'high', 'source'],
  allowances: ['low', 'likely', 'high'],
  lead: ['days'],
};
const TEXTS: ReadonlySet<ColumnName> = new Set(['unit', 'source']);
export const isText = (column: ColumnName): boolean => TEXTS.has(column);

const limitsOf = (list: ListName, column: ColumnName) => {
  if (list === 'materials') return LIMITS.price;
  if (list === 'lead') return LIMITS.days;
  if (list === 'allowances') return LIMITS.allowance;
  return column === 'likely' ? LIMITS.hours : LIMITS.hoursEnd;
};

export interface Row {
  readonly id: string;
  readonly name: string;
  /** Its place in the list of the book. */
  readonly at: number;
}
const nameOf = (list: ListName, id: string): string => {
  if (list === 'tasks') return bookItemWords.task(id);
  return list === 'allowances' ? bookItemWords.money(id) : bookItemWords.material(id);
};
/** Entries whose id or name holds what is looked for. */
export const rowsOf = (book: PriceBook, list: ListName, find: string): Row[] => {
  const wanted = find.trim().toLowerCase();
  return book[list]
    .map(({ id }, at) => ({ id, name: nameOf(list, id), at }))
    .filter(({ id, name }) => `${id} ${name}`.toLowerCase().includes(wanted));
};

type Entry = Readonly<Record<string, string | number>>;
export const cellText = (book: PriceBook, list: ListName, at: number, column: ColumnName): string =>
  String((book[list][at] as unknown as Entry | undefined)?.[column] ?? '');

/** The book with one cell as typed, or what is wrong with it: low, likely and high keep their order. */
export const withCell = (
  book: PriceBook,
  list: ListName,
  at: number,
  column: ColumnName,
  text: string,
): Result<PriceBook, string> => {
  const value = isText(column) ? ok(text.trim()) : bookNumber(text, limitsOf(list, column));
  if (!value.ok) return value;
  const entry = { ...(book[list][at] as unknown as Entry), [column]: value.value };
  const { low, likely, high } = entry;
  if (low !== undefined && (Number(low) > Number(likely) || Number(likely) > Number(high)))
    return { ok: false, error: say.backward };
  return ok({ ...book, [list]: book[list].map((e, i) => (i === at ? entry : e)) } as PriceBook);
};

/** A new entry at the end, with the least that is a value; null where its id is there or empty. */
export const withEntry = (book: PriceBook, list: ListName, id: string): PriceBook | null => {
  const name = id.trim();
  if (name === '' || book[list].some((e) => e.id === name)) return null;
  const fresh: Readonly<Record<ListName, Entry>> = {
    materials: { id: name, unit: 'each', dollars: 1, source: '' },
    tasks: { id: name, unit: 'each', low: 1, likely: 1, high: 1, source: '' },
    allowances: { id: name, low: 0, likely: 0, high: 0 },
    lead: { id: name, days: 5 },
  };
  return { ...book, [list]: [...book[list], fresh[list]] } as PriceBook;
};
export const withoutEntry = (book: PriceBook, list: ListName, at: number): PriceBook =>
  ({ ...book, [list]: book[list].filter((_, i) => i !== at) }) as PriceBook;
