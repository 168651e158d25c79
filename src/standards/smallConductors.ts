import type { Metal } from './cable';
import { type ByEdition, nec, type Source } from './source';

/** Largest overcurrent device of a small conductor, A, whatever its column says (18 and 16 AWG: specially marked devices only). */
export const SMALL_CONDUCTORS: Readonly<Record<Metal, Readonly<Record<string, number>>>> = {
  Cu: { '18': 7, '16': 10, '14': 15, '12': 20, '10': 30 },
  Al: { '12': 15, '10': 25 },
};
export const SMALL_CONDUCTORS_RULE: ByEdition<Source> = nec('240.4(D)');

/** The cap of 240.4(D), A, or null for sizes it does not cap. */
export const smallConductorMost = (metal: Metal, size: string): number | null => SMALL_CONDUCTORS[metal][size] ?? null;
