import type { UnitMills, Work } from '../facts/work';
import { type Mills, roundHalfAway } from '../units/money';

/**
 * What an item without a price counts as while ways are compared, mills: dear, so that a gap in the price book never
 * makes a way look cheap. It is never part of a printed price. Common practice, no source.
 */
const STAND_IN = { cable: 6_000, ft: 8_000, each: 60_000 } as const;
const BY_THE_FOOT = new Set(['pull ft', 'running board', 'sleeve', 'patch', 'lift tile']);

const standIn = (item: string): Mills =>
  item.startsWith('cable:') ? STAND_IN.cable : BY_THE_FOOT.has(item) ? STAND_IN.ft : STAND_IN.each;

export type Counted = Pick<Work, 'item' | 'quantity'>;
export interface Pricer {
  /** Mills of one unit, with a stand-in where the book has none. */
  readonly of: (item: string) => Mills;
  /** What work costs in the search, whole mills. */
  readonly cost: (work: readonly Counted[]) => Mills;
  /** What work costs at the book's prices alone, whole mills: rounded once, as pricing does. */
  readonly exact: (work: readonly Counted[]) => Mills;
}

export const makePricer = (unit: UnitMills): Pricer => {
  const of = (item: string) => unit(item) ?? standIn(item);
  return {
    of,
    cost: (work) => roundHalfAway(work.reduce((sum, w) => sum + w.quantity * of(w.item), 0)),
    exact: (work) => roundHalfAway(work.reduce((sum, w) => sum + w.quantity * (unit(w.item) ?? 0), 0)),
  };
};
