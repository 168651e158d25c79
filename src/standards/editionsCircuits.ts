import type { ByEdition } from './source';

/**
 * An old three-wire range or dryer circuit whose bare neutral served as ground, when its panel is or becomes a subpanel.
 * 250.140: until 2020 only in service-entrance cable that starts at service equipment; since 2023 (B) the bare neutral
 * may be covered inside the panel under conditions.
 */
export const BARE_NEUTRAL_ON_SUBPANEL: ByEdition<'not allowed' | 'may be covered'> = {
  2017: 'not allowed',
  2020: 'not allowed',
  2023: 'may be covered',
  2026: 'may be covered',
};

/** Does a new dryer or range receptacle in its usual place ask for GFCI? 2017: not at these voltages; from 2020 on by 210.8(A), (D). */
export const DRYER_RANGE_GFCI: ByEdition<boolean> = { 2017: false, 2020: true, 2023: true, 2026: true };

/** A three-wire circuit of these ratings, A, is a dryer or a range: their receptacles by configuration (trade practice). */
export const APPLIANCE_RECEPTACLES: readonly { readonly amps: number; readonly receptacle: string }[] = [
  { amps: 30, receptacle: '14-30' },
  { amps: 40, receptacle: '14-50' },
  { amps: 50, receptacle: '14-50' },
];

/** Equipment grounding conductors one added bar takes: a common kit (from memory). The plan includes one bar. */
export const GROUND_BAR_TERMINALS = 21;
export const GROUND_BARS_PLANNED = 1;

/**
 * Where 210.8(A) asks for GFCI protection of new receptacles in a dwelling, as far as the code years differ: basements
 * (unfinished only until 2017), kitchens (countertops until 2020). 2026 taken as 2023: no book was read.
 */
export const GFCI_PLACES: ByEdition<{
  readonly basement: 'unfinished' | 'all';
  readonly kitchen: 'countertop' | 'all';
}> = {
  2017: { basement: 'unfinished', kitchen: 'countertop' },
  2020: { basement: 'all', kitchen: 'countertop' },
  2023: { basement: 'all', kitchen: 'all' },
  2026: { basement: 'all', kitchen: 'all' },
};

/** Does 210.8(F) ask for GFCI protection of outlets outdoors that are no receptacles? Lighting outlets are exempt. */
export const GFCI_OTHER_OUTDOORS: ByEdition<boolean> = { 2017: false, 2020: true, 2023: true, 2026: true };
