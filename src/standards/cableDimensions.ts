import { isKnown } from '../units/types';
import type { Cable, CableKind } from './cable';
import type { Standing } from './source';

/**
 * Outside size of cables, in. Building-wire data sheets of one maker (NM-B, aluminum SER); dimensions are nominal and
 * vary by maker. 'memory' entries are worked out from conductor and jacket build-up or are trade knowledge: measure
 * before a hole or connector is bought by them.
 */
export interface CableSize {
  readonly majorIn: number;
  readonly minorIn: number;
  readonly standing: Standing;
}
const flat = (majorIn: number, minorIn: number, standing: Standing = 'one source'): CableSize => ({
  majorIn,
  minorIn,
  standing,
});
const round = (diameterIn: number, standing: Standing = 'one source'): CableSize =>
  flat(diameterIn, diameterIn, standing);

/** Size/insulated conductors, with a bare EGC. 14/3 and 12/3 are also made round (about 0.32 and 0.37 in): the flat build is taken. */
export const NM_SIZES: Readonly<Record<string, CableSize>> = {
  '14/2': flat(0.372, 0.176),
  '14/3': flat(0.478, 0.176),
  '14/4': round(0.35),
  '12/2': flat(0.422, 0.19),
  '12/3': flat(0.524, 0.19),
  '12/4': round(0.395),
  '10/2': flat(0.505, 0.218),
  '10/3': round(0.43, 'memory'),
  '8/2': flat(0.61, 0.28, 'memory'),
  '8/3': round(0.6, 'memory'),
  '6/2': flat(0.69, 0.32, 'memory'),
  '6/3': round(0.68, 'memory'),
  '4/3': round(0.843),
  '2/3': round(0.99, 'memory'),
};
/** Four-conductor aluminum SER by the size of its ungrounded conductors. */
export const SER_SIZES: Readonly<Record<string, CableSize>> = {
  '8': round(0.542),
  '6': round(0.651),
  '4': round(0.757),
  '2': round(0.895),
  '1': round(1.078),
  '1/0': round(1.182),
  '2/0': round(1.279),
  '3/0': round(1.39, 'memory'),
  '4/0': round(1.52, 'memory'),
};
/** Armored and metal-clad cable with steel or aluminum strip: from memory. */
export const ARMORED_SIZES: Readonly<Record<string, CableSize>> = {
  '14/2': round(0.46, 'memory'),
  '14/3': round(0.48, 'memory'),
  '12/2': round(0.49, 'memory'),
  '12/3': round(0.52, 'memory'),
  '10/2': round(0.56, 'memory'),
  '10/3': round(0.59, 'memory'),
  '8/3': round(0.75, 'memory'),
  '6/3': round(0.85, 'memory'),
};
export const UF_SIZES: Readonly<Record<string, CableSize>> = {
  '14/2': flat(0.45, 0.21, 'memory'),
  '12/2': flat(0.5, 0.22, 'memory'),
  '10/2': flat(0.57, 0.26, 'memory'),
};
/** Concentric copper is a little thicker than the compact aluminum the SER table was read for; from memory. */
const COPPER_SER = 1.05;

/** Insulated circuit conductors: what the figure after the slash counts; undefined while a part is unknown. */
export const insulatedConductors = (cable: Cable): number | undefined =>
  isKnown(cable.hots) && isKnown(cable.neutral) ? cable.hots + (cable.neutral === 'insulated' ? 1 : 0) : undefined;

const own = (table: Readonly<Record<string, CableSize>>, key: string): CableSize | undefined =>
  Object.hasOwn(table, key) ? table[key] : undefined;

/** Outside size by kind, size of the ungrounded conductors, insulated conductors and metal; undefined where no figure is known. */
export const outsideSize = (
  kind: CableKind,
  size: string,
  insulated: number,
  metal: Cable['metal'],
): CableSize | undefined => {
  switch (kind) {
    case 'NM':
      return metal === 'Cu' ? own(NM_SIZES, `${size}/${insulated}`) : unsure(own(NM_SIZES, `${size}/${insulated}`));
    case 'NM without ground': // narrower by its ground, thicker in an old jacket: the figure with ground is taken
      return unsure(own(NM_SIZES, `${size}/${insulated}`));
    case 'AC':
    case 'MC':
      return own(ARMORED_SIZES, `${size}/${insulated}`);
    case 'UF':
      return own(UF_SIZES, `${size}/${insulated}`);
    case 'SE-R': {
      const found = insulated === 3 ? own(SER_SIZES, size) : undefined;
      if (!found || metal === 'Al') return found;
      return round(Math.round(found.majorIn * COPPER_SER * 1000) / 1000, 'unverified');
    }
    default:
      return undefined;
  }
};
const unsure = (size: CableSize | undefined): CableSize | undefined => size && { ...size, standing: 'unverified' };

/** Outside size of a cable, in; undefined where no figure is known or the survey does not say what the cable is. */
export const cableDiameter = (cable: Cable): CableSize | undefined => {
  const count = insulatedConductors(cable);
  if (!isKnown(cable.size) || !isKnown(cable.kind) || count === undefined) return undefined;
  return outsideSize(cable.kind, cable.size, count, cable.metal);
};

/** Jacket colors of NM since about 2001: a habit of makers, not a code rule. */
export const NM_JACKET_COLOR: Readonly<Record<string, string>> = {
  '14': 'white',
  '12': 'yellow',
  '10': 'orange',
  '8': 'black',
  '6': 'black',
};
