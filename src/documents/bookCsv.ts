import { type PriceBook, priceBookSchema } from '../job/schema';
import { err, ok, type Result } from '../units/result';
import { bookWords as say } from '../words/en/book';
import { readCsv, separatorOf, writeCsv } from './csv';

/** A price book as one table: what kind of entry, its id, and its figures; the rates stand in it like the rest. */
const HEADS = ['kind', 'id', 'unit', 'low', 'likely', 'high', 'source'] as const;
type Head = (typeof HEADS)[number];
type Cells = Readonly<Record<Head, string>>;

/** Where reading a file found something wrong. Line counts from 1; column by its head. */
export interface BookFault {
  readonly line: number;
  readonly column: string;
  readonly say: string;
}

const RATES = [
  'labor-hour',
  'wage',
  'burden',
  'overhead',
  'margin',
  'markup',
  'tax',
  'least charge',
  'round to',
] as const;
type Rate = (typeof RATES)[number];

const row = (cells: Partial<Cells>): string[] => HEADS.map((head) => cells[head] ?? '');
const rate = (id: Rate, likely: number, unit: string): string[] =>
  row({ kind: 'rate', id, unit, likely: String(likely) });

export const bookCsv = (book: PriceBook): string =>
  writeCsv([
    [...HEADS],
    row({ kind: 'book', id: book.id, source: book.dated }),
    rate('labor-hour', book.dollarsPerCrewHour, '$'),
    ...(book.wage ? [rate('wage', book.wage.dollarsPerHour, '$'), rate('burden', book.wage.burden, 'share')] : []),
    rate('overhead', book.overheadRate, 'share'),
    rate(book.profit.as, book.profit.rate, 'share'),
    row({ kind: 'rate', id: 'tax', unit: 'share', likely: String(book.tax.rate), source: book.tax.on.join('; ') }),
    rate('least charge', book.minimumDollars, '$'),
    rate('round to', book.roundToDollars, '$'),
    ...book.materials.map((m) =>
      row({ kind: 'material', id: m.id, unit: m.unit, likely: String(m.dollars), source: m.source }),
    ),
    ...book.tasks.map((t) =>
      row({
        kind: 'task',
        id: t.id,
        unit: t.unit,
        low: String(t.low),
        likely: String(t.likely),
        high: String(t.high),
        source: t.source,
      }),
    ),
    ...book.allowances.map((a) =>
      row({
        kind: 'allowance',
        id: a.id,
        unit: '$',
        low: String(a.low),
        likely: String(a.likely),
        high: String(a.high),
      }),
    ),
    ...book.lead.map(({ id, days }) => row({ kind: 'lead', id, unit: 'working days', likely: String(days) })),
  ]);

/** `$1,234.50`, `1234.5`; null where it is no number. */
export const readNumber = (text: string): number | null => {
  const plain = text
    .trim()
    .replace(/^(-?)\$/, '$1')
    .replace(/,(?=\d{3}\b)/g, '');
  return /^-?(\d+\.?\d*|\.\d+)(e-?\d+)?$/i.test(plain) ? Number(plain) : null;
};

/** Prices a person may well have meant otherwise are refused: more than this a piece, or an hour. */
export const MOST_DOLLARS = 100_000;
export const MOST_HOURS = 100;
export const MOST_HOURLY = 1000;
interface Limits {
  readonly least: number;
  readonly most: number;
  /** The least itself is no value either. */
  readonly above?: boolean;
}
/** The number a cell of a book holds, or what is wrong with it. */
export const bookNumber = (text: string, { least, most, above = false }: Limits): Result<number, string> => {
  if (text.trim() === '') return err(say.empty);
  const value = readNumber(text);
  if (value === null) return err(say.notNumber({ found: text.trim() }));
  if (value < least || (above && value === least)) return err(say.tooLow({ least, above, found: text.trim() }));
  return value > most ? err(say.tooHigh({ most, found: text.trim() })) : ok(value);
};
export const LIMITS = {
  price: { least: 0, most: MOST_DOLLARS, above: true },
  hours: { least: 0, most: MOST_HOURS, above: true },
  hoursEnd: { least: 0, most: MOST_HOURS },
  allowance: { least: -MOST_DOLLARS, most: MOST_DOLLARS },
  hourly: { least: 0, most: MOST_HOURLY, above: true },
  share: { least: 0, most: 10 },
  margin: { least: 0, most: 0.99 },
  sum: { least: 0, most: MOST_DOLLARS },
  step: { least: 0, most: 1000 },
  days: { least: 0, most: 365 },
} as const satisfies Readonly<Record<string, Limits>>;

const RATE_LIMITS: Readonly<Record<Rate, Limits>> = {
  'labor-hour': LIMITS.hourly,
  wage: LIMITS.hourly,
  burden: LIMITS.share,
  overhead: LIMITS.share,
  margin: LIMITS.margin,
  markup: LIMITS.share,
  tax: LIMITS.share,
  'least charge': LIMITS.sum,
  'round to': LIMITS.step,
};

