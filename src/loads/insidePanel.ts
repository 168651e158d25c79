import type { Run } from '../facts/result';
import { dot, subtract } from '../geometry/vector';
import type { Enclosure, Job } from '../job/schema';
import { enclosureOnFace, faceOf, visibleRun, wallFaces } from '../job/site';
import { BREAKER_FROM_MIDDLE_IN, TERMINAL_SPAN } from '../standards/insideCan';
import type { Id, In, Pt3 } from '../units/types';

/** A point on the face of a panel's wall: along it from its left end, and above the floor. */
export interface OnPanel {
  readonly left: In;
  readonly z: In;
}

/**
 * Where the breaker of a space ends, in a panel of so many: odd spaces in the left column, even ones in the right, from
 * the top down; a panel hung upside down is turned as a whole.
 */
export const spaceAt = (can: Enclosure, spaces: number, space: number): OnPanel => {
  const box = enclosureOnFace(can);
  const rows = Math.ceil(spaces / 2);
  const row = Math.ceil(space / 2) - 1;
  const fromTop = can.upright ? row : rows - 1 - row;
  const [near, far] = TERMINAL_SPAN.hot;
  const [low, high] = can.mainAt === 'top' ? [near, far] : [1 - far, 1 - near];
  const height = box.top - box.bottom;
  const share = low + (high - low) * (rows > 1 ? fromTop / (rows - 1) : 0.5);
  const isLeft = (space % 2 === 1) === can.upright;
  return {
    left: (box.left + box.right) / 2 + (isLeft ? -BREAKER_FROM_MIDDLE_IN : BREAKER_FROM_MIDDLE_IN),
    z: box.top - share * height,
  };
};

/** Where a home run comes into the new panel: the end of its way, or of the old cable that stays; undefined where neither is drawn. */
export const entriesInto = (job: Job, can: Enclosure, runs: readonly Run[]): ReadonlyMap<Id, OnPanel> => {
  const face = faceOf([...wallFaces(job.site, 'now'), ...wallFaces(job.site, 'after')], can.on);
  if (!face) return new Map();
  const onFace = (p: Pt3): OnPanel => ({ left: dot(subtract([p[0], p[1]], face.from), face.along), z: p[2] });
  return new Map(
    job.homeRuns.flatMap(({ id }) => {
      const end = runs.find((r) => r.homeRun === id)?.legs.at(-1)?.to ?? visibleRun(job, id)?.path[0];
      return end ? [[id, onFace(end)] as const] : [];
    }),
  );
};

/** Hot conductor inside the panel, square along the gutter, inches. */
export const tailTo = (entry: OnPanel, at: OnPanel): In => Math.abs(entry.left - at.left) + Math.abs(entry.z - at.z);
