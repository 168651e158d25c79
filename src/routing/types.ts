import type { Job, Option } from '../job/schema';
import type { Mills } from '../units/money';
import type { Id, In, Pt3 } from '../units/types';
import type { Frame } from './networkFrame';
import type { Region } from './networkFraming';

/**
 * The cable network: every place a cable may lie, as a graph. Search lengths are whole 1/64 in, in a frame turned to
 * the framing and measured from the outline's lowest corner; search costs are whole 1/128 mill. Float inches appear
 * only in the points handed out.
 */

/** A position in the search frame, whole 1/64 in. */
export type Place64 = readonly [x: number, y: number, z: number];

/** Where a node lies. */
export const LAYER = { joist: 0, below: 1, wall: 2, loose: 3 } as const;

/** What an edge is made of; the price and the word for it (`LegBy`) follow from the class and the cable. */
export const EDGE = {
  joistSide: 0,
  throughJoists: 1,
  joistSideOverTile: 2,
  throughJoistsOverTile: 3,
  closedAlong: 4,
  closedAcross: 5,
  under: 6,
  overTile: 7,
  board: 8,
  studUp: 9,
  studAcross: 10,
  sleeve: 11,
  closedWallUp: 12,
  closedWallAcross: 13,
  unknownWallUp: 14,
  unknownWallAcross: 15,
  oldSleeve: 16,
  corner: 17,
} as const;
export type EdgeClass = (typeof EDGE)[keyof typeof EDGE];
export const EDGE_CLASSES = 18;

export interface Assumed {
  readonly path: string;
  readonly value: string | number;
}

/** Compressed rows: the edges of node n are off[n] … off[n+1]-1. Every edge is stored in both directions. */
export interface Network {
  readonly nodeCount: number;
  readonly x: Int32Array;
  readonly y: Int32Array;
  readonly z: Int32Array;
  /** The same positions as exact points of the job, inches. */
  readonly px: Float64Array;
  readonly py: Float64Array;
  readonly pz: Float64Array;
  readonly layer: Uint8Array;
  /** Index into `faces`, or -1. */
  readonly face: Int16Array;
  readonly off: Int32Array;
  readonly to: Int32Array;
  /** Length, whole 1/64 in. */
  readonly len: Int32Array;
  readonly cls: Uint8Array;
  /** Joists and plates crossed, in halves: one on an edge's end counts a half on either side, so that a path through it counts one. */
  readonly halves: Int32Array;
  /** Wall faces by id, with the spacing of their studs (1/64 in) or 0 where nothing is bored. */
  readonly faces: readonly { readonly id: Id; readonly wall: Id; readonly studs64: number }[];
  /** Index into `framing` of an edge among the joists, or -1. */
  readonly region: Int16Array;
  readonly frame: Frame;
  readonly framing: readonly Region[];
  readonly assumed: readonly Assumed[];
  readonly made: Made;
  /** Node at a point of the job that was a terminal, a run point or a panel entry; key from `pointKey`. */
  readonly at: ReadonlyMap<string, number>;
  /** Points of every existing path, in order from the old panel; key from `pathKey`. */
  readonly paths: ReadonlyMap<string, readonly RunPoint[]>;
}

/** What a network was made from, so that the same one can be made without one thing to see what blocks a cable. */
export interface Made {
  readonly job: Job;
  readonly option: Option;
  readonly extra: Extra;
}
export interface Extra {
  /** Terminals that get grid lines of their own. */
  readonly points: readonly Pt3[];
  /** Ids of obstacles, keep-outs, openings, partitions, bays or panels left out. */
  readonly without?: readonly Id[];
  /** More grid lines, plan x and y of the job, inches: for tests. */
  readonly lines?: readonly (readonly [x: In, y: In])[];
}

/** Unit prices of one cable type along a route, whole mills; shared things (holes, boards) at an even share. */
export interface CablePrices {
  /** Cable, pulling and staples, by the foot. */
  readonly perFt: Mills;
  /** One member bored, shared by a row. */
  readonly hole: Mills;
  readonly boardPerFt: Mills;
  readonly sleevePerFt: Mills;
  readonly patchPerFt: Mills;
  readonly tilePerFt: Mills;
  /** May the cable be fastened across the underside of joists (334.15(C), 320.15, 330.15)? Then no running board. */
  readonly underside: boolean;
}

export interface Source {
  readonly node: number;
  /** 1/128 mill. */
  readonly cost: number;
  /** What it starts with of the second measure, by which ties fall. */
  readonly tie?: number;
}
/** One-to-all costs. Parents are not kept: `pathTo` derives them by a fixed rule. */
export interface Sweep {
  readonly network: Network;
  readonly weights: Float64Array;
  readonly sources: readonly Source[];
  /** 1/128 mill (or 1/64 in with length weights); Infinity = not reached. */
  readonly dist: Float64Array;
  /** A second measure of every edge, least among what is equally cheap: length beside cost, or cost beside length. */
  readonly ties: Ties | null;
}
export interface Ties {
  readonly weights: Float64Array;
  readonly dist: Float64Array;
}

export interface RunPoint {
  readonly node: number;
  /** Inches along the run from the old panel. */
  readonly chain: In;
  readonly point: Pt3;
}
export interface PanelEntry {
  readonly side: 'top' | 'bottom' | 'left' | 'right';
  readonly node: number;
  /** 1/128 mill. */
  readonly cost: number;
  readonly point: Pt3;
}

const key64 = (n: In) => Math.round(n * 64);
/** Points within 1/128 in are the same place. */
export const pointKey = (p: Pt3): string => `${key64(p[0])},${key64(p[1])},${key64(p[2])}`;
export const pathKey = (path: readonly Pt3[]): string => path.map(pointKey).join(';');
/** Search cost (1/128 mill) in whole mills, and back. */
export const COST_PER_MILL = 128;
