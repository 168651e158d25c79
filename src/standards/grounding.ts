import type { Metal } from './cable';
import { BEYOND, type ByEdition, type Looked, nec, type Source } from './source';

/** Smallest equipment grounding conductor by the rating of the overcurrent device ahead, A. */
export const EGC_SIZES: readonly { readonly toAmps: number; readonly Cu: string; readonly Al: string }[] = [
  { toAmps: 15, Cu: '14', Al: '12' },
  { toAmps: 20, Cu: '12', Al: '10' },
  { toAmps: 60, Cu: '10', Al: '8' },
  { toAmps: 100, Cu: '8', Al: '6' },
  { toAmps: 200, Cu: '6', Al: '4' },
  { toAmps: 300, Cu: '4', Al: '2' },
  { toAmps: 400, Cu: '3', Al: '1' },
  { toAmps: 500, Cu: '2', Al: '1/0' },
  { toAmps: 600, Cu: '1', Al: '2/0' },
  { toAmps: 800, Cu: '1/0', Al: '3/0' },
  { toAmps: 1000, Cu: '2/0', Al: '4/0' },
  { toAmps: 1200, Cu: '3/0', Al: '250' },
];
export const EGC_TABLE: ByEdition<Source> = nec('Table 250.122');
/** Ungrounded conductors made larger than they had to be: the EGC grows by the same ratio of circular mils. */
export const EGC_UPSIZE_RULE: ByEdition<Source> = nec('250.122(B)');
/** The EGC need not be larger than the circuit's own conductors. */
export const EGC_MOST_RULE: ByEdition<Source> = nec('250.122(A)');

/** The neutral of a feeder is not smaller than its EGC. */
export const FEEDER_NEUTRAL_RULE: ByEdition<Source> = nec('215.2', 'memory');

/** EGC size for a device of `breakerAmps`: the first row that reaches it. */
export const egcSize = (metal: Metal, breakerAmps: number): Looked<string> =>
  EGC_SIZES.find((row) => breakerAmps <= row.toAmps)?.[metal] ?? BEYOND;
