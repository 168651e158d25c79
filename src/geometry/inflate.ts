import type { In, Pt } from '../units/types';
import { type Polygon, signedArea } from './polygon';
import { add, cross, rightOf, scale, subtract, unit } from './vector';

/** A convex polygon with every edge moved outward by `by`; corners stay sharp, so a box stays a box. */
export const inflateConvex = (polygon: Polygon, by: In): Pt[] => {
  if (by === 0) return [...polygon];
  const outward = signedArea(polygon) > 0 ? 1 : -1;
  const lines = polygon.map((a, i) => {
    const along = unit(subtract(polygon[(i + 1) % polygon.length]!, a));
    return { at: add(a, scale(rightOf(along), by * outward)), along };
  });
  return lines.map((line, i) => {
    const before = lines[(i + lines.length - 1) % lines.length]!;
    const turn = cross(before.along, line.along);
    if (Math.abs(turn) < 1e-12) return line.at;
    return add(line.at, scale(line.along, cross(subtract(before.at, line.at), before.along) / -turn));
  });
};
