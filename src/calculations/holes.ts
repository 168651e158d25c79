import { BITS_IN, HOLE_CENTERS_IN } from '../standards/boring';
import type { Cable } from '../standards/cable';
import { cableDiameter, insulatedConductors } from '../standards/cableDimensions';

/** A cable goes through a hole with this much play, in: common practice, no source. */
const PLAY_IN = 1 / 8;
/** Several cables fill at most this share of a hole (the share of a raceway with more than two): common practice, no source. */
const FILL = 0.4;
/** Wood between two holes: what the joist rule asks for is checked by the caller; this is the crew's own spacing. */
const WOOD_IN = 2;

const BRANCH_SIZES: ReadonlySet<string> = new Set(['14', '12', '10']);
/** The flat two-wire branch cable the rule of thumb is about. */
const isTwoWireBranch = (cable: Cable): boolean =>
  (cable.kind === 'NM' || cable.kind === 'NM without ground' || cable.kind === 'UF') &&
  BRANCH_SIZES.has(cable.size) &&
  insulatedConductors(cable) === 2;

/**
 * Diameter of the hole these cables share, in. Two two-wire branch cables 3/4, three 1 (trade practice); otherwise the
 * smallest bit with play round the thickest and room for all. Undefined where a cable's size is not known or no bit does.
 */
export const holeDiameter = (cables: readonly Cable[]): number | undefined => {
  if (cables.length === 0) return undefined;
  if (cables.every(isTwoWireBranch)) {
    if (cables.length <= 2) return 0.75;
    if (cables.length === 3) return 1;
  }
  const sizes = cables.map(cableDiameter);
  if (sizes.some((s) => s === undefined)) return undefined;
  const thickest = Math.max(...sizes.map((s) => s!.majorIn));
  const area = sizes.reduce((sum, s) => sum + (Math.PI / 4) * s!.majorIn * s!.minorIn, 0);
  return BITS_IN.find(
    (bit) => bit >= thickest + PLAY_IN && (cables.length === 1 || area <= FILL * (Math.PI / 4) * bit * bit),
  );
};

/** Least distance between the centers of two holes in one joist, in: 3 in, and 2 in of wood between. */
export const holeCentersApart = (a: number, b: number): number => Math.max(HOLE_CENTERS_IN, a / 2 + b / 2 + WOOD_IN);
