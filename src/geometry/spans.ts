import type { Pt } from '../units/types';
import type { Rings } from './unite';

/**
 * Where an axis-parallel line lies inside rings taken together (even-odd, so holes are holes): pairs from, to, sorted,
 * in one flat list. `axis` 0 is the line x = at, 1 the line y = at. The line must pass through no corner.
 */
export const spansAt = (rings: readonly (readonly Pt[])[], axis: 0 | 1, at: number): number[] => {
  const other = axis === 0 ? 1 : 0;
  const cuts: number[] = [];
  for (const ring of rings) {
    let a = ring[ring.length - 1]!;
    for (const b of ring) {
      if (a[axis] > at !== b[axis] > at)
        cuts.push(a[other] + ((b[other] - a[other]) * (at - a[axis])) / (b[axis] - a[axis]));
      a = b;
    }
  }
  return cuts.sort((p, q) => p - q);
};

/** Where the line lies inside any of several areas, as spans that do not overlap; spans that touch are one. */
export const coveredAt = (areas: readonly Rings[], axis: 0 | 1, at: number): number[] => {
  if (areas.length <= 1) return areas[0] ? spansAt(areas[0], axis, at) : [];
  const pairs: [number, number][] = [];
  for (const area of areas) {
    const spans = spansAt(area, axis, at);
    for (let i = 0; i + 1 < spans.length; i += 2) pairs.push([spans[i]!, spans[i + 1]!]);
  }
  pairs.sort((p, q) => p[0] - q[0]);
  const merged: number[] = [];
  for (const [from, to] of pairs) {
    const last = merged.length - 1;
    if (last > 0 && from <= merged[last]!) merged[last] = Math.max(merged[last]!, to);
    else merged.push(from, to);
  }
  return merged;
};

/** Does a stretch share more than a touch (half a unit) with one of the spans? */
export const overlapsSpans = (spans: readonly number[], from: number, to: number): boolean => {
  for (let i = 0; i + 1 < spans.length; i += 2) if (from < spans[i + 1]! - 0.5 && to > spans[i]! + 0.5) return true;
  return false;
};
