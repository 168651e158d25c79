import type { Cable } from '../standards/cable';
import { isKnown } from '../units/types';
import { conductorsOf } from './newHomeRun';

/**
 * Trade size of the connector for a cable, by size and number of circuit conductors: the knockout it fills. Common
 * practice, no source; the connector's own listing governs.
 */
const CONNECTOR: Readonly<Record<string, readonly [two: string, three: string]>> = {
  '14': ['1/2', '1/2'],
  '12': ['1/2', '1/2'],
  '10': ['1/2', '3/4'],
  '8': ['3/4', '3/4'],
  '6': ['3/4', '1'],
  '4': ['1', '1'],
  '3': ['1', '1-1/4'],
  '2': ['1-1/4', '1-1/4'],
  '1': ['1-1/4', '1-1/2'],
};
const LARGER = '2';
const WHEN_UNKNOWN = '3/4';

export const connectorSize = (cable: Cable): string => {
  if (!isKnown(cable.size)) return WHEN_UNKNOWN;
  const sizes = CONNECTOR[cable.size];
  if (!sizes) return LARGER;
  return conductorsOf(cable) <= 2 ? sizes[0] : sizes[1];
};
