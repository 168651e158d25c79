/**
 * Conductor sizes in order, AWG then kcmil (NEC Chapter 9 Table 8). Sizes over 600 kcmil are here only as limits of
 * the grounding tables.
 */
export const SIZES = [
  '18',
  '16',
  '14',
  '12',
  '10',
  '8',
  '6',
  '4',
  '3',
  '2',
  '1',
  '1/0',
  '2/0',
  '3/0',
  '4/0',
  '250',
  '300',
  '350',
  '400',
  '500',
  '600',
  '700',
  '750',
  '800',
  '900',
  '1000',
  '1100',
  '1250',
  '1500',
  '1750',
  '2000',
] as const;
const RANK: ReadonlyMap<string, number> = new Map(SIZES.map((size, i) => [size, i]));

export const isSize = (text: string): boolean => RANK.has(text);
/** Negative when `a` is the smaller conductor. Both must be sizes. */
export const compareSizes = (a: string, b: string): number => RANK.get(a)! - RANK.get(b)!;
