import { isKnown, type U } from '../units/types';
import type { Cable } from './cable';

/**
 * A circuit of two hots whose neutral has to serve as ground: bare neutral, or an insulated one and no EGC. Range and
 * dryer circuits of old.
 */
export const isThreeWire = (cable: Cable): U<boolean> => {
  if (cable.hots === 1 || cable.neutral === 'none') return false;
  if (cable.neutral === 'insulated') return isKnown(cable.ground) ? !cable.ground : 'unknown';
  return isKnown(cable.neutral) && isKnown(cable.hots) ? true : 'unknown';
};
