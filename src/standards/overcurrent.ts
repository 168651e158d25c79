import type { Edition } from '../units/types';
import { BEYOND, type ByEdition, type Looked, nec, type Source } from './source';

const FROM_15: readonly number[] = [
  15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500, 600,
  700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000,
];

/** Standard ratings of breakers and fuses, A. 10 A joins the list in 2023; ratings over 600 A have one source. */
export const STANDARD_SIZES: ByEdition<readonly number[]> = {
  2017: FROM_15,
  2020: FROM_15,
  2023: [10, ...FROM_15],
  2026: [10, ...FROM_15],
};
export const STANDARD_SIZES_RULE: ByEdition<Source> = nec({
  2017: '240.6(A)',
  2020: '240.6(A)',
  2023: 'Table 240.6(A)',
  2026: 'Table 240.6(A)',
});

export const standardSizes = (edition: Edition): readonly number[] => STANDARD_SIZES[edition];

/** Rounding up to the next standard rating is allowed up to this device, A. */
export const NEXT_SIZE_MOST = 800;
export const NEXT_SIZE_RULE: ByEdition<Source> = nec('240.4(B)');
export const PROTECT_AT_AMPACITY: ByEdition<Source> = nec('240.4');

/** Smallest standard rating that is not less than `amps`: the largest device 240.4(B) lets protect that ampacity. */
export const nextStandardSize = (amps: number, edition: Edition): Looked<number> =>
  standardSizes(edition).find((size) => size >= amps - 1e-9) ?? BEYOND;

/** Largest standard rating that is not more than `amps`. */
export const standardSizeBelow = (amps: number, edition: Edition): Looked<number> =>
  standardSizes(edition).findLast((size) => size <= amps + 1e-9) ?? BEYOND;
