import { commonIntervals, freeIntervals, type Interval, overlap, slabProjection } from '../geometry/freeIntervals';
import { SAME_PLACE_IN } from '../geometry/polygon';
import { DEDICATED_ABOVE_IN, DWELLING_DEPTH_IN, WIDTH_IN } from '../standards/workingSpace';
import type { In, Size, U } from '../units/types';
import { hangs, headroomNeeded } from './spaceJudge';
import type { SpaceBlocker } from './spaceZone';

export interface PlacesAsk {
  readonly faceLength: In;
  readonly size: Size;
  readonly bottom: In;
  /** The panel's front from the face; 0 if recessed. */
  readonly out: In;
  readonly blockers: readonly SpaceBlocker[];
  readonly structureZ: U<In>;
  /** True = headroom is not asked for (existing dwelling, not over 200 A; verify in field). */
  readonly headroomException: boolean;
}

/** Left offsets at which a panel would touch an open stretch it may not reach into. */
const shadows = (stretches: readonly Interval[], panelWidth: In): Interval[] =>
  stretches.map(([from, to]) => [from - panelWidth, to]);

/**
 * Every left offset on a face at which the panel has clear working space, dedicated zone and room for itself: closed
 * intervals, exact to the blockers' edges, points included. The same answer as `searchSpace` at each offset, the door
 * aside: a door not wider than the working space is deep sweeps inside it.
 */
export const legalIntervals = (ask: PlacesAsk): Interval[] => {
  const { size, bottom, out } = ask;
  const top = bottom + size.height;
  const last = ask.faceLength - size.width;
  if (last < 0 || (ask.structureZ !== 'unknown' && top > ask.structureZ + SAME_PLACE_IN)) return [];
  const solid = ask.blockers.filter((b) => !b.stored);
  const between = (blockers: readonly SpaceBlocker[], z: Interval, outFrom: In, outTo: In): Interval[] =>
    blockers.filter((b) => overlap([b.fromZ, b.toZ], z)).flatMap((b) => slabProjection(b.outline, outFrom, outTo));

  // Working space: the panel keeps to one free gap that is wide enough for the whole window.
  const headroom = headroomNeeded(top);
  const keepsOut = solid.filter((b) => b.blocksSpace && !(ask.headroomException && hangs(b, headroom)));
  const window = Math.max(WIDTH_IN, size.width);
  const everywhere: Interval = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const gaps = freeIntervals(everywhere, between(keepsOut, [0, headroom], out, out + DWELLING_DEPTH_IN))
    .filter(([from, to]) => to - from >= window - SAME_PLACE_IN)
    .map(([from, to]): Interval => [from, Math.max(from, to - size.width)]);

  const foreign = solid.filter((b) => b.foreign);
  const zoneTop =
    ask.structureZ === 'unknown' ? top + DEDICATED_ABOVE_IN : Math.min(top + DEDICATED_ABOVE_IN, ask.structureZ);
  const taken = [
    ...between(solid, [bottom, top], 0, out),
    ...between(foreign, [top, zoneTop], out - size.depth, out),
    ...between(foreign, [0, bottom], out - size.depth, out),
  ];
  return commonIntervals(freeIntervals([0, last], shadows(taken, size.width)), gaps);
};
