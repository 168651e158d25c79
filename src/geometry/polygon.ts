import type { Pt } from '../units/types';
import { cross, distance, dot, subtract } from './vector';

/** Simple polygons as lists of corners, either way round, not closed. */
export type Polygon = readonly Pt[];

/** Below this two coordinates are the same place: far under 1/64 in, far over float noise in a house. */
export const SAME_PLACE_IN = 1e-6;

/** Positive when the corners run counter-clockwise. */
export const signedArea = (polygon: Polygon): number => {
  let twice = 0;
  for (let i = 0; i < polygon.length; i++) twice += cross(polygon[i]!, polygon[(i + 1) % polygon.length]!);
  return twice / 2;
};

export const edges = (polygon: Polygon): [Pt, Pt][] => polygon.map((p, i) => [p, polygon[(i + 1) % polygon.length]!]);

export const pointToSegment = (p: Pt, a: Pt, b: Pt): number => {
  const ab = subtract(b, a);
  const square = dot(ab, ab);
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, dot(subtract(p, a), ab) / square));
  return distance(p, [a[0] + ab[0] * t, a[1] + ab[1] * t]);
};

export const onBoundary = (p: Pt, polygon: Polygon, tolerance = SAME_PLACE_IN): boolean =>
  edges(polygon).some(([a, b]) => pointToSegment(p, a, b) <= tolerance);

/** Strictly inside; points on the boundary are not. */
export const strictlyInside = (p: Pt, polygon: Polygon): boolean => {
  if (onBoundary(p, polygon)) return false;
  let inside = false;
  for (const [a, b] of edges(polygon)) {
    if (a[1] > p[1] !== b[1] > p[1] && p[0] < ((b[0] - a[0]) * (p[1] - a[1])) / (b[1] - a[1]) + a[0]) inside = !inside;
  }
  return inside;
};

export const insideOrOn = (p: Pt, polygon: Polygon): boolean => onBoundary(p, polygon) || strictlyInside(p, polygon);

export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}
export const bounds = (points: readonly Pt[]): Bounds => ({
  minX: Math.min(...points.map((p) => p[0])),
  minY: Math.min(...points.map((p) => p[1])),
  maxX: Math.max(...points.map((p) => p[0])),
  maxY: Math.max(...points.map((p) => p[1])),
});

/** Do two segments share a point that is inside both (a true crossing, not a touch)? */
export const segmentsCross = (a: Pt, b: Pt, c: Pt, d: Pt): boolean => {
  const side = (p: Pt, q: Pt, r: Pt) => {
    const v = cross(subtract(q, p), subtract(r, p));
    return Math.abs(v) <= SAME_PLACE_IN ? 0 : Math.sign(v);
  };
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
};

/**
 * The parts of a segment (as fractions 0…1 along it) strictly inside a simple polygon.
 * A segment that only runs along an edge or touches a corner has none.
 */
export const insideParts = (a: Pt, b: Pt, polygon: Polygon): [number, number][] => {
  const ab = subtract(b, a);
  const square = dot(ab, ab);
  if (square === 0) return [];
  const cuts = [0, 1];
  for (const [c, d] of edges(polygon)) {
    const cd = subtract(d, c);
    const den = cross(ab, cd);
    for (const corner of [c, d])
      if (pointToSegment(corner, a, b) <= SAME_PLACE_IN) cuts.push(dot(subtract(corner, a), ab) / square);
    if (Math.abs(den) < 1e-12) continue;
    const t = cross(subtract(c, a), cd) / den;
    const s = cross(subtract(c, a), ab) / den;
    if (t > 0 && t < 1 && s >= 0 && s <= 1) cuts.push(t);
  }
  cuts.sort((p, q) => p - q);
  const parts: [number, number][] = [];
  for (let i = 1; i < cuts.length; i++) {
    const from = cuts[i - 1]!;
    const to = cuts[i]!;
    if (to - from < 1e-12) continue;
    const mid = (from + to) / 2;
    if (!strictlyInside([a[0] + ab[0] * mid, a[1] + ab[1] * mid], polygon)) continue;
    const last = parts.at(-1);
    if (last && from - last[1] < 1e-12) last[1] = to;
    else parts.push([from, to]);
  }
  return parts;
};
