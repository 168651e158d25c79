import type { Comparison, Line, Plan } from '../facts/result';
import type { PriceBook } from '../job/schema';
import { isDirect } from '../pricing/lines';
import { markupOf } from '../pricing/onTop';
import { compareText } from '../units/order';
import { recommended } from './decision';

/** Lines of one kind and item are one row, whatever rule or alternate asked for them. */
const rowKey = (line: Line): string => `${line.kind}:${line.item}`;
interface Sum {
  readonly line: Line;
  cents: number;
  quantity: number;
}
const sums = (plan: Plan): Map<string, Sum> => {
  const out = new Map<string, Sum>();
  for (const line of plan.price.lines) {
    const sum = out.get(rowKey(line)) ?? { line, cents: 0, quantity: 0 };
    sum.cents += line.likelyCents;
    sum.quantity += line.quantity;
    out.set(rowKey(line), sum);
  }
  return out;
};

/** What a direct dollar becomes in the price: overhead and profit on it, and the tax on its kind. */
const loaded = (book: PriceBook, { kind, item }: Line): number => {
  const charged = (1 + book.overheadRate) * (1 + (markupOf(book.profit) ?? 0));
  const on = new Set(book.tax.on);
  const taxed = on.has(kind) || on.has(item) ? 1 : 0;
  const overhead = on.has('overhead') ? book.overheadRate : 0;
  const profit = on.has('profit') ? charged - 1 - book.overheadRate : 0;
  return charged + book.tax.rate * (taxed + overhead + profit);
};

/** Fewest of these, and a price that nobody could meet is no turning point. */
const MOST_BREAK_EVENS = 5;
const WITHIN = 10;
const LABOR = 'labor';
const fourPlaces = (x: number): number => Math.round(x * 1e4) / 1e4;

/**
 * At which price of one thing the two would cost the same. The price is linear in each, so this is exact up to cents
 * and to rounding and least charge; the nearest turning points first.
 */
const breakEvens = (book: PriceBook, a: Map<string, Sum>, b: Map<string, Sum>, differs: number) => {
  const keys = [...new Set([...a.keys(), ...b.keys()])].filter((key) => isDirect((a.get(key) ?? b.get(key))!.line));
  const by = new Map<string, { say: string | null; unit: string; now: number; quantity: number; slope: number }>();
  for (const key of keys) {
    const { line } = (a.get(key) ?? b.get(key))!;
    const quantity = (a.get(key)?.quantity ?? 0) - (b.get(key)?.quantity ?? 0);
    const id = line.kind === LABOR ? LABOR : key;
    const sum = by.get(id) ?? {
      say: line.kind === LABOR ? null : line.say,
      unit: line.unit,
      now: line.dollarsEach,
      quantity: 0,
      slope: 0,
    };
    sum.quantity += quantity;
    sum.slope += quantity * loaded(book, line) * 100;
    by.set(id, sum);
  }
  return [...by]
    .flatMap(([id, { say, unit, now, slope }]) => {
      if (Math.abs(slope) < 1e-9 || now <= 0) return [];
      const at = fourPlaces(now - differs / slope);
      return at > 0 && at / now <= WITHIN && at !== now ? [{ id, say, unit, now, at }] : [];
    })
    .sort((x, y) => Math.abs(Math.log(x.at / x.now)) - Math.abs(Math.log(y.at / y.now)) || compareText(x.id, y.id))
    .slice(0, MOST_BREAK_EVENS);
};

export const comparePlans = (book: PriceBook, plan: Plan, against: Plan, laborSay: string): Comparison => {
  const [a, b] = [sums(plan), sums(against)];
  const rows = [...new Set([...a.keys(), ...b.keys()])]
    .map((key) => {
      const { line } = (a.get(key) ?? b.get(key))!;
      const [cents, againstCents] = [a.get(key)?.cents ?? 0, b.get(key)?.cents ?? 0];
      return { id: key, kind: line.kind, say: line.say, cents, againstCents, differsCents: cents - againstCents };
    })
    .filter((row) => row.differsCents !== 0)
    .sort((x, y) => Math.abs(y.differsCents) - Math.abs(x.differsCents) || compareText(x.id, y.id));
  const differs = rows.reduce((sum, row) => sum + row.differsCents, 0);
  return {
    option: plan.option,
    against: against.option,
    rows,
    differsCents: differs,
    breakEvens: breakEvens(book, a, b, differs).map((e) => ({ ...e, say: e.say ?? laborSay })),
  };
};

/** Every option beside the advised one, and that beside the next best. */
export const comparisonsOf = (book: PriceBook, plans: readonly Plan[], laborSay: string): Comparison[] => {
  const best = recommended(plans) ?? plans[0];
  if (!best || plans.length < 2) return [];
  const others = plans.filter((p) => p.option !== best.option);
  const next = recommended(others) ?? others[0]!;
  return plans.map((plan) => comparePlans(book, plan, plan.option === best.option ? next : best, laborSay));
};
