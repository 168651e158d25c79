import type { Pt } from '../units/types';
import { edges, type Polygon, SAME_PLACE_IN } from './polygon';

/** A stretch of a line, from ≤ to. */
export type Interval = readonly [from: number, to: number];

/**
 * What is left of `within` when open stretches are taken out: closed intervals, single points included (two blockers
 * that touch leave a point between them; things narrower than a point do not fit, whoever asks knows its own width).
 */
export const freeIntervals = (within: Interval, blocked: readonly Interval[]): Interval[] => {
  const free: Interval[] = [];
  let at = within[0];
  for (const [from, to] of [...blocked].sort((a, b) => a[0] - b[0] || a[1] - b[1])) {
    if (to <= at || from >= within[1]) {
      if (from >= within[1]) break;
      continue;
    }
    if (from >= at) free.push([at, from]);
    at = to;
  }
  if (at <= within[1]) free.push([at, within[1]]);
  return free;
};

/** Stretches common to two lists of closed intervals; points count. */
export const commonIntervals = (a: readonly Interval[], b: readonly Interval[]): Interval[] =>
  a.flatMap(([from, to]) =>
    b.flatMap(([f, t]): Interval[] => {
      const low = Math.max(from, f);
      const high = Math.min(to, t);
      return low <= high ? [[low, high]] : [];
    }),
  );

const lerp = (a: number, b: number, t: number): number => a + (b - a) * t;

/**
 * The stretches along x that a simple polygon covers between two levels of y, as open intervals: an x is covered when
 * the line x = const meets the polygon's inside strictly between the levels. Exact to the polygon's own corners and
 * crossings; a polygon that only touches a level covers nothing.
 *
 * An x is covered either because the boundary passes over it between the levels (so the edges, clipped, are projected),
 * or because the whole line between the levels lies inside (so the cross-section at any one level between is added).
 */
export const slabProjection = (polygon: Polygon, fromY: number, toY: number): Interval[] => {
  if (toY - fromY <= SAME_PLACE_IN) return [];
  const stretches: Interval[] = [];
  const add = (a: number, b: number) => {
    if (Math.abs(b - a) > SAME_PLACE_IN) stretches.push([Math.min(a, b), Math.max(a, b)]);
  };
  const middle = (fromY + toY) / 2;
  const crossings: number[] = [];
  for (const [p, q] of edges(polygon)) {
    const [[ax, ay], [bx, by]] = p[1] <= q[1] ? [p, q] : [q, p];
    if (ay <= middle && by > middle) crossings.push(lerp(ax, bx, (middle - ay) / (by - ay)));
    if (by <= fromY + SAME_PLACE_IN || ay >= toY - SAME_PLACE_IN) continue;
    add(ay < fromY ? lerp(ax, bx, (fromY - ay) / (by - ay)) : ax, by > toY ? lerp(ax, bx, (toY - ay) / (by - ay)) : bx);
  }
  crossings.sort((a, b) => a - b);
  for (let i = 0; i + 1 < crossings.length; i += 2) add(crossings[i]!, crossings[i + 1]!);
  return mergeTouching(stretches);
};

/** Joins what meets within the tolerance: two edges of one outline share a corner but for float noise. */
const mergeTouching = (stretches: readonly Interval[]): Interval[] => {
  const merged: [number, number][] = [];
  for (const [from, to] of [...stretches].sort((a, b) => a[0] - b[0] || a[1] - b[1])) {
    const last = merged.at(-1);
    if (last && from <= last[1] + SAME_PLACE_IN) last[1] = Math.max(last[1], to);
    else merged.push([from, to]);
  }
  return merged;
};

/** The same with the axes exchanged: the stretches along y covered between two levels of x. */
export const stripProjection = (polygon: Polygon, fromX: number, toX: number): Interval[] =>
  slabProjection(
    polygon.map(([x, y]): Pt => [y, x]),
    fromX,
    toX,
  );

/** Do two open stretches share more than a touch? */
export const overlap = (a: Interval, b: Interval): boolean =>
  Math.min(a[1], b[1]) - Math.max(a[0], b[0]) > SAME_PLACE_IN;
