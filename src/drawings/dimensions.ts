import { edges } from '../geometry/polygon';
import { cross, subtract } from '../geometry/vector';
import type { Job, Option, Site } from '../job/schema';
import { faceOf, pointOnFace, STUD_WALL_IN, wallFaces } from '../job/site';
import { knownOr } from '../units/types';
import type { Dimension } from './items';
import { OUTLINE_WALL_IN } from './walls';

/** Points of the paper outside the wall: the chain with the panel's place, and beyond it the lengths of the walls. */
export const NEAR = 16;
export const FAR = 38;

/**
 * The length of each wall, written outside it. A wall that ends in a corner turning outward has no room for its own:
 * its length is the difference of the two walls opposite.
 */
export const dimensionWalls = (site: Site): Dimension[] => {
  const walls = edges(site.outline.map((c) => c.at));
  return walls.flatMap(([from, to], i): Dimension[] => {
    const [start, end] = walls[(i + 1) % walls.length]!;
    if (cross(subtract(to, from), subtract(end, start)) > 1e-6) return [];
    const { id, thickness } = site.outline[i]!;
    const clear = knownOr(thickness, OUTLINE_WALL_IN);
    return [{ item: 'dimension', id, layer: 'dimensions', from, to, clear, off: FAR, beyond: 'to' }];
  });
};

/** From the left end of its wall to the new panel, and on larger paper its width: behind the wall, so that the room stays clear. */
export const dimensionPanel = (job: Job, option: Option, small: boolean): Dimension[] => {
  const { on, size, id } = option.enclosure;
  const face = faceOf(wallFaces(job.site, 'after'), on);
  if (!face) return [];
  const clear = knownOr(face.thickness, face.partition ? STUD_WALL_IN : OUTLINE_WALL_IN);
  const stations = small ? [0, on.left] : [0, on.left, on.left + size.width];
  return stations.slice(1).flatMap((to, i): Dimension[] => {
    const from = stations[i]!;
    if (to - from <= 0) return [];
    return [
      {
        item: 'dimension',
        id: i === 0 ? `${id} offset` : `${id} width`,
        layer: 'dimensions',
        from: pointOnFace(face, from),
        to: pointOnFace(face, to),
        clear,
        off: NEAR,
        beyond: i === 0 ? 'from' : 'to',
      },
    ];
  });
};
