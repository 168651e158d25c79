import type { Obstacle } from '../../job/schema';
import type { Size } from '../../units/types';

/**
 * Ordinary things of a basement at ordinary sizes: a start for the eye, each to be measured. All common sizes, no
 * source. `hang` is the height of the underside above the floor.
 */
export interface Thing {
  readonly kind: string;
  readonly size: Size;
  readonly hang: number;
  readonly blocksCable: boolean;
  readonly blocksSpace: boolean;
  /** Piping or ducts that do not serve the panel: nothing of the kind may run over it. */
  readonly foreign: boolean;
  /** What cable keeps away from it. */
  readonly clearance: number;
  readonly stored: boolean;
}

const standing = (kind: string, width: number, depth: number, height: number, more: Partial<Thing> = {}): Thing => ({
  kind,
  size: { width, depth, height },
  hang: 0,
  blocksCable: true,
  blocksSpace: true,
  foreign: false,
  clearance: 1,
  stored: false,
  ...more,
});
const hung = (kind: string, width: number, depth: number, height: number, hang: number): Thing =>
  standing(kind, width, depth, height, { hang, foreign: true });

export const PALETTE: readonly Thing[] = [
  standing('washer', 27, 28, 39),
  standing('dryer', 27, 28, 39),
  standing('water heater', 22, 22, 60, { clearance: 2 }),
  standing('furnace', 24, 30, 60, { clearance: 6 }),
  standing('boiler', 24, 28, 44, { clearance: 6 }),
  standing('freezer', 60, 28, 36),
  standing('shelf', 48, 16, 72, { blocksCable: false }),
  standing('workbench', 60, 24, 36, { blocksCable: false }),
  standing('sink', 24, 22, 34),
  standing('sump', 18, 18, 6),
  standing('tank', 48, 26, 44),
  standing('stair', 132, 36, 96),
  standing('post', 3.5, 3.5, 88, { clearance: 0 }),
  standing('chimney', 24, 24, 96, { clearance: 2 }),
  standing('radiator', 36, 9, 26),
  standing('goods', 36, 24, 36, { blocksCable: false, stored: true }),
  standing('beam', 144, 6.5, 8, { hang: 82, clearance: 0, blocksSpace: true }),
  hung('duct', 96, 20, 10, 78),
  hung('flue', 6, 6, 36, 60),
  hung('water pipe', 96, 1.5, 1.5, 84),
  hung('gas pipe', 96, 1.5, 1.5, 84),
  standing('drain', 4.5, 4.5, 88, { foreign: true }),
  standing('other', 24, 24, 36),
];

/** Stored goods cost nothing to carry away; anything else stays where it is until a price is entered. */
export const obstacleOf = (thing: Thing, id: string, corner: readonly [number, number]): Obstacle => ({
  id,
  kind: thing.kind,
  corner,
  turn: 0,
  size: thing.size,
  sizes: 'unknown',
  bottom: thing.hang,
  blocksCable: thing.blocksCable,
  blocksSpace: thing.blocksSpace,
  foreign: thing.foreign,
  clearance: thing.kind === 'flue' ? 6 : thing.clearance,
  exists: { now: true, after: true },
  stored: thing.stored,
  moveCents: thing.stored ? 0 : null,
});
