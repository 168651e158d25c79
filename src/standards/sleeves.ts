import type { Cable } from './cable';
import { cableDiameter } from './cableDimensions';
import { RACEWAY_SIZES } from './conduit';

/** Room round a cable in a sleeve, in, so that it can be pulled. Common practice, no source. */
const PLAY_IN = 1 / 8;

/**
 * Trade size of tubing that protects one cable on a wall: wide enough to pull it through. Fill (Chapter 9 Table 1) is for
 * complete raceway systems and not for pieces that protect cable (Chapter 9 Note 2, from memory). The largest of the
 * table where the cable's outside is not known or does not fit.
 */
export const sleeveSize = (cable: Cable): string => {
  const sizes = Object.entries(RACEWAY_SIZES.EMT).sort(([, a], [, b]) => a.insideIn - b.insideIn);
  const diameter = cableDiameter(cable)?.majorIn ?? Number.POSITIVE_INFINITY;
  const [size] = sizes.find(([, { insideIn }]) => insideIn >= diameter + PLAY_IN) ?? sizes.at(-1)!;
  return size;
};
