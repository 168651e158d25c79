import type { TempColumn } from './cable';
import { BEYOND, type ByEdition, type Looked, nec, type Source } from './source';

/** Factors for an ambient other than 30 °C (86 °F), by the 60, 75 and 90 °C columns. `toF` = warmest ambient of the row, °F. */
export const AMBIENT_FACTORS: readonly {
  readonly toF: number;
  readonly factors: readonly [Looked<number>, Looked<number>, Looked<number>];
}[] = [
  { toF: 50, factors: [1.29, 1.2, 1.15] },
  { toF: 59, factors: [1.22, 1.15, 1.12] },
  { toF: 68, factors: [1.15, 1.11, 1.08] },
  { toF: 77, factors: [1.08, 1.05, 1.04] },
  { toF: 86, factors: [1.0, 1.0, 1.0] },
  { toF: 95, factors: [0.91, 0.94, 0.96] },
  { toF: 104, factors: [0.82, 0.88, 0.91] },
  { toF: 113, factors: [0.71, 0.82, 0.87] },
  { toF: 122, factors: [0.58, 0.75, 0.82] },
  { toF: 131, factors: [0.41, 0.67, 0.76] },
  { toF: 140, factors: [BEYOND, 0.58, 0.71] },
  { toF: 149, factors: [BEYOND, 0.47, 0.65] },
  { toF: 158, factors: [BEYOND, 0.33, 0.58] },
  { toF: 167, factors: [BEYOND, BEYOND, 0.5] },
  { toF: 176, factors: [BEYOND, BEYOND, 0.41] },
  { toF: 185, factors: [BEYOND, BEYOND, 0.29] },
];
export const AMBIENT_TABLE: ByEdition<Source> = nec({
  2017: 'Table 310.15(B)(2)(a)',
  2020: 'Table 310.15(B)(1)',
  2023: 'Table 310.15(B)(1)(1)',
  2026: 'Table 310.15(B)(1)(1)',
});

const COLUMN: Readonly<Record<TempColumn, 0 | 1 | 2>> = { 60: 0, 75: 1, 90: 2 };

/** Correction factor of a conductor that starts in `column`, in an ambient of `ambientF` °F. Between two rows the warmer counts. */
export const ambientFactor = (column: TempColumn, ambientF: number): Looked<number> =>
  AMBIENT_FACTORS.find((row) => ambientF <= row.toF)?.factors[COLUMN[column]] ?? BEYOND;
