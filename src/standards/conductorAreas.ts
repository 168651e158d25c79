import { bareArea } from './resistance';
import { BEYOND, type ByEdition, type Looked, nec, type Source, type Standing } from './source';

type Family = 'THHN' | 'XHHW' | 'compact XHHW';

/** Diameter (in) and area (in²) of insulated conductors. Compact XHHW is aluminum; its diameters of 250 kcmil and up are from memory. */
export const INSULATED: Readonly<
  Record<Family, Readonly<Record<string, { readonly diameterIn: number; readonly areaIn2: number }>>>
> = {
  THHN: {
    '14': { diameterIn: 0.111, areaIn2: 0.0097 },
    '12': { diameterIn: 0.13, areaIn2: 0.0133 },
    '10': { diameterIn: 0.164, areaIn2: 0.0211 },
    '8': { diameterIn: 0.216, areaIn2: 0.0366 },
    '6': { diameterIn: 0.254, areaIn2: 0.0507 },
    '4': { diameterIn: 0.324, areaIn2: 0.0824 },
    '3': { diameterIn: 0.352, areaIn2: 0.0973 },
    '2': { diameterIn: 0.384, areaIn2: 0.1158 },
    '1': { diameterIn: 0.446, areaIn2: 0.1562 },
    '1/0': { diameterIn: 0.486, areaIn2: 0.1855 },
    '2/0': { diameterIn: 0.532, areaIn2: 0.2223 },
    '3/0': { diameterIn: 0.584, areaIn2: 0.2679 },
    '4/0': { diameterIn: 0.642, areaIn2: 0.3237 },
    '250': { diameterIn: 0.711, areaIn2: 0.397 },
    '300': { diameterIn: 0.766, areaIn2: 0.4608 },
    '350': { diameterIn: 0.817, areaIn2: 0.5242 },
    '400': { diameterIn: 0.864, areaIn2: 0.5863 },
    '500': { diameterIn: 0.949, areaIn2: 0.7073 },
  },
  XHHW: {
    '14': { diameterIn: 0.133, areaIn2: 0.0139 },
    '12': { diameterIn: 0.152, areaIn2: 0.0181 },
    '10': { diameterIn: 0.176, areaIn2: 0.0243 },
    '8': { diameterIn: 0.236, areaIn2: 0.0437 },
    '6': { diameterIn: 0.274, areaIn2: 0.059 },
    '4': { diameterIn: 0.322, areaIn2: 0.0814 },
    '3': { diameterIn: 0.35, areaIn2: 0.0962 },
    '2': { diameterIn: 0.382, areaIn2: 0.1146 },
    '1': { diameterIn: 0.442, areaIn2: 0.1534 },
    '1/0': { diameterIn: 0.482, areaIn2: 0.1825 },
    '2/0': { diameterIn: 0.528, areaIn2: 0.219 },
    '3/0': { diameterIn: 0.58, areaIn2: 0.2642 },
    '4/0': { diameterIn: 0.638, areaIn2: 0.3197 },
    '250': { diameterIn: 0.705, areaIn2: 0.3904 },
    '300': { diameterIn: 0.76, areaIn2: 0.4536 },
    '350': { diameterIn: 0.811, areaIn2: 0.5166 },
    '400': { diameterIn: 0.858, areaIn2: 0.5782 },
    '500': { diameterIn: 0.943, areaIn2: 0.6984 },
  },
  'compact XHHW': {
    '8': { diameterIn: 0.224, areaIn2: 0.0394 },
    '6': { diameterIn: 0.26, areaIn2: 0.053 },
    '4': { diameterIn: 0.305, areaIn2: 0.073 },
    '2': { diameterIn: 0.36, areaIn2: 0.1017 },
    '1': { diameterIn: 0.415, areaIn2: 0.1352 },
    '1/0': { diameterIn: 0.45, areaIn2: 0.159 },
    '2/0': { diameterIn: 0.49, areaIn2: 0.1885 },
    '3/0': { diameterIn: 0.54, areaIn2: 0.229 },
    '4/0': { diameterIn: 0.59, areaIn2: 0.2733 },
    '250': { diameterIn: 0.66, areaIn2: 0.3421 },
    '300': { diameterIn: 0.715, areaIn2: 0.4015 },
    '350': { diameterIn: 0.76, areaIn2: 0.4536 },
    '400': { diameterIn: 0.8, areaIn2: 0.5026 },
    '500': { diameterIn: 0.88, areaIn2: 0.6082 },
  },
};
const READ: ByEdition<Standing> = { 2017: 'unverified', 2020: 'unverified', 2023: 'one source', 2026: 'unverified' };
export const AREA_TABLE: ByEdition<Source> = nec('Chapter 9 Table 5', READ);
export const COMPACT_TABLE: ByEdition<Source> = nec('Chapter 9 Table 5A', READ);

/** Names of insulation that share a row of the table; 'bare' is the EGC without insulation. */
const FAMILY: Readonly<Record<string, Family>> = {
  THHN: 'THHN',
  THWN: 'THHN',
  'THWN-2': 'THHN',
  XHHW: 'XHHW',
  'XHHW-2': 'XHHW',
  'compact XHHW': 'compact XHHW',
  'compact XHHW-2': 'compact XHHW',
};
export const INSULATIONS: readonly string[] = [...Object.keys(FAMILY), 'bare'];

/** Cross-section of one conductor with its insulation, in². */
export const conductorArea = (size: string, insulation: string): Looked<number> => {
  if (insulation === 'bare') return bareArea(size);
  const family = FAMILY[insulation];
  return (family && INSULATED[family][size]?.areaIn2) ?? BEYOND;
};
