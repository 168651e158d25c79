import type { Reach } from '../facts/result';
import type { Enclosure, Tails } from '../job/schema';
import { enclosureOnFace } from '../job/site';
import type { Cable } from '../standards/cable';
import { BAR_FROM_SIDE_IN, BREAKER_FROM_MIDDLE_IN, TERMINAL_SPAN } from '../standards/insideCan';
import type { In } from '../units/types';

/** The sheath must come this far into the cabinet (connector and 312.5(C) as read in practice; 300.15 for boxes). */
export const SHEATH_INSIDE_IN = 1 / 4;

/** One dressed bend, the strip and the bite of the terminal. Common practice. */
export const TERMINATION_ALLOWANCE_IN = 4;

export type Conductor = keyof Tails;

/** A point where a cable enters a can, in the coordinates of the can's wall face: `left` from the face's left end, `z` from the floor. */
export interface EntryPoint {
  readonly left: In;
  readonly z: In;
}

const toSpan = (x: number, from: number, to: number): number => Math.max(from - x, 0, x - to);

/**
 * Conductor needed inside a can from its entry to the nearest terminal of a kind, inches: square along the gutter,
 * with one termination allowance. Which breaker it will be is the arrangement's choice, so the nearest counts.
 */
export const neededInside = (can: Pick<Enclosure, 'on' | 'size' | 'mount' | 'mainAt'>, entry: EntryPoint): Tails => {
  const box = enclosureOnFace(can);
  const height = box.top - box.bottom;
  const middle = (box.left + box.right) / 2;
  const columns = {
    hot: [middle - BREAKER_FROM_MIDDLE_IN, middle + BREAKER_FROM_MIDDLE_IN],
    bar: [box.left + BAR_FROM_SIDE_IN, box.right - BAR_FROM_SIDE_IN],
  };
  const need = (conductor: Conductor): In => {
    const [near, far] = TERMINAL_SPAN[conductor];
    const ends =
      can.mainAt === 'top'
        ? [box.top - far * height, box.top - near * height]
        : [box.bottom + near * height, box.bottom + far * height];
    const across = Math.min(
      ...columns[conductor === 'hot' ? 'hot' : 'bar'].map((column) => Math.abs(entry.left - column)),
    );
    return toSpan(entry.z, ends[0]!, ends[1]!) + across + TERMINATION_ALLOWANCE_IN;
  };
  return { hot: need('hot'), neutral: need('neutral'), ground: need('ground') };
};

/**
 * Spare length of sheath and of each conductor, inches, negative = short. `sheath` is the sheathed cable there is from
 * the last fixed point, `path` what it must cover to the new can's wall. A cable without a neutral or ground shows the
 * hot's spare for it, so that the least of the four is always the answer.
 */
export const reachOf = (v: {
  readonly sheath: In;
  readonly sheathInside: In;
  readonly path: In;
  readonly tails: Tails;
  readonly need: Tails;
  readonly cable: Pick<Cable, 'neutral' | 'ground'>;
}): Reach => {
  const free = v.sheath - v.path;
  const hot = free + v.tails.hot - v.need.hot;
  return {
    jacket: free - v.sheathInside,
    hot,
    neutral: v.cable.neutral === 'none' ? hot : free + v.tails.neutral - v.need.neutral,
    ground: v.cable.ground === false ? hot : free + v.tails.ground - v.need.ground,
  };
};

export type ReachPart = keyof Reach;
const ORDER: readonly ReachPart[] = ['jacket', 'hot', 'neutral', 'ground'];

/** The first part that is short, in the order a crew tests: jacket, hot, neutral, ground; null = all reach. */
export const firstShort = (reach: Reach): ReachPart | null => ORDER.find((part) => reach[part] < 0) ?? null;
