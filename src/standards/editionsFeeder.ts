import type { Cable, CableKind } from './cable';
import { cableTrade } from './cableNames';
import { isSize } from './sizes';

/**
 * Size of the bare conductor in a service-entrance cable, as its trade name gives it ('2-2-2-4': 4). Null where the
 * kind has no fixed one: read it on the jacket.
 */
export const bareConductorOf = (cable: Cable): string | null => {
  if (cable.kind !== 'SE-R' || cable.ground !== true) return null;
  const last = cableTrade(cable).split(' ')[0]!.split('-').at(-1)!;
  return isSize(last) ? last : null;
};

/** Cables whose insulated neutral is made as large as their hots, as this program names and prices them; 220.61 may allow less. */
export const FULL_NEUTRAL_KINDS: readonly CableKind[] = ['NM', 'AC', 'MC', 'SE-R', 'UF'];
