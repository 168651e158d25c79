import type { Size } from '../units/types';

/** Conditions of old cable that bar drawing it back and bending it (trade practice; cloth and brittle: 310 insulation no longer sound). */
export const NOT_TO_BEND: readonly string[] = ['brittle', 'cloth', 'damaged', 'overheated'];

/** Aluminum branch conductors of these sizes want Al-Cu connectors and AL-rated terminals of their own; larger lugs take both anyway. */
export const SMALL_ALUMINUM: readonly string[] = ['12', '10'];

/** Insulation adjustment may start from, °C, where the jacket is marked for it (334.112). */
export const MARKED_COLUMN = 90;

/** Insulation taken for old cable when a cabinet's fill is counted: as thick as the moisture-resistant kinds of its time. */
export const OLD_INSULATION = 'XHHW';
/** Cross-section of one wire connector with its joint, sq in. (from memory: a connector about 0.67 in across). */
export const CONNECTOR_IN2 = 0.35;
/** Wiring space of a gutted cabinet at its tightest: cut across, its width by its depth, sq in. */
export const cabinetSection = (size: Size): number => size.width * size.depth;

/** A box on a wall is looked for within this of a wall face, in. */
export const BOX_AT_WALL_IN = 12;

/** Ways a cable lies that hold it by themselves (334.30(A); sleeves and raceways carry their own straps) or are inside something. */
export const HELD_BY_ITSELF: readonly string[] = ['through joists', 'sleeve', 'raceway', 'inside box', 'inside panel'];

/** Rows drawn within this of each other lie on the same piece of wood and may come to touch, in (common practice, no source). */
export const BESIDE_IN = 6;

/** Ways a cable comes down a wall that protect it: 334.15, 300.4; a bare wall always gets a sleeve. */
export const COVERED_ON_WALL: readonly string[] = ['sleeve', 'raceway', 'wall board', 'stud bay', 'opened drywall'];
