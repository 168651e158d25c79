import type { Metal } from './cable';
import { BEYOND, type ByEdition, type Looked, nec, type Source } from './source';

/**
 * Conductors of a single-phase dwelling service, or of a feeder that carries the whole dwelling: 83 % of the rating
 * will do. Sizes as printed, for 75 °C terminals and no correction or adjustment.
 */
export const DWELLING_SIZES: readonly { readonly amps: number; readonly Cu: string; readonly Al: string }[] = [
  { amps: 100, Cu: '4', Al: '2' },
  { amps: 110, Cu: '3', Al: '1' },
  { amps: 125, Cu: '2', Al: '1/0' },
  { amps: 150, Cu: '1', Al: '2/0' },
  { amps: 175, Cu: '1/0', Al: '3/0' },
  { amps: 200, Cu: '2/0', Al: '4/0' },
  { amps: 225, Cu: '3/0', Al: '250' },
  { amps: 250, Cu: '4/0', Al: '300' },
  { amps: 300, Cu: '250', Al: '350' },
  { amps: 350, Cu: '350', Al: '500' },
  { amps: 400, Cu: '400', Al: '600' },
];
export const DWELLING_SHARE = 0.83;
export const DWELLING_FROM_AMPS = 100;
export const DWELLING_TO_AMPS = 400;
export const DWELLING_RULE: ByEdition<Source> = nec({
  2017: '310.15(B)(7)',
  2020: '310.12',
  2023: '310.12',
  2026: '310.12',
});

/** Printed size for a rating of `amps`: the first row that reaches it. Under 100 A and over 400 A the table has no say. */
export const dwellingSize = (metal: Metal, amps: number): Looked<string> =>
  amps < DWELLING_FROM_AMPS ? BEYOND : (DWELLING_SIZES.find((row) => amps <= row.amps)?.[metal] ?? BEYOND);

/** Least ampacity, A, that carries a whole-dwelling rating of `amps`. */
export const dwellingAmpacity = (amps: number): Looked<number> =>
  amps < DWELLING_FROM_AMPS || amps > DWELLING_TO_AMPS ? BEYOND : DWELLING_SHARE * amps;
