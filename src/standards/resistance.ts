import type { Metal } from './cable';
import { BEYOND, type ByEdition, type Looked, nec, type Source } from './source';

export type Stranding = 'solid' | 'stranded';

/** Bare conductors: circular mils, overall diameter (in) and area (in²), DC resistance at 75 °C in ohms per 1000 ft (copper uncoated). */
export const CONDUCTORS: readonly {
  readonly size: string;
  readonly stranding: Stranding;
  readonly cmil: number;
  readonly diameterIn: number;
  readonly areaIn2: number;
  readonly Cu: number;
  readonly Al: number;
}[] = [
  { size: '18', stranding: 'solid', cmil: 1620, diameterIn: 0.04, areaIn2: 0.001, Cu: 7.77, Al: 12.8 },
  { size: '18', stranding: 'stranded', cmil: 1620, diameterIn: 0.046, areaIn2: 0.002, Cu: 7.95, Al: 13.1 },
  { size: '16', stranding: 'solid', cmil: 2580, diameterIn: 0.051, areaIn2: 0.002, Cu: 4.89, Al: 8.05 },
  { size: '16', stranding: 'stranded', cmil: 2580, diameterIn: 0.058, areaIn2: 0.003, Cu: 4.99, Al: 8.21 },
  { size: '14', stranding: 'solid', cmil: 4110, diameterIn: 0.064, areaIn2: 0.003, Cu: 3.07, Al: 5.06 },
  { size: '14', stranding: 'stranded', cmil: 4110, diameterIn: 0.073, areaIn2: 0.004, Cu: 3.14, Al: 5.17 },
  { size: '12', stranding: 'solid', cmil: 6530, diameterIn: 0.081, areaIn2: 0.005, Cu: 1.93, Al: 3.18 },
  { size: '12', stranding: 'stranded', cmil: 6530, diameterIn: 0.092, areaIn2: 0.006, Cu: 1.98, Al: 3.25 },
  { size: '10', stranding: 'solid', cmil: 10380, diameterIn: 0.102, areaIn2: 0.008, Cu: 1.21, Al: 2.0 },
  { size: '10', stranding: 'stranded', cmil: 10380, diameterIn: 0.116, areaIn2: 0.011, Cu: 1.24, Al: 2.04 },
  { size: '8', stranding: 'solid', cmil: 16510, diameterIn: 0.128, areaIn2: 0.013, Cu: 0.764, Al: 1.26 },
  { size: '8', stranding: 'stranded', cmil: 16510, diameterIn: 0.146, areaIn2: 0.017, Cu: 0.778, Al: 1.28 },
  { size: '6', stranding: 'stranded', cmil: 26240, diameterIn: 0.184, areaIn2: 0.027, Cu: 0.491, Al: 0.808 },
  { size: '4', stranding: 'stranded', cmil: 41740, diameterIn: 0.232, areaIn2: 0.042, Cu: 0.308, Al: 0.508 },
  { size: '3', stranding: 'stranded', cmil: 52620, diameterIn: 0.26, areaIn2: 0.053, Cu: 0.245, Al: 0.403 },
  { size: '2', stranding: 'stranded', cmil: 66360, diameterIn: 0.292, areaIn2: 0.067, Cu: 0.194, Al: 0.319 },
  { size: '1', stranding: 'stranded', cmil: 83690, diameterIn: 0.332, areaIn2: 0.087, Cu: 0.154, Al: 0.253 },
  { size: '1/0', stranding: 'stranded', cmil: 105600, diameterIn: 0.372, areaIn2: 0.109, Cu: 0.122, Al: 0.201 },
  { size: '2/0', stranding: 'stranded', cmil: 133100, diameterIn: 0.418, areaIn2: 0.137, Cu: 0.0967, Al: 0.159 },
  { size: '3/0', stranding: 'stranded', cmil: 167800, diameterIn: 0.47, areaIn2: 0.173, Cu: 0.0766, Al: 0.126 },
  { size: '4/0', stranding: 'stranded', cmil: 211600, diameterIn: 0.528, areaIn2: 0.219, Cu: 0.0608, Al: 0.1 },
  { size: '250', stranding: 'stranded', cmil: 250000, diameterIn: 0.575, areaIn2: 0.26, Cu: 0.0515, Al: 0.0847 },
  { size: '300', stranding: 'stranded', cmil: 300000, diameterIn: 0.63, areaIn2: 0.312, Cu: 0.0429, Al: 0.0707 },
  { size: '350', stranding: 'stranded', cmil: 350000, diameterIn: 0.681, areaIn2: 0.364, Cu: 0.0367, Al: 0.0605 },
  { size: '400', stranding: 'stranded', cmil: 400000, diameterIn: 0.728, areaIn2: 0.416, Cu: 0.0321, Al: 0.0529 },
  { size: '500', stranding: 'stranded', cmil: 500000, diameterIn: 0.813, areaIn2: 0.519, Cu: 0.0258, Al: 0.0424 },
];
/** Read for 2023; half the figures have one source, half only agree with the wire-table constants. */
export const CONDUCTOR_TABLE: ByEdition<Source> = nec('Chapter 9 Table 8', {
  2017: 'unverified',
  2020: 'unverified',
  2023: 'one source',
  2026: 'unverified',
});
/** Change of resistance per °C away from 75 °C. */
export const RESISTANCE_PER_DEGREE: Readonly<Record<Metal, number>> = { Cu: 0.00323, Al: 0.0033 };

const conductor = (size: string, stranding: Stranding) =>
  CONDUCTORS.find((row) => row.size === size && row.stranding === stranding);

/** DC resistance at 75 °C, ohms per 1000 ft. */
export const resistance = (metal: Metal, size: string, stranding: Stranding): Looked<number> =>
  conductor(size, stranding)?.[metal] ?? BEYOND;

/** Resistance at another conductor temperature, ohms per 1000 ft. */
export const resistanceAt = (metal: Metal, ohmPerKft: number, celsius: number): number =>
  ohmPerKft * (1 + RESISTANCE_PER_DEGREE[metal] * (celsius - 75));

/** Circular mils of a size; the same solid or stranded. */
export const circularMils = (size: string): Looked<number> =>
  CONDUCTORS.find((row) => row.size === size)?.cmil ?? BEYOND;

/** Smallest size with at least so many circular mils. */
export const sizeOfMils = (cmil: number): Looked<string> =>
  CONDUCTORS.find((row) => row.cmil >= cmil - 1e-6)?.size ?? BEYOND;

/** Overall area of a bare conductor, in²: what a bare EGC takes in a raceway. Sizes to 8 are solid, larger ones stranded. */
export const bareArea = (size: string): Looked<number> =>
  (conductor(size, 'solid') ?? conductor(size, 'stranded'))?.areaIn2 ?? BEYOND;
