import { type Interval, overlap, slabProjection, stripProjection } from '../geometry/freeIntervals';
import { type Polygon, SAME_PLACE_IN } from '../geometry/polygon';
import type { Id, In } from '../units/types';

/**
 * Space in front of a wall face, in the face's own coordinates: `along` from its left end as a person facing it sees
 * it, `out` from the face toward that person, z above the finished floor. All inches.
 */
export interface SpaceBox {
  readonly along: Interval;
  readonly out: Interval;
  readonly z: Interval;
}

/** A solid thing as the search sees it. Other walls, ceilings and beams come in as blockers too. */
export interface SpaceBlocker {
  readonly id: Id;
  /** Simple polygon of [along, out] points. */
  readonly outline: Polygon;
  readonly fromZ: In;
  readonly toZ: In;
  /** Keeps a person out of the working space. */
  readonly blocksSpace: boolean;
  /** Piping, duct or other equipment that has no place in the dedicated zone. */
  readonly foreign: boolean;
  /** Goods somebody can carry away: reported, never in the way. */
  readonly stored: boolean;
}

export interface Intruder {
  readonly id: Id;
  readonly byIn: In;
}

/** A panel on a face. `out` = its front from the face (0 if recessed), `depth` = of the cabinet itself. */
export interface SpacePanel {
  readonly left: In;
  readonly right: In;
  readonly bottom: In;
  readonly top: In;
  readonly out: In;
  readonly depth: In;
}

export interface SpaceVerdict {
  readonly outcome: 'holds' | 'fails' | 'cannot be told';
  /** Null = nothing was met that would measure it. */
  readonly measuredIn: In | null;
  readonly requiredIn: In;
  readonly intruders: readonly Intruder[];
  readonly shape: SpaceBox;
}

const longest = (intervals: readonly Interval[], within: Interval): number =>
  Math.max(0, ...intervals.map(([from, to]) => Math.min(to, within[1]) - Math.max(from, within[0])));

/** How far a thing reaches into a box, in: the shortest way to pull it out along one axis; 0 where it only touches. */
export const reachInto = (blocker: SpaceBlocker, box: SpaceBox): In => {
  const z: Interval = [blocker.fromZ, blocker.toZ];
  if (!overlap(z, box.z)) return 0;
  const alongs = slabProjection(blocker.outline, ...box.out).filter((i) => overlap(i, box.along));
  if (alongs.length === 0) return 0;
  const outs = stripProjection(blocker.outline, ...box.along);
  const reach = Math.min(longest(alongs, box.along), longest(outs, box.out), longest([z], box.z));
  return reach > SAME_PLACE_IN ? reach : 0;
};

/** What reaches into a box, and how far, in the order given. */
export const intrudersIn = (blockers: readonly SpaceBlocker[], box: SpaceBox): Intruder[] =>
  blockers.flatMap((blocker) => {
    const byIn = reachInto(blocker, box);
    return byIn > 0 ? [{ id: blocker.id, byIn }] : [];
  });
