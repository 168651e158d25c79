import { nec } from './source';

/** Standard metal boxes and the least volume each counts for. Two public reprints and a home-wiring guide agree on the volumes. */
export const BOX_TABLE_SOURCE = nec('Table 314.16(A)');

export type BoxShape =
  | 'octagon-round'
  | 'square'
  | 'device'
  | 'masonry, per gang'
  | 'FS single cover, per gang'
  | 'FD single cover, per gang'
  | 'FS multiple cover, per gang'
  | 'FD multiple cover, per gang';

/** Sizes the table's columns stand for, in its order. */
export const BOX_COLUMNS = ['18', '16', '14', '12', '10', '8', '6'] as const;
export type BoxColumn = (typeof BOX_COLUMNS)[number];

export interface StandardBox {
  readonly shape: BoxShape;
  readonly tradeSize: string;
  readonly depthIn: number;
  readonly volumeIn3: number;
  /** Most conductors of one size as the table prints them; see `conductorsByVolume` for the safe figure. */
  readonly printedMost: Readonly<Record<BoxColumn, number>>;
}

const box = (shape: BoxShape, tradeSize: string, depthIn: number, volumeIn3: number, most: readonly number[]) =>
  ({
    shape,
    tradeSize,
    depthIn,
    volumeIn3,
    printedMost: Object.fromEntries(BOX_COLUMNS.map((awg, i) => [awg, most[i]!])) as Record<BoxColumn, number>,
  }) satisfies StandardBox;

export const STANDARD_BOXES: readonly StandardBox[] = [
  // The table prints 5 of 8 AWG for this one although 12.5 / 3.00 gives 4.
  box('octagon-round', '4 x 1-1/4', 1.25, 12.5, [8, 7, 6, 5, 5, 5, 2]),
  box('octagon-round', '4 x 1-1/2', 1.5, 15.5, [10, 8, 7, 6, 6, 5, 3]),
  box('octagon-round', '4 x 2-1/8', 2.125, 21.5, [14, 12, 10, 9, 8, 7, 4]),
  box('square', '4 x 1-1/4', 1.25, 18, [12, 10, 9, 8, 7, 6, 3]),
  box('square', '4 x 1-1/2', 1.5, 21, [14, 12, 10, 9, 8, 7, 4]),
  box('square', '4 x 2-1/8', 2.125, 30.3, [20, 17, 15, 13, 12, 10, 6]),
  box('square', '4-11/16 x 1-1/4', 1.25, 25.5, [17, 14, 12, 11, 10, 8, 5]),
  box('square', '4-11/16 x 1-1/2', 1.5, 29.5, [19, 16, 14, 13, 11, 9, 5]),
  box('square', '4-11/16 x 2-1/8', 2.125, 42, [28, 24, 21, 18, 16, 14, 8]),
  box('device', '3 x 2 x 1-1/2', 1.5, 7.5, [5, 4, 3, 3, 3, 2, 1]),
  box('device', '3 x 2 x 2', 2, 10, [6, 5, 5, 4, 4, 3, 2]),
  box('device', '3 x 2 x 2-1/4', 2.25, 10.5, [7, 6, 5, 4, 4, 3, 2]),
  box('device', '3 x 2 x 2-1/2', 2.5, 12.5, [8, 7, 6, 5, 5, 4, 2]),
  box('device', '3 x 2 x 2-3/4', 2.75, 14, [9, 8, 7, 6, 5, 4, 2]),
  box('device', '3 x 2 x 3-1/2', 3.5, 18, [12, 10, 9, 8, 7, 6, 3]),
  box('device', '4 x 2-1/8 x 1-1/2', 1.5, 10.3, [6, 5, 5, 4, 4, 3, 2]),
  box('device', '4 x 2-1/8 x 1-7/8', 1.875, 13, [8, 7, 6, 5, 5, 4, 2]),
  box('device', '4 x 2-1/8 x 2-1/8', 2.125, 14.5, [9, 8, 7, 6, 5, 4, 2]),
  box('masonry, per gang', '3-3/4 x 2 x 2-1/2', 2.5, 14, [9, 8, 7, 6, 5, 4, 2]),
  box('masonry, per gang', '3-3/4 x 2 x 3-1/2', 3.5, 21, [14, 12, 10, 9, 8, 7, 4]),
  box('FS single cover, per gang', 'at least 1-3/4 deep', 1.75, 13.5, [9, 7, 6, 6, 5, 4, 2]),
  box('FD single cover, per gang', 'at least 2-3/8 deep', 2.375, 18, [12, 10, 9, 8, 7, 6, 3]),
  box('FS multiple cover, per gang', 'at least 1-3/4 deep', 1.75, 18, [12, 10, 9, 8, 7, 6, 3]),
  box('FD multiple cover, per gang', 'at least 2-3/8 deep', 2.375, 24, [16, 13, 12, 10, 9, 8, 4]),
];

export const standardBox = (shape: BoxShape, tradeSize: string): StandardBox | undefined =>
  STANDARD_BOXES.find((b) => b.shape === shape && b.tradeSize === tradeSize);
