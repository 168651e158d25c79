import type { Id, In, Pt, Pt3, Size, U } from '../units/types';
import type { Stroke } from './items';

/**
 * What the house is made of in space, for the 3-D view: faces in paper tones, ink edges, bodies of known shape, cables.
 * Inches, x right, y up the sheet, z up from the finished floor. Like a drawing it holds no sizes of a screen.
 */

export type Surface =
  | 'floor'
  | 'wall'
  | 'concrete'
  | 'wood'
  | 'ply'
  | 'not measured'
  | 'thing'
  | 'goods'
  | 'old'
  | 'new'
  | 'zone'
  | 'intrusion';

/** Which of a surface's tones a face takes: no light falls here, a face is toned by where it looks. */
export type Side = 'up' | 'x' | 'y' | 'down' | 'round';

/**
 * Shown only while `toward` looks at the eye from `at`; with `but`, only while one of the two looks at the eye and the
 * other does not: the cut end of a wall whose neighbor is left out, the outline of something round.
 */
export interface When {
  readonly at: Pt3;
  readonly toward: Pt3;
  readonly but: Pt3 | null;
}
export interface Face {
  /** A convex plane polygon. */
  readonly points: readonly Pt3[];
  readonly surface: Surface;
  readonly side: Side;
  readonly when: When | null;
}
export interface Edge {
  readonly from: Pt3;
  readonly to: Pt3;
  readonly stroke: Stroke;
  readonly when: When | null;
  /** Distance to the next line like it, 0 for none: on a screen where they would run together it is left out. */
  readonly fine: In;
}

export const MODELS = [
  'boiler',
  'dryer',
  'freezer',
  'furnace',
  'goods',
  'panel',
  'radiator',
  'shelf',
  'sink',
  'splice-box',
  'stair',
  'sump',
  'tank',
  'washer',
  'water-heater',
  'workbench',
] as const;
export type ModelName = (typeof MODELS)[number];

/** Where a body stands: its lower left front corner, the direction to its right seen from the front, its size. */
export interface Place {
  readonly corner: Pt3;
  readonly right: Pt;
  readonly size: Size;
}
/** A body in the shape of a model, fitted into its place. */
export interface Body {
  readonly model: ModelName;
  readonly place: Place;
  readonly surface: Surface;
  readonly outline: Stroke;
  readonly detail: Stroke;
  /** What goes away is seen through. */
  readonly faint: boolean;
}

export type SolidKind =
  | 'floor'
  | 'wall'
  | 'partition'
  | 'joists'
  | 'thing'
  | 'old panel'
  | 'new panel'
  | 'box'
  | 'space'
  | 'intrusion'
  | 'board'
  | 'places';

/** One thing of the job or the plan, by its id there. */
export interface Solid {
  readonly id: Id;
  readonly kind: SolidKind;
  readonly faces: readonly Face[];
  readonly edges: readonly Edge[];
  readonly body: Body | null;
}

/** stays: as it lies today · away: taken down · new: new cable · drawn back: old cable on a new course. */
export type Laid = 'stays' | 'away' | 'new' | 'drawn back';
export interface SolidCable {
  /** Of the home run, 'feeder', or the sleeve. */
  readonly id: Id;
  readonly what: 'home run' | 'feeder' | 'row' | 'sleeve';
  readonly laid: Laid;
  /** From the panel or the house on; at least two points. */
  readonly course: readonly Pt3[];
  /** Outside, the larger way; unknown where the survey does not say what cable it is or no table has it. */
  readonly diameter: U<In>;
}

export interface SolidHouse {
  readonly solids: readonly Solid[];
  readonly cables: readonly SolidCable[];
}
