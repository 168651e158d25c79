import { BEYOND, type ByEdition, type Looked, nec, type Source, type Standing } from './source';

export const RACEWAYS = ['EMT', 'PVC 40', 'PVC 80'] as const;
export type Raceway = (typeof RACEWAYS)[number];
type Fill = 'one' | 'two' | 'more' | 'nipple';

/** Inside diameter (in), total area and areas by fill (in²), by trade size. Schedule 80 follows the pipe's standard wall, not one copy that prints less. */
export const RACEWAY_SIZES: Readonly<
  Record<
    Raceway,
    Readonly<Record<string, { readonly insideIn: number; readonly total: number } & Readonly<Record<Fill, number>>>>
  >
> = {
  EMT: {
    '1/2': { insideIn: 0.622, total: 0.304, one: 0.161, two: 0.094, more: 0.122, nipple: 0.182 },
    '3/4': { insideIn: 0.824, total: 0.533, one: 0.283, two: 0.165, more: 0.213, nipple: 0.32 },
    '1': { insideIn: 1.049, total: 0.864, one: 0.458, two: 0.268, more: 0.346, nipple: 0.519 },
    '1-1/4': { insideIn: 1.38, total: 1.496, one: 0.793, two: 0.464, more: 0.598, nipple: 0.897 },
    '1-1/2': { insideIn: 1.61, total: 2.036, one: 1.079, two: 0.631, more: 0.814, nipple: 1.221 },
    '2': { insideIn: 2.067, total: 3.356, one: 1.778, two: 1.04, more: 1.342, nipple: 2.013 },
  },
  'PVC 40': {
    '1/2': { insideIn: 0.602, total: 0.285, one: 0.151, two: 0.088, more: 0.114, nipple: 0.171 },
    '3/4': { insideIn: 0.804, total: 0.508, one: 0.269, two: 0.157, more: 0.203, nipple: 0.305 },
    '1': { insideIn: 1.029, total: 0.832, one: 0.441, two: 0.258, more: 0.333, nipple: 0.499 },
    '1-1/4': { insideIn: 1.36, total: 1.453, one: 0.77, two: 0.45, more: 0.581, nipple: 0.872 },
    '1-1/2': { insideIn: 1.59, total: 1.986, one: 1.052, two: 0.616, more: 0.794, nipple: 1.191 },
    '2': { insideIn: 2.047, total: 3.291, one: 1.744, two: 1.02, more: 1.316, nipple: 1.975 },
  },
  'PVC 80': {
    '1/2': { insideIn: 0.526, total: 0.217, one: 0.115, two: 0.067, more: 0.087, nipple: 0.13 },
    '3/4': { insideIn: 0.722, total: 0.409, one: 0.217, two: 0.127, more: 0.164, nipple: 0.246 },
    '1': { insideIn: 0.936, total: 0.688, one: 0.365, two: 0.213, more: 0.275, nipple: 0.413 },
    '1-1/4': { insideIn: 1.255, total: 1.237, one: 0.656, two: 0.383, more: 0.495, nipple: 0.742 },
    '1-1/2': { insideIn: 1.476, total: 1.711, one: 0.907, two: 0.53, more: 0.684, nipple: 1.027 },
    '2': { insideIn: 1.913, total: 2.874, one: 1.523, two: 0.891, more: 1.15, nipple: 1.725 },
  },
};
const READ: ByEdition<Standing> = { 2017: 'unverified', 2020: 'unverified', 2023: 'one source', 2026: 'unverified' };
export const RACEWAY_TABLE: ByEdition<Source> = nec('Chapter 9 Table 4', READ);

/** Share of the area that conductors may fill: one, two, more than two, and any number in a nipple of 24 in or less. */
export const FILL_SHARE: Readonly<Record<Fill, number>> = { one: 0.53, two: 0.31, more: 0.4, nipple: 0.6 };
export const FILL_TABLE: ByEdition<Source> = nec('Chapter 9 Table 1');
export const NIPPLE_RULE: ByEdition<Source> = nec('Chapter 9 Note 4', 'one source');

export const fillRow = (conductors: number, nipple: boolean): Fill =>
  nipple ? 'nipple' : conductors === 1 ? 'one' : conductors === 2 ? 'two' : 'more';

/** Area of a raceway, in²: the whole, or the part that a fill row allows. */
export const racewayArea = (raceway: Raceway, tradeSize: string, part: 'total' | Fill = 'total'): Looked<number> =>
  RACEWAY_SIZES[raceway][tradeSize]?.[part] ?? BEYOND;
