import { standardBox } from './boxes';

/** A box for splices that a supply house stocks. `size` is the price-book kind after 'box:'. */
export interface CatalogueBox {
  readonly size: string;
  readonly material: 'metal' | 'nonmetallic';
  readonly volumeIn3: number;
  /** Covers side by side; a splice box has one. */
  readonly gangs: number;
  /** Cable clamps inside (they take one allowance); these boxes use connectors in knockouts. */
  readonly clamps: boolean;
  /** Where the volume comes from. */
  readonly volumeBy: 'Table 314.16(A)' | 'inside dimensions';
}

const square = (size: string): CatalogueBox => ({
  size,
  material: 'metal',
  volumeIn3: standardBox('square', size)!.volumeIn3,
  gangs: 1,
  clamps: false,
  volumeBy: 'Table 314.16(A)',
});
/** Screw-cover boxes are not in the table; their volume is their inside size (314.16(A)(2)). */
const screwCover = (sideIn: number, depthIn: number): CatalogueBox => ({
  size: `${sideIn}x${sideIn}x${depthIn}`,
  material: 'metal',
  volumeIn3: sideIn * sideIn * depthIn,
  gangs: 1,
  clamps: false,
  volumeBy: 'inside dimensions',
});

/** Splice boxes, smallest volume first. Which to choose for how many cables: common practice, no source. */
export const boxCatalogue: readonly CatalogueBox[] = [
  square('4 x 1-1/2'),
  square('4-11/16 x 1-1/2'),
  square('4 x 2-1/8'),
  square('4-11/16 x 2-1/8'),
  screwCover(6, 4),
  screwCover(8, 4),
  screwCover(10, 4),
  screwCover(12, 4),
  screwCover(12, 6),
];

/** Volumes stamped into common nonmetallic boxes, cu in.: from memory; the marking on the box governs. */
export const MARKED_NONMETALLIC_IN3 = {
  'one gang': [14, 18, 20.3, 22.5],
  'two gang': [32, 34, 35],
  '4 in round': [20, 22.5],
} as const;
