import type { Line } from '../facts/result';
import { dollarsToCents, roundHalfAway } from '../units/money';
import { compareText } from '../units/order';
import type { Id } from '../units/types';
import { bookItemWords as words } from '../words/en/bookItems';
import { type BookIndex, missingFor, type PricedWork } from './assemblies';
import { DEFAULT_BOOK_ID } from './defaultBook';
import { assemblyOf } from './items';
import type { Group } from './range';

export type SurveyGrade = 'walk-through' | 'full';
export type DirectKind = 'material' | 'labor' | 'allowance' | 'fee';
const DIRECT: ReadonlySet<Line['kind']> = new Set(['material', 'labor', 'allowance', 'fee']);
export const isDirect = (line: Line): boolean => DIRECT.has(line.kind);

/** A material price may move between bid and order. Common practice, no source. */
export const MATERIAL_LOW = 0.95;
export const MATERIAL_HIGH = 1.1;
/**
 * What is seen with the cover on is counted less surely: every line's distance from likely to low and to high is
 * this many times as long. Common practice, no source.
 */
export const SURVEY_WIDENS: Readonly<Record<SurveyGrade, number>> = { full: 1, 'walk-through': 1.6 };

/** One line before rounding: quantity in `unit`; low and high are quantities × dollars too. */
interface Gathered {
  readonly kind: DirectKind;
  readonly item: string;
  readonly say: string;
  readonly unit: string;
  readonly dollarsEach: number;
  readonly verified: boolean;
  readonly rule: string | null;
  readonly alternate: Id | null;
  quantity: number;
  low: number;
  high: number;
  readonly homeRuns: Set<Id>;
}
export interface DirectLines {
  readonly lines: readonly Line[];
  readonly missing: readonly string[];
  /** Ids of lines whose price or hours have no source that can be looked up. */
  readonly unverified: ReadonlySet<Id>;
}

const sayOf = (kind: DirectKind, item: string): string =>
  kind === 'material' ? words.material(item) : kind === 'labor' ? words.task(item) : words.money(item);

const NO_SOURCE = /invented|memory|no source/i;
/** Sums of hours like 0.06 × 20 carry no binary dust into the result. */
const tidy = (quantity: number): number => Math.round(quantity * 1e6) / 1e6;

const lineId = (kind: string, item: string, rule: string | null, alternate: Id | null): Id =>
  `${kind}:${item}${rule === null ? '' : ` [${rule}]`}${alternate === null ? '' : ` (${alternate})`}`;

/** Work → direct cost lines, one for each book entry, rule and alternate; the quantity of labor is hours. */
export const directLines = (work: readonly PricedWork[], books: BookIndex, grade: SurveyGrade): DirectLines => {
  const gathered = new Map<Id, Gathered>();
  const missing = new Set<string>();
  const { book } = books;
  const add = (
    from: PricedWork,
    kind: DirectKind,
    item: string,
    unit: string,
    each: { quantity: number; dollars: number; low: number; high: number; verified: boolean },
  ) => {
    const id = lineId(kind, item, from.rule, from.alternate);
    const line: Gathered = gathered.get(id) ?? {
      kind,
      item,
      say: from.say ?? sayOf(kind, item),
      unit,
      dollarsEach: each.dollars,
      verified: each.verified,
      rule: from.rule,
      alternate: from.alternate,
      quantity: 0,
      low: 0,
      high: 0,
      homeRuns: new Set(),
    };
    line.quantity += from.quantity * each.quantity;
    line.low += from.quantity * each.low;
    line.high += from.quantity * each.high;
    for (const homeRun of from.homeRuns) line.homeRuns.add(homeRun);
    gathered.set(id, line);
  };

  for (const piece of [...work].sort((a, b) => compareText(a.item, b.item))) {
    if (piece.cents !== undefined) {
      if (piece.cents === null) missing.add(piece.item);
      else {
        const dollars = piece.cents / 100;
        add(piece, 'allowance', piece.item, 'each', {
          quantity: 1,
          dollars,
          low: dollars,
          high: dollars,
          verified: true,
        });
      }
      continue;
    }
    for (const id of missingFor(books, piece.item)) missing.add(id);
    const parts = assemblyOf(piece.item);
    if (!parts) continue;
    for (const { id, quantity } of parts.materials) {
      const entry = books.materials.get(id);
      if (!entry) continue;
      const cost = quantity * entry.dollars;
      add(piece, 'material', id, entry.unit, {
        quantity,
        dollars: entry.dollars,
        low: cost * MATERIAL_LOW,
        high: cost * MATERIAL_HIGH,
        verified: !NO_SOURCE.test(entry.source),
      });
    }
    for (const { id, quantity } of parts.tasks) {
      const entry = books.tasks.get(id);
      if (!entry) continue;
      const rate = book.dollarsPerCrewHour;
      add(piece, 'labor', id, 'h', {
        quantity: quantity * entry.likely,
        dollars: rate,
        low: quantity * entry.low * rate,
        high: quantity * entry.high * rate,
        verified: !NO_SOURCE.test(entry.source),
      });
    }
    const allowance = parts.allowance && books.allowances.get(parts.allowance.id);
    if (parts.allowance && allowance)
      add(piece, parts.allowance.kind, allowance.id, parts.unit, {
        quantity: 1,
        dollars: allowance.likely,
        low: allowance.low,
        high: allowance.high,
        verified: book.id !== DEFAULT_BOOK_ID,
      });
  }

  const unverified = new Set<Id>();
  const lines = [...gathered].map(([id, line]): Line => {
    if (!line.verified) unverified.add(id);
    const quantity = tidy(line.quantity);
    const likely = dollarsToCents(line.dollarsEach, quantity);
    const widen = SURVEY_WIDENS[grade];
    const ends = [line.low * 100, line.high * 100].map((end) => roundHalfAway(likely + widen * (end - likely)));
    const floor = likely >= 0 ? 0 : Number.NEGATIVE_INFINITY;
    return {
      id,
      kind: line.kind,
      item: line.item,
      say: line.say,
      quantity,
      unit: line.unit,
      dollarsEach: line.dollarsEach,
      lowCents: Math.max(floor, Math.min(likely, ...ends)),
      likelyCents: likely,
      highCents: Math.max(likely, ...ends),
      homeRuns: [...line.homeRuns].sort(compareText),
      rule: line.rule,
      alternate: line.alternate,
    };
  });
  return {
    lines: lines.sort((a, b) => compareText(a.id, b.id)),
    missing: [...missing].sort(compareText),
    unverified,
  };
};

/** Lines whose price moves together. */
export const groupOf = ({ kind, item }: Line): Group => {
  if (kind === 'labor') return 'labor';
  if (kind !== 'material') return 'single';
  if (!/^(cable|electrode):/.test(item)) return 'parts';
  return / Al( |$)/.test(item) ? 'aluminum' : 'copper';
};
