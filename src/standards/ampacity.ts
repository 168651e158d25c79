import type { Metal, TempColumn } from './cable';
import { BEYOND, type ByEdition, type Looked, nec, type Source, type Standing } from './source';

/**
 * Ampacity of insulated conductors, A, in the 60, 75 and 90 °C columns: not more than three current-carrying
 * conductors in a cable, raceway or earth, 30 °C ambient. Web copies from before 2011 print other figures in several
 * cells (Cu 14 at 60 °C 20 A, Al 6 at 90 °C 60 A…): not used.
 */
export const AMPACITY: Readonly<
  Record<Metal, Readonly<Record<string, readonly [Looked<number>, Looked<number>, Looked<number>]>>>
> = {
  Cu: {
    '18': [BEYOND, BEYOND, 14],
    '16': [BEYOND, BEYOND, 18],
    '14': [15, 20, 25],
    '12': [20, 25, 30],
    '10': [30, 35, 40],
    '8': [40, 50, 55],
    '6': [55, 65, 75],
    '4': [70, 85, 95],
    '3': [85, 100, 115],
    '2': [95, 115, 130],
    '1': [110, 130, 145],
    '1/0': [125, 150, 170],
    '2/0': [145, 175, 195],
    '3/0': [165, 200, 225],
    '4/0': [195, 230, 260],
    '250': [215, 255, 290],
    '300': [240, 285, 320],
    '350': [260, 310, 350],
    '400': [280, 335, 380],
    '500': [320, 380, 430],
    '600': [350, 420, 475],
  },
  Al: {
    '12': [15, 20, 25],
    '10': [25, 30, 35],
    '8': [35, 40, 45],
    '6': [40, 50, 55],
    '4': [55, 65, 75],
    '3': [65, 75, 85],
    '2': [75, 90, 100],
    '1': [85, 100, 115],
    '1/0': [100, 120, 135],
    '2/0': [115, 135, 150],
    '3/0': [130, 155, 175],
    '4/0': [150, 180, 205],
    '250': [170, 205, 230],
    '300': [195, 230, 260],
    '350': [210, 250, 280],
    '400': [225, 270, 305],
    '500': [260, 310, 350],
    '600': [285, 340, 385],
  },
};
export const AMPACITY_TABLE: ByEdition<Source> = nec({
  2017: 'Table 310.15(B)(16)',
  2020: 'Table 310.16',
  2023: 'Table 310.16',
  2026: 'Table 310.16',
});
/** Cells with less support than the rest of the table: the 90 °C figure of fixture-wire sizes. */
export const AMPACITY_WEAKER: Readonly<Record<string, Standing>> = { '18': 'one source', '16': 'one source' };

const COLUMN: Readonly<Record<TempColumn, 0 | 1 | 2>> = { 60: 0, 75: 1, 90: 2 };

/** Ampacity, A, before correction and adjustment. */
export const ampacity = (metal: Metal, size: string, column: TempColumn): Looked<number> =>
  AMPACITY[metal][size]?.[COLUMN[column]] ?? BEYOND;
