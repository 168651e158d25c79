import type { Enclosure } from './schema';

/**
 * A can hung this way up: turned over, the end its main is at goes along. `mainAt` is the end of the can as it hangs,
 * which is what a survey sees and what conductors have to reach.
 */
export const turned = (can: Enclosure, upright: boolean): Enclosure =>
  can.upright === upright ? can : { ...can, upright, mainAt: can.mainAt === 'top' ? 'bottom' : 'top' };
