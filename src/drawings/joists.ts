import { bounds, insideParts, type Polygon } from '../geometry/polygon';
import { add, dot, scale } from '../geometry/vector';
import { acrossJoists } from '../job/framing';
import type { Framing, Site } from '../job/schema';
import { roomOutline } from '../job/site';
import { isKnown, type Pt } from '../units/types';
import { type Line, path, stroke } from './items';

export type Interval = readonly [number, number];

/** What is left of some intervals when one is taken out. */
export const without = (parts: readonly Interval[], cut: Interval): Interval[] =>
  parts.flatMap(([from, to]): Interval[] => {
    if (cut[1] <= from || cut[0] >= to) return [[from, to]];
    const left: Interval[] = cut[0] > from ? [[from, cut[0]]] : [];
    return cut[1] < to ? [...left, [cut[1], to]] : left;
  });

/** One thin line a joist inside `polygon` and outside `others`, where direction, spacing and first joist were measured. */
const drawRegion = (framing: Framing, polygon: Polygon, others: readonly Polygon[]): Line[] => {
  const { direction, spacing, firstJoist } = framing;
  if (!isKnown(direction) || !isKnown(spacing) || !isKnown(firstJoist)) return [];
  const across = acrossJoists(direction);
  const along: Pt = [across[1], -across[0]];
  const box = bounds(polygon);
  const reach = Math.hypot(box.maxX - box.minX, box.maxY - box.minY) + Math.hypot(box.minX, box.minY);
  const stations = polygon.map((p) => dot(p, across));
  const first = Math.ceil((Math.min(...stations) - firstJoist) / spacing);
  const last = Math.floor((Math.max(...stations) - firstJoist) / spacing);
  const lines: Line[] = [];
  for (let k = first; k <= last; k++) {
    const on = scale(across, firstJoist + k * spacing);
    const a = add(on, scale(along, -reach));
    const b = add(on, scale(along, reach));
    const at = (t: number): Pt => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
    const parts = others
      .flatMap((other) => insideParts(a, b, other))
      .reduce(without, insideParts(a, b, polygon) as Interval[]);
    for (const [from, to] of parts) lines.push(path('joists', framing.id, [at(from), at(to)], stroke('hair', 'hair')));
  }
  return lines;
};

/** Joists region by region; a region with its own outline comes before one that covers the whole room. */
export const drawJoists = (site: Site): Line[] => {
  const own = site.framing.flatMap((f) => (f.outline ? [f.outline] : []));
  return site.framing.flatMap((f) =>
    f.outline ? drawRegion(f, f.outline, []) : drawRegion(f, roomOutline(site), own),
  );
};
