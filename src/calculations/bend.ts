import { bendLimit } from '../standards/bending';
import type { Cable } from '../standards/cable';
import { cableDiameter } from '../standards/cableDimensions';

/** Least inner radius a cable may be bent to, in; undefined where its diameter is not known or its kind has no such limit. */
export const minBendRadius = (cable: Cable): number | undefined => {
  const limit = bendLimit(cable.kind);
  const size = cableDiameter(cable);
  return limit && size && limit.times * size.majorIn;
};
