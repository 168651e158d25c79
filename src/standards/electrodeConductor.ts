import type { Metal } from './cable';
import { compareSizes, isSize } from './sizes';
import { BEYOND, type ByEdition, type Looked, nec, type Source } from './source';

interface Row {
  /** Largest ungrounded service conductor of the row; null = everything above. */
  readonly Cu: string | null;
  readonly Al: string | null;
  /** Smallest conductor, by its own metal. */
  readonly copper: string;
  readonly aluminum: string;
}

/** Grounding electrode conductor by the largest ungrounded service conductor. */
export const GEC_SIZES: readonly Row[] = [
  { Cu: '2', Al: '1/0', copper: '8', aluminum: '6' },
  { Cu: '1/0', Al: '3/0', copper: '6', aluminum: '4' },
  { Cu: '3/0', Al: '250', copper: '4', aluminum: '2' },
  { Cu: '350', Al: '500', copper: '2', aluminum: '1/0' },
  { Cu: '600', Al: '900', copper: '1/0', aluminum: '3/0' },
  { Cu: '1100', Al: '1750', copper: '2/0', aluminum: '4/0' },
  { Cu: null, Al: null, copper: '3/0', aluminum: '250' },
];
export const GEC_TABLE: ByEdition<Source> = nec('Table 250.66');

/** Main and supply-side bonding jumpers, grounded service conductor: above the last row 12.5 % of the conductor's area (250.102(C)(1)). */
export const BONDING_SIZES: readonly Row[] = [
  { Cu: '2', Al: '1/0', copper: '8', aluminum: '6' },
  { Cu: '1/0', Al: '3/0', copper: '6', aluminum: '4' },
  { Cu: '3/0', Al: '250', copper: '4', aluminum: '2' },
  { Cu: '350', Al: '500', copper: '2', aluminum: '1/0' },
  { Cu: '600', Al: '900', copper: '1/0', aluminum: '3/0' },
  { Cu: '1100', Al: '1750', copper: '2/0', aluminum: '4/0' },
];
export const BONDING_TABLE: ByEdition<Source> = nec('Table 250.102(C)(1)', 'one source');

/** What the electrode itself needs at most: rod, pipe or plate alone; concrete-encased alone (one source). */
export const GEC_CAPS = {
  'rod, pipe or plate': { Cu: '6', Al: '4' },
  'concrete-encased': { Cu: '4', Al: null },
} as const;
export const GEC_CAPS_RULE: ByEdition<Source> = nec({
  2017: '250.66(A), (B)',
  2020: '250.66(A), (B)',
  2023: '250.66(A), (B)',
  2026: '250.66(A), (B)',
});

const rowOf = (rows: readonly Row[], metal: Metal, size: string): Row | undefined =>
  isSize(size)
    ? rows.find((row) => {
        const most = row[metal];
        return most === null || compareSizes(size, most) <= 0;
      })
    : undefined;

/** Smallest grounding electrode conductor of `of` metal for service conductors of `metal` and `size`. */
export const gecSize = (metal: Metal, size: string, of: Metal = 'Cu'): Looked<string> =>
  rowOf(GEC_SIZES, metal, size)?.[of === 'Cu' ? 'copper' : 'aluminum'] ?? BEYOND;

/** Smallest bonding jumper of `of` metal for service conductors of `metal` and `size`. */
export const bondingSize = (metal: Metal, size: string, of: Metal = 'Cu'): Looked<string> =>
  rowOf(BONDING_SIZES, metal, size)?.[of === 'Cu' ? 'copper' : 'aluminum'] ?? BEYOND;

/** The most an electrode of that kind ever asks for; null = no cap known. */
export const gecCap = (electrode: keyof typeof GEC_CAPS, metal: Metal): string | null => GEC_CAPS[electrode][metal];
