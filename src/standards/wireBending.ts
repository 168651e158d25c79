import { nec } from './source';

type Spaces = readonly number[];
/**
 * Wire-bending space at a terminal, in, by number of wires on it (1, 2, 3 …), for other than compact aluminum.
 * One wire: two public copies. Two and more: one distributor's engineering page.
 */
const SIDE: readonly (readonly [sizes: readonly string[], spaces: Spaces])[] = [
  [['8', '6'], [1.5]],
  [['4', '3'], [2]],
  [['2'], [2.5]],
  [['1'], [3]],
  [
    ['1/0', '2/0'],
    [3.5, 5, 7],
  ],
  [
    ['3/0', '4/0'],
    [4, 6, 8],
  ],
  [['250'], [4.5, 6, 8, 10]],
  [
    ['300', '350'],
    [5, 8, 10, 12],
  ],
  [
    ['400', '500'],
    [6, 8, 10, 12, 14],
  ],
];
const OPPOSITE: readonly (readonly [sizes: readonly string[], spaces: Spaces])[] = [
  [['8'], [1.5]],
  [['6'], [2]],
  [['4', '3'], [3]],
  [['2'], [3.5]],
  [['1'], [4.5]],
  [['1/0'], [5.5, 5.5]],
  [['2/0'], [6, 6]],
  [['3/0'], [6.5, 6.5]],
  [['4/0'], [7, 7.5]],
  [['250'], [8.5, 9]],
  [['300'], [10, 10]],
  [['350'], [12, 12]],
  [['400'], [13, 13]],
  [['500'], [14, 14]],
];
/** For these one wire on a terminal has no figure: the terminal itself is enough. */
const NOT_SPECIFIED: ReadonlySet<string> = new Set(['14', '12', '10']);

export type BendWall = 'side' | 'opposite';
export const BEND_SOURCES = {
  side: nec('Table 312.6(A)'),
  opposite: nec({
    2017: 'Table 312.6(B)',
    2020: 'Table 312.6(B)',
    2023: 'Table 312.6(B)(2)',
    2026: 'Table 312.6(B)(2)',
  }),
} as const;

/** Least space from terminal to wall, in; 0 where the table sets none, undefined where it does not reach. */
export const wireBendingSpace = (awg: string, wires: number, wall: BendWall): number | undefined => {
  if (NOT_SPECIFIED.has(awg)) return wires === 1 ? 0 : undefined;
  const row = (wall === 'side' ? SIDE : OPPOSITE).find(([sizes]) => sizes.includes(awg));
  return row?.[1][wires - 1];
};
