import type { Edition } from '../units/types';
import { type ByEdition, everyEdition, nec, type Source } from './source';
import type { Use } from './uses';

/**
 * Where outlets or devices bring a circuit under the AFCI rule. Thirteen rooms are named, and "similar" ones; a stair
 * is not named and inspectors differ; 'other' says nothing.
 */
export const AFCI_AREAS: Readonly<Record<Use, 'listed' | 'not listed' | 'unsettled'>> = {
  'unfinished storage': 'not listed',
  mechanical: 'not listed',
  laundry: 'listed',
  bath: 'not listed',
  'clothes closet': 'listed',
  'other closet': 'listed',
  stair: 'unsettled',
  recreation: 'listed',
  bedroom: 'listed',
  hall: 'listed',
  kitchen: 'listed',
  living: 'listed',
  dining: 'listed',
  family: 'listed',
  den: 'listed',
  library: 'listed',
  sunroom: 'listed',
  garage: 'not listed',
  outdoors: 'not listed',
  attic: 'not listed',
  'crawl space': 'not listed',
  other: 'unsettled',
};
export const AFCI_AREA_RULE: ByEdition<Source> = nec({
  2017: '210.12(A)',
  2020: '210.12(A)',
  2023: '210.12(B)',
  2026: '210.12(B)',
});
export const AFCI_EXTENSION_RULE: ByEdition<Source> = nec({
  2017: '210.12(D)',
  2020: '210.12(D)',
  2023: '210.12(E)',
  2026: '210.12(E)',
});
export const AFCI_VOLTS = 120;
/** Circuit ratings the rule speaks of, A. */
export const AFCI_RATINGS: ByEdition<readonly number[]> = {
  2017: [15, 20],
  2020: [15, 20],
  2023: [10, 15, 20],
  2026: [10, 15, 20],
};
/** An extension of not more than this, in, that adds no outlet or device is exempt. */
export const AFCI_EXEMPT_IN: ByEdition<number> = everyEdition(72);
/** What a length may pass the limit by and still be the limit: a tape is not read finer. */
export const AFCI_TOLERANCE_IN = 1 / 1024;
/** Within this of the limit, in: tape it before closing. */
export const AFCI_BAND_IN = 3;
/** Conductor inside cabinets and boxes: left out of the measure, or the text is silent and an inspector may count it. */
export const AFCI_TAILS: ByEdition<'left out' | 'inspector decides'> = {
  2017: 'inspector decides',
  2020: 'left out',
  2023: 'left out',
  2026: 'left out',
};

/** Whether a 1-pole or shared-neutral leg of that voltage and rating is a circuit the rule speaks of. */
export const afciRated = (volts: number, amps: number, edition: Edition): boolean =>
  volts === AFCI_VOLTS && AFCI_RATINGS[edition].includes(amps);
