import { isKnown } from '../units/types';
import type { Cable } from './cable';
import { cableDiameter, insulatedConductors, outsideSize } from './cableDimensions';
import { compareSizes, isSize } from './sizes';

/** Largest cable (major diameter, in) one cable connector of a trade size takes: from memory; the connector's own range governs. */
export const CONNECTOR_RANGE: readonly { readonly size: string; readonly upToIn: number }[] = [
  { size: '1/2', upToIn: 0.595 },
  { size: '3/4', upToIn: 0.76 },
  { size: '1', upToIn: 1 },
  { size: '1-1/4', upToIn: 1.25 },
  { size: '1-1/2', upToIn: 1.5 },
  { size: '2', upToIn: 1.95 },
  { size: '2-1/2', upToIn: 2.4 },
];
const connectorFor = (diameterIn: number): string | undefined =>
  CONNECTOR_RANGE.find((c) => diameterIn <= c.upToIn)?.size;

/** Trade size of the connector for one cable: '1/2', '3/4', '1' …; undefined where the cable's size is not known. */
export const connectorSize = (cable: Cable): string | undefined => {
  const size = cableDiameter(cable);
  return size && connectorFor(size.majorIn);
};

const LARGEST = CONNECTOR_RANGE.at(-1)!.size;
/** For a cable whose size nobody knows: takes any NM cable up to 6 AWG. Common practice, no source. */
const UNREAD = '3/4';

/** Sizes at which an SE cable's outside is known stand in for one that is in no table: the next larger conductors. */
const SE_STEPS = ['8', '6', '4', '2', '1', '1/0', '2/0', '3/0', '4/0'];

/**
 * The connector that is ordered and whose knockout is counted. Where the cable itself is in no table, its size is taken
 * from NM cable of the same conductors, else from SE cable of the next larger conductors; beyond those the largest.
 */
export const connectorToOrder = (cable: Cable): string => {
  if (!isKnown(cable.size)) return UNREAD;
  const known = connectorSize(cable);
  if (known !== undefined) return known;
  const conductors = insulatedConductors(cable) ?? 3;
  const { size } = cable;
  const step = isSize(size) ? SE_STEPS.find((s) => isSize(s) && compareSizes(s, size) >= 0) : undefined;
  const likely =
    outsideSize('NM', size, conductors, 'Cu') ?? (step === undefined ? undefined : outsideSize('SE-R', step, 3, 'Al'));
  return (likely && connectorFor(likely.majorIn)) ?? LARGEST;
};

/**
 * Twist-on splice connectors. Class letters are ours, no standard; the combinations printed on the package govern.
 * Common practice (how-to and retail pages); 5 × 14, 2 × 10, 4 × 10, 2 × 8 and 2 × 6 from memory.
 */
export const SPLICE_CLASSES: Readonly<Record<string, readonly string[]>> = {
  '2 x 14': ['S'],
  '3 x 14': ['S', 'M'],
  '4 x 14': ['M', 'L'],
  '5 x 14': ['L'],
  '2 x 12': ['S', 'M'],
  '3 x 12': ['M', 'L'],
  '4 x 12': ['L'],
  '5 x 12': ['L'],
  '2 x 10': ['L'],
  '3 x 10': ['L'],
  '4 x 10': ['XL'],
  '2 x 8': ['XL'],
  '2 x 6': ['XL'],
};
