import { type ByEdition, everyEdition } from './source';
import type { Use } from './uses';

/** What each code year does about arc-fault protection of existing circuits. Rules and calculations look it up; they compare no years. */
export interface AfciEdition {
  /** Ratings of the 120 V circuits inside the rule, A. */
  readonly amps: readonly number[];
  /** Conductors inside cabinets and boxes, in the 6 ft: left out by the text, or not spoken of. */
  readonly tails: 'left out' | 'text silent';
  /** Where the protection may stand besides the breaker. */
  readonly firstDevice: 'first receptacle' | 'first receptacle or switch';
}

/**
 * NEC 210.12(D) of 2017 and 2020, 210.12(E) of 2023 and 2026: two or more public sources for the ratings and for tails
 * left out from 2020 on; 10 A circuits since 2023; the first switch in 2026 from one source.
 */
export const AFCI_EDITIONS: ByEdition<AfciEdition> = {
  2017: { amps: [15, 20], tails: 'text silent', firstDevice: 'first receptacle' },
  2020: { amps: [15, 20], tails: 'left out', firstDevice: 'first receptacle' },
  2023: { amps: [10, 15, 20], tails: 'left out', firstDevice: 'first receptacle' },
  2026: { amps: [10, 15, 20], tails: 'left out', firstDevice: 'first receptacle or switch' },
};

/** Nominal voltage of the circuits inside the rule: line to neutral. */
export const AFCI_VOLTS = 120;
/** An extension of not more than this is excused: 6 ft (1.8 m), every edition since 2014. */
export const AFCI_EXEMPT_IN: ByEdition<number> = everyEdition(72);
/** Room for float noise of a length re-measured from its points, in. */
export const LENGTH_NOISE_IN = 1 / 1024;
/** Within this of the limit a length is taped before anything is closed (common practice, no source). */
export const TAPE_BAND_IN = 3;

/**
 * Is a room of this use in the list of 210.12(A) (2017, 2020; (B) from 2023)? Thirteen rooms and "similar rooms or
 * areas". Stairs and what the survey calls other are not named: the inspector says.
 */
export const AFCI_LISTED: Readonly<Record<Use, 'listed' | 'not listed' | 'not named'>> = {
  'unfinished storage': 'not listed',
  mechanical: 'not listed',
  laundry: 'listed',
  bath: 'not listed',
  'clothes closet': 'listed',
  'other closet': 'listed',
  stair: 'not named',
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
  other: 'not named',
};

/** Outlet branch-circuit AFCI receptacle by the rating of its circuit, A: as the price book names it. */
export const AFCI_RECEPTACLES: Readonly<Record<number, string>> = { 15: '5-15 AFCI', 20: '5-20 AFCI' };
