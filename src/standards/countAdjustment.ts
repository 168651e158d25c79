import { type ByEdition, everyEdition, nec, type Source } from './source';

/** Share of the ampacity left with so many current-carrying conductors together. `to` = largest count of the row. */
export const COUNT_FACTORS: readonly { readonly to: number; readonly factor: number }[] = [
  { to: 3, factor: 1 },
  { to: 6, factor: 0.8 },
  { to: 9, factor: 0.7 },
  { to: 20, factor: 0.5 },
  { to: 30, factor: 0.45 },
  { to: 40, factor: 0.4 },
  { to: Number.POSITIVE_INFINITY, factor: 0.35 },
];
export const COUNT_TABLE: ByEdition<Source> = nec({
  2017: 'Table 310.15(B)(3)(a)',
  2020: 'Table 310.15(C)(1)',
  2023: 'Table 310.15(C)(1)',
  2026: 'Table 310.15(C)(1)',
});

/** Factor for `n` current-carrying conductors. */
export const countFactor = (n: number): number => COUNT_FACTORS.find((row) => n <= row.to)!.factor;

/** Most conductors that leave at least `factor` of the ampacity. */
export const mostConductorsAt = (factor: number): number =>
  COUNT_FACTORS.reduce((most, row) => (row.factor >= factor ? row.to : most), 0);

/** Lengths up to this, in, need no adjustment: bundled cables and raceways alike. */
export const UNADJUSTED_LENGTH_IN = 24;

/** More cables than this, unspaced in one sealed opening or touching insulation, count as together at any length. */
export const SEALED_CABLES: ByEdition<number> = everyEdition(2);
export const SEALED_RULE: ByEdition<Source> = nec('334.80');

/** Current-carrying conductors at one cross-section of a wireway that need no adjustment. */
export const WIREWAY_UNADJUSTED = 30;
export const WIREWAY_RULE: ByEdition<Source> = nec('376.22(B)');

/**
 * Armored and metal-clad cable without an overall jacket, at most three current-carrying conductors each, of one size
 * and metal: no adjustment up to `most` conductors together, `factorAbove` beyond. The figure above `most` is from memory.
 */
export const ARMORED_RELIEF = { size: '12', metal: 'Cu', perCable: 3, most: 20, factorAbove: 0.6 } as const;
export const ARMORED_RULE: ByEdition<Source> = nec(
  { 2017: '310.15(B)(3)(a)(4)', 2020: '310.15(C)(1)(d)', 2023: '310.15(C)(1)(d)', 2026: '310.15(C)(1)(d)' },
  'one source',
);

/** A stretch of lower ampacity may be left out up to the lesser of these: 10 ft, a tenth of the circuit. */
export const SHORT_STRETCH = { mostIn: 120, share: 0.1 } as const;
export const SHORT_RULE: ByEdition<Source> = nec({
  2017: '310.15(A)(2) Exc.',
  2020: '310.14(A)(2) Exc.',
  2023: '310.14(A)(2) Exc.',
  2026: '310.14(A)(2) Exc.',
});
