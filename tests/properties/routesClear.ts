import type { Leg } from '../../src/facts/result';
import type { Job, Option } from '../../src/job/schema';
import type { Pt, Pt3 } from '../../src/units/types';

/**
 * Walks legs in space, inch by inch, and says what they run through. Geometry of its own; nothing from routing.
 * Boxes stand square to x and y in the rooms it is used on.
 */

const NEAR = 0.03;
const HALF_CABLE = 0.45; // a little under what routes keep

const turned = (p: Pt, around: Pt, degrees: number): Pt => {
  const a = (degrees * Math.PI) / 180;
  const [x, y] = [p[0] - around[0], p[1] - around[1]];
  return [around[0] + x * Math.cos(a) - y * Math.sin(a), around[1] + x * Math.sin(a) + y * Math.cos(a)];
};
/** Distance outside (positive) or depth inside (negative) of a polygon. */
const outside = (p: Pt, polygon: readonly Pt[]): number => {
  let inside = false;
  let nearest = Number.POSITIVE_INFINITY;
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length]!;
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const t = Math.max(0, Math.min(1, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / (dx * dx + dy * dy || 1)));
    nearest = Math.min(nearest, Math.hypot(p[0] - a[0] - dx * t, p[1] - a[1] - dy * t));
    if (a[1] > p[1] !== b[1] > p[1] && p[0] < (dx * (p[1] - a[1])) / dy + a[0]) inside = !inside;
  });
  return inside ? -nearest : nearest;
};

const samples = (leg: Leg): Pt3[] => {
  const long = Math.hypot(...leg.to.map((c, k) => c - leg.from[k]!));
  const n = Math.max(3, Math.ceil(long));
  return Array.from({ length: n - 1 }, (_, i) => {
    const t = (i + 1) / n;
    return leg.from.map((c, k) => c + (leg.to[k]! - c) * t) as unknown as Pt3;
  });
};
const OVERHEAD = new Set(['running board', 'joist underside', 'above lay-in']);
const IN_JOISTS = new Set(['joist side', 'through joists']);

export const faultsOf = (job: Job, option: Option, legs: readonly Leg[]): string[] => {
  const faults = new Set<string>();
  const { site } = job;
  const room = site.outline.map((c) => c.at);
  const underside = site.framing[0]!.underside as number;
  const faces = [
    ...site.outline.map((c, i) => ({
      wall: c.id,
      face: 'front',
      from: c.at,
      to: site.outline[(i + 1) % site.outline.length]!.at,
    })),
    ...site.partitions.flatMap((p) => {
      const half = (p.thickness as number) / 2;
      const long = Math.hypot(p.to[0] - p.from[0], p.to[1] - p.from[1]);
      const off: Pt = [((p.to[1] - p.from[1]) / long) * half, (-(p.to[0] - p.from[0]) / long) * half];
      const shift = (q: Pt, k: number): Pt => [q[0] + off[0] * k, q[1] + off[1] * k];
      return [
        { wall: p.id, face: 'front', from: shift(p.from, 1), to: shift(p.to, 1) },
        { wall: p.id, face: 'back', from: shift(p.to, -1), to: shift(p.from, -1) },
      ];
    }),
  ];
  const holes = [
    ...site.openings.map((o) => ({ id: o.id, on: o.on, width: o.width, height: o.height })),
    {
      id: 'new panel',
      on: option.enclosure.on,
      width: option.enclosure.size.width,
      height: option.enclosure.size.height,
    },
  ];
  legs.forEach((leg, i) => {
    const before = legs[i - 1];
    if (before && Math.hypot(...leg.from.map((c, k) => c - before.to[k]!)) > NEAR) faults.add('a gap between legs');
    for (const p of samples(leg)) {
      const at: Pt = [p[0], p[1]];
      if (outside(at, room) > NEAR) faults.add('out of the room');
      const sideways = leg.from[2] === leg.to[2];
      const overhead = sideways && OVERHEAD.has(leg.by);
      const inJoists = sideways && IN_JOISTS.has(leg.by);
      for (const o of site.obstacles) {
        const box = (
          [
            [0, 0],
            [o.size.width, 0],
            [o.size.width, o.size.depth],
            [0, o.size.depth],
          ] as const
        ).map(([x, y]) => turned([o.corner[0] + x, o.corner[1] + y], o.corner, o.turn));
        const keep = o.clearance + HALF_CABLE;
        const [from, to] = [o.bottom - o.clearance, o.bottom + o.size.height + o.clearance];
        const hit = p[2] > from - HALF_CABLE && p[2] < to + HALF_CABLE;
        // on a wall the cable's middle stands half a cable out of it; in front of things by that much
        const walls = !overhead && !inJoists;
        if (outside(at, box) < (walls ? o.clearance - NEAR : keep) - NEAR && hit && !(walls && p[2] >= underside))
          faults.add(`through ${o.id}`);
        // a cable under the joists, with its board, takes up 1-1/2 in
        if (overhead && outside(at, box) < keep - NEAR && to > underside - 1.45 && from < underside)
          faults.add(`through ${o.id} below`);
      }
      for (const a of site.areas) {
        if (outside(at, a.outline) > -NEAR) continue;
        const [now, after] = [a.state.now.cover, a.state.after.cover];
        if (overhead && (now === 'drywall' || after === 'drywall'))
          faults.add(`hangs where drywall is or will be in ${a.id}`);
        if (inJoists && now === 'drywall') faults.add(`in closed joists of ${a.id} without opening them`);
        if (leg.by === 'running board' && now === 'lay-in') faults.add('board over a lay-in ceiling');
      }
      for (const b of site.bays) {
        if (outside(at, b.outline) > -NEAR || p[2] <= underside) continue;
        if (b.state === 'blocked') faults.add('through a blocked bay');
        if (b.state === 'panned return' && leg.by === 'joist side') faults.add('along a panned return');
      }
      for (const q of site.partitions) {
        const reaches = q.height === 'unknown' || q.height >= underside;
        const body = faces.filter((f) => f.wall === q.id).flatMap((f) => [f.from, f.to]);
        if (outside(at, body) < -NEAR && p[2] <= underside + NEAR && (reaches || p[2] < (q.height as number)))
          faults.add(`through ${q.id}`);
      }
      for (const f of faces) {
        const long = Math.hypot(f.to[0] - f.from[0], f.to[1] - f.from[1]);
        const chain = ((p[0] - f.from[0]) * (f.to[0] - f.from[0]) + (p[1] - f.from[1]) * (f.to[1] - f.from[1])) / long;
        const off =
          Math.abs((p[0] - f.from[0]) * (f.to[1] - f.from[1]) - (p[1] - f.from[1]) * (f.to[0] - f.from[0])) / long;
        if (off > NEAR || chain < 0 || chain > long) continue;
        for (const h of holes) {
          if (h.on.wall !== f.wall) continue;
          const left = h.on.face === f.face ? h.on.left : long - h.on.left - h.width;
          if (
            chain > left + NEAR &&
            chain < left + h.width - NEAR &&
            p[2] > h.on.bottom + NEAR &&
            p[2] < h.on.bottom + h.height - NEAR
          )
            faults.add(`through ${h.id}`);
        }
      }
    }
  });
  return [...faults].sort();
};
