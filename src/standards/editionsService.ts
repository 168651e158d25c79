import type { CableKind, TempColumn } from './cable';
import { type ByEdition, everyEdition, nec, type Source } from './source';

/**
 * Outdoor emergency disconnect of a one- or two-family dwelling when service equipment is replaced: nothing in 2017;
 * 2020 (230.85) silent on replacement, practice differs; 2023 (230.85(C)) brings it; 2026 puts the service disconnect
 * itself outdoors (230.70(A)(1)).
 */
export const EMERGENCY_DISCONNECT: ByEdition<'none' | 'text silent on replacement' | 'on replacement'> = {
  2017: 'none',
  2020: 'text silent on replacement',
  2023: 'on replacement',
  2026: 'on replacement',
};

/** Where a service disconnect may stand, 230.70(A)(1). */
export const SERVICE_DISCONNECT_PLACE: ByEdition<'outdoors or nearest the entrance' | 'outdoors'> = {
  2017: 'outdoors or nearest the entrance',
  2020: 'outdoors or nearest the entrance',
  2023: 'outdoors or nearest the entrance',
  2026: 'outdoors',
};

/** Wires of a feeder to a subpanel: two hots, neutral, EGC (215.6, 250.142). */
export const FEEDER_WIRES = everyEdition(4);

/** The commonest feeder error: this conductor on a 100 A device where only part of the dwelling hangs on it. */
export const COMMONEST_FEEDER_ERROR = { metal: 'Al', size: '2' } as const;

/** Least rating of the service disconnect of a one-family dwelling, A. */
export const SERVICE_LEAST_AMPS = 100;
export const SERVICE_LEAST_RULE: ByEdition<Source> = nec('230.79(C)', 'memory');

/** Words of the feeder's source that mean: no feeder, service conductors. */
export const UTILITY = 'utility';

/** Things hung on an old panel that bring power of their own. */
export const POWER_SOURCES: readonly string[] = ['transfer switch', 'generator inlet', 'solar', 'battery'];

/** The lower of the two markings of terminals, °C: one end so marked decides for both. */
export const LOWER_MARKING = 60;
export const HIGHER_MARKING = 75;

/** Room for the feeder at or under this needs no ambient correction, °F (30 °C, the table's own ambient). */
export const TABLE_AMBIENT_F = 86;
/** Current-carrying conductors of a 120/240 V feeder: its neutral carries only the unbalance. */
export const FEEDER_CARRYING = 2;
/** Start of insulation nobody read a marking on, °C. */
export const UNMARKED_COLUMN = 60;
/** A cable nobody identified, at its strictest and at its freest: kinds held to 60 °C and kinds that are not, insulation columns. */
export const STRICT_AND_FREE_KINDS: readonly CableKind[] = ['NM', 'SE-R'];
export const STRICT_AND_FREE_COLUMNS: readonly TempColumn[] = [60, 90];

/** Service disconnects in one enclosure, 230.71: up to six until 2017; since 2020 (B) each has its own, or a barrier between. */
export const SERVICE_MAINS_TOGETHER: ByEdition<'up to six' | 'one'> = {
  2017: 'up to six',
  2020: 'one',
  2023: 'one',
  2026: 'one',
};
