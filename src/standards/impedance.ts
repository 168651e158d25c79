import type { Metal } from './cable';
import { BEYOND, type ByEdition, type Looked, nec, type Source } from './source';

export type RacewayMetal = 'PVC' | 'aluminum' | 'steel';
type Three = readonly [PVC: Looked<number>, aluminum: Looked<number>, steel: Looked<number>];

/** AC resistance by conductor metal and reactance, ohms to neutral per 1000 ft, 600 V cables at 75 °C and 60 Hz, in PVC, aluminum and steel conduit. */
export const AC_IMPEDANCE: Readonly<Record<string, { readonly x: Three; readonly Cu: Three; readonly Al: Three }>> = {
  '14': { x: [0.058, 0.058, 0.073], Cu: [3.1, 3.1, 3.1], Al: [BEYOND, BEYOND, BEYOND] },
  '12': { x: [0.054, 0.054, 0.068], Cu: [2.0, 2.0, 2.0], Al: [3.2, 3.2, 3.2] },
  '10': { x: [0.05, 0.05, 0.063], Cu: [1.2, 1.2, 1.2], Al: [2.0, 2.0, 2.0] },
  '8': { x: [0.052, 0.052, 0.065], Cu: [0.78, 0.78, 0.78], Al: [1.3, 1.3, 1.3] },
  '6': { x: [0.051, 0.051, 0.064], Cu: [0.49, 0.49, 0.49], Al: [0.81, 0.81, 0.81] },
  '4': { x: [0.048, 0.048, 0.06], Cu: [0.31, 0.31, 0.31], Al: [0.51, 0.51, 0.51] },
  '3': { x: [0.047, 0.047, 0.059], Cu: [0.25, 0.25, 0.25], Al: [0.4, 0.41, 0.4] },
  '2': { x: [0.045, 0.045, 0.057], Cu: [0.19, 0.2, 0.2], Al: [0.32, 0.32, 0.32] },
  '1': { x: [0.046, 0.046, 0.057], Cu: [0.15, 0.16, 0.16], Al: [0.25, 0.26, 0.25] },
  '1/0': { x: [0.044, 0.044, 0.055], Cu: [0.12, 0.13, 0.12], Al: [0.2, 0.21, 0.2] },
  '2/0': { x: [0.043, 0.043, 0.054], Cu: [0.1, 0.1, 0.1], Al: [0.16, 0.16, 0.16] },
  '3/0': { x: [0.042, 0.042, 0.052], Cu: [0.077, 0.082, 0.079], Al: [0.13, 0.13, 0.13] },
  '4/0': { x: [0.041, 0.041, 0.051], Cu: [0.062, 0.067, 0.063], Al: [0.1, 0.11, 0.1] },
  '250': { x: [0.041, 0.041, 0.052], Cu: [0.052, 0.057, 0.054], Al: [0.085, 0.09, 0.086] },
  '300': { x: [0.041, 0.041, 0.051], Cu: [0.044, 0.049, 0.045], Al: [0.071, 0.076, 0.072] },
  '350': { x: [0.04, 0.04, 0.05], Cu: [0.038, 0.043, 0.039], Al: [0.061, 0.066, 0.063] },
  '400': { x: [0.04, 0.04, 0.049], Cu: [0.033, 0.038, 0.035], Al: [0.054, 0.059, 0.055] },
  '500': { x: [0.039, 0.039, 0.048], Cu: [0.027, 0.032, 0.029], Al: [0.043, 0.048, 0.045] },
};
export const AC_TABLE: ByEdition<Source> = nec('Chapter 9 Table 9', {
  2017: 'unverified',
  2020: 'unverified',
  2023: 'confirmed',
  2026: 'unverified',
});

const COLUMN: Readonly<Record<RacewayMetal, 0 | 1 | 2>> = { PVC: 0, aluminum: 1, steel: 2 };

/** AC resistance, ohms per 1000 ft. Nonmetallic and service-entrance cable use the PVC column. */
export const acResistance = (metal: Metal, size: string, raceway: RacewayMetal): Looked<number> =>
  AC_IMPEDANCE[size]?.[metal][COLUMN[raceway]] ?? BEYOND;

/** Reactance, ohms per 1000 ft. */
export const reactance = (size: string, raceway: RacewayMetal): Looked<number> =>
  AC_IMPEDANCE[size]?.x[COLUMN[raceway]] ?? BEYOND;

/** Effective impedance R·cos θ + X·sin θ at a power factor, ohms per 1000 ft. */
export const impedance = (metal: Metal, size: string, raceway: RacewayMetal, powerFactor: number): Looked<number> => {
  const r = acResistance(metal, size, raceway);
  const x = reactance(size, raceway);
  if (r === BEYOND || x === BEYOND) return BEYOND;
  return r * powerFactor + x * Math.sqrt(Math.max(0, 1 - powerFactor * powerFactor));
};