/**
 * A file's rows over a book: what stands in it is changed or added by kind and id, the rest stays as it was. Nothing is
 * taken over while anything is wrong: every fault is handed back with its line and column.
 */
export const readBookCsv = (text: string, over: PriceBook): Result<PriceBook, readonly BookFault[]> => {
  const read = readCsv(text, separatorOf(text));
  if (!read.ok) return err([{ line: read.error.row, column: String(read.error.column), say: say.openQuote }]);
  const [first, ...rest] = read.value;
  const heads = (first ?? []).map((cell) => cell.trim().toLowerCase());
  const missing = HEADS.filter((head) => !heads.includes(head));
  if (missing.length > 0) return err(missing.map((column) => ({ line: 1, column, say: say.noHead({ column }) })));

  const faults: BookFault[] = [];
  const lists = {
    material: new Map(over.materials.map((m) => [m.id, m])),
    task: new Map(over.tasks.map((t) => [t.id, t])),
    allowance: new Map(over.allowances.map((a) => [a.id, a])),
    lead: new Map(over.lead.map((l) => [l.id, l])),
  };
  const rates = new Map<Rate, number>();
  let [id, dated, taxOn] = [over.id, over.dated, over.tax.on];
  const seen = new Set<string>();

  rest.forEach((texts, i) => {
    const line = i + 2;
    if (texts.every((cell) => cell.trim() === '')) return;
    const cells = Object.fromEntries(HEADS.map((h) => [h, (texts[heads.indexOf(h)] ?? '').trim()])) as Cells;
    const fault = (column: Head, what: string) => faults.push({ line, column, say: what });
    const number = (column: Head, limits: Limits): number => {
      const value = bookNumber(cells[column], limits);
      if (value.ok) return value.value;
      fault(column, value.error);
      return 0;
    };
    if (cells.id === '') fault('id', say.empty);
    if (seen.has(`${cells.kind} ${cells.id}`)) fault('id', say.twice({ id: cells.id }));
    seen.add(`${cells.kind} ${cells.id}`);
    const ends = (limits: Limits, likely: Limits) => {
      const [low, mid, high] = [number('low', limits), number('likely', likely), number('high', limits)];
      if (low > mid || mid > high) fault('likely', say.backward);
      return { low, likely: mid, high };
    };
    const unit = cells.unit || 'each';
    switch (cells.kind) {
      case 'book':
        [id, dated] = [cells.id, cells.source];
        break;
      case 'rate': {
        const known = RATES.find((name) => name === cells.id);
        if (!known) fault('id', say.noRate({ id: cells.id, rates: RATES.join(', ') }));
        else rates.set(known, number('likely', RATE_LIMITS[known]));
        if (known === 'tax')
          taxOn = cells.source
            .split(';')
            .map((s) => s.trim())
            .filter(Boolean);
        break;
      }
      case 'material':
        lists.material.set(cells.id, {
          id: cells.id,
          unit,
          dollars: number('likely', LIMITS.price),
          source: cells.source,
        });
        break;
      case 'task':
        lists.task.set(cells.id, { id: cells.id, unit, ...ends(LIMITS.hoursEnd, LIMITS.hours), source: cells.source });
        break;
      case 'allowance':
        lists.allowance.set(cells.id, { id: cells.id, ...ends(LIMITS.allowance, LIMITS.allowance) });
        break;
      case 'lead':
        lists.lead.set(cells.id, { id: cells.id, days: number('likely', LIMITS.days) });
        break;
      default:
        fault('kind', say.noKind({ kind: cells.kind }));
    }
  });
  if (faults.length > 0) return err(faults);

  const [wage, burden] = [rates.get('wage'), rates.get('burden')];
  const paid = wage === undefined ? over.wage : { dollarsPerHour: wage, burden: burden ?? 0 };
  const hour = rates.get('labor-hour') ?? over.dollarsPerCrewHour;
  const margin = rates.get('margin');
  const book: PriceBook = {
    ...over,
    id,
    dated,
    dollarsPerCrewHour: hour,
    // a rate entered as it is wins over the wage it no longer comes from
    wage: paid && Math.abs(paid.dollarsPerHour * (1 + paid.burden) - hour) <= 0.005 ? paid : null,
    overheadRate: rates.get('overhead') ?? over.overheadRate,
    profit:
      margin !== undefined
        ? { as: 'margin', rate: margin }
        : rates.has('markup')
          ? { as: 'markup', rate: rates.get('markup')! }
          : over.profit,
    tax: { rate: rates.get('tax') ?? over.tax.rate, on: taxOn },
    minimumDollars: rates.get('least charge') ?? over.minimumDollars,
    roundToDollars: rates.get('round to') ?? over.roundToDollars,
    materials: [...lists.material.values()],
    tasks: [...lists.task.values()],
    allowances: [...lists.allowance.values()],
    lead: [...lists.lead.values()],
  };
  const checked = priceBookSchema.safeParse(book);
  return checked.success
    ? ok(checked.data)
    : err([{ line: 1, column: checked.error.issues[0]!.path.join('/'), say: checked.error.issues[0]!.message }]);
};
