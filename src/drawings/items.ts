import type { Effect } from '../facts/result';
import type { Id, In, Pt } from '../units/types';

/**
 * What a drawing is made of. Places are points in inches, x right, y up: of the plan, or in the wall drawing along the
 * unrolled walls and up from the floor. What must keep its size whatever the
 * scale (line weights, lettering, symbols, how far a dimension stands off) is in points of the paper; a painter takes
 * one point as one pixel on screen.
 */

/** Back to front. */
export const LAYERS = [
  'joists',
  'walls',
  'openings',
  'things',
  'old work',
  'space',
  'new routes',
  'new work',
  'overhead',
  'dimensions',
  'names',
  'marks',
] as const;
export type Layer = (typeof LAYERS)[number];

/** Rank of a line: the heaviest is what the drawing cuts. */
export type Weight = 'cut' | 'profile' | 'object' | 'thin' | 'hair' | 'old' | 'new' | 'feeder';
export type Tone = 'ink' | 'ink-2' | 'ink-3' | 'old' | 'new' | 'on-new' | 'hair' | 'paper';
/** away: taken out · future: comes with the finishing · overhead: above the cut · zone: kept clear · limit: 6 ft end there. */
export type Dash = 'away' | 'future' | 'overhead' | 'zone' | 'limit';
export type Hatch =
  | 'concrete'
  | 'block'
  | 'stud'
  | 'ply'
  | 'wood end'
  | 'zone'
  | 'barred'
  | 'intrusion'
  | 'not measured';
export type Fill = Hatch | 'barred' | 'paper' | 'appliance' | 'ink' | 'new';

export interface Stroke {
  readonly weight: Weight;
  readonly tone: Tone;
  readonly dash: Dash | null;
}

interface Item {
  /** Names the thing drawn; several items of one thing share it. */
  readonly id: Id;
  readonly layer: Layer;
}
export interface Line extends Item {
  readonly item: 'line';
  readonly points: readonly Pt[];
  readonly closed: boolean;
  readonly stroke: Stroke | null;
  readonly fill: Fill | null;
  /** Points of the paper to the left of its course: how cables of a bundle lie beside each other. */
  readonly beside: number;
}
/** Part of a circle, degrees counter-clockwise from `from` to `to`; all of it when they are 360 apart. */
export interface Arc extends Item {
  readonly item: 'arc';
  readonly center: Pt;
  readonly radius: In;
  readonly from: number;
  readonly to: number;
  readonly stroke: Stroke;
  readonly fill: Fill | null;
}
/** A symbol of fixed size on the paper. */
export interface Sign extends Item {
  readonly item: 'sign';
  /** into the room: new cable that leaves the wall toward whoever looks at it · limit: across a cable, where a length ends. */
  readonly sign: 'splice box' | 'from above' | 'slash' | 'into the room' | 'limit';
  readonly at: Pt;
  /** Direction of what it stands on, degrees. */
  readonly turn: number;
}
/** From one point to another with extension lines and ticks; the figure is the length between them. */
export interface Dimension extends Item {
  readonly item: 'dimension';
  readonly from: Pt;
  readonly to: Pt;
  /** Inches to the left of from→to that are passed over first: the thickness of the wall. */
  readonly clear: In;
  /** Points of the paper from there to the dimension line. */
  readonly off: number;
  /** The end beyond which the figure stands where the line is too short for it. */
  readonly beyond: 'from' | 'to';
}
/** capitals: names of places · small: names of things · figure: counts. */
export type Lettering = 'capitals' | 'small' | 'figure';
export interface TextLine {
  readonly say: string;
  readonly lettering: Lettering;
  readonly tone: Tone;
  /** Points of the paper. */
  readonly size: number;
}
/** Lettering that wants a place: `settle` finds it one, by rank, where nothing else is written. */
export interface Label extends Item {
  readonly item: 'label';
  readonly lines: readonly TextLine[];
  /** First come first served: 0 before 1. */
  readonly rank: number;
  /** Written even where something is in the way. */
  readonly must: boolean;
  /** What it names, where a thin line leads from text that could not stand beside it. */
  readonly lead: Pt | null;
  /** The name of a thing: inside its own outline or outside all outlines, never inside another thing's. */
  readonly ofThing?: true;
  /** Left out where it is wider than so many inches of the drawing. */
  readonly within?: In;
  /** Tried in this order: a point, and on which side of it the text goes. */
  readonly places: readonly LabelPlace[];
}
export const SIDES = [
  'right',
  'left',
  'below',
  'above',
  'below right',
  'below left',
  'above right',
  'above left',
] as const;
export type Side = 'middle' | (typeof SIDES)[number];
export interface LabelPlace {
  readonly at: Pt;
  readonly side: Side;
  /** Points of the paper between the point and the text. */
  readonly gap: number;
}
/** Number of a finding, in the shape of what it does to the job. */
export interface Mark extends Item {
  readonly item: 'mark';
  readonly effect: Effect;
  readonly number: number;
  readonly at: Pt;
}
export type Drawn = Line | Arc | Sign | Dimension | Label | Mark;

/** Things of one drawing, back to front, with the extent of what is solid in it. */
export interface Drawing {
  readonly items: readonly Drawn[];
  readonly extent: { readonly minX: In; readonly minY: In; readonly maxX: In; readonly maxY: In };
}

/** Back to front, those of one layer as they come. */
export const inOrder = (items: readonly Drawn[]): Drawn[] => {
  const order = new Map(LAYERS.map((layer, i) => [layer, i]));
  return items
    .map((item, i) => ({ item, i }))
    .sort((a, b) => order.get(a.item.layer)! - order.get(b.item.layer)! || a.i - b.i)
    .map(({ item }) => item);
};

const LINE = { item: 'line', closed: false, fill: null, beside: 0 } as const;
export const stroke = (weight: Weight, tone: Tone, dash: Dash | null = null): Stroke => ({ weight, tone, dash });
/** An open line. */
export const path = (layer: Layer, id: Id, points: readonly Pt[], s: Stroke, beside = 0): Line => ({
  ...LINE,
  id,
  layer,
  points,
  stroke: s,
  beside,
});
/** A closed line, with or without a filling. */
export const ring = (
  layer: Layer,
  id: Id,
  points: readonly Pt[],
  s: Stroke | null,
  fill: Fill | null = null,
): Line => ({
  ...LINE,
  id,
  layer,
  points,
  stroke: s,
  fill,
  closed: true,
});
/** A full circle. */
export const circle = (layer: Layer, id: Id, center: Pt, radius: In, s: Stroke, fill: Fill | null = null): Arc => ({
  item: 'arc',
  id,
  layer,
  center,
  radius,
  from: 0,
  to: 360,
  stroke: s,
  fill,
});
