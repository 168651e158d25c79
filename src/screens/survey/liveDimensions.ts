import type { Dimension } from '../../drawings/items';
import { edges } from '../../geometry/polygon';
import { cross, distance, subtract } from '../../geometry/vector';
import type { Job } from '../../job/schema';
import { boxOutline, pointOnFace, roomOutline } from '../../job/site';
import type { Pt } from '../../units/types';
import { faceFor } from './outlines';
import type { Ref } from './ref';
import { dimensionLine } from './surveyDrawing';

/** From a point in a direction to the first wall of the room; undefined where there is none. */
const toWall = (job: Job, from: Pt, way: Pt): Pt | undefined =>
  [...edges(roomOutline(job.site)), ...job.site.partitions.map((p): [Pt, Pt] => [p.from, p.to])]
    .flatMap(([a, b]): { t: number; at: Pt }[] => {
      const wall = subtract(b, a);
      const turn = cross(way, wall);
      if (Math.abs(turn) < 1e-9) return [];
      const t = cross(subtract(a, from), wall) / turn;
      const s = cross(subtract(a, from), way) / turn;
      return t > 1e-6 && s >= 0 && s <= 1 ? [{ t, at: [from[0] + way[0] * t, from[1] + way[1] * t] }] : [];
    })
    .sort((a, b) => a.t - b.t)[0]?.at;

const shorter = (a: Dimension | null, b: Dimension | null): Dimension[] => {
  const long = (d: Dimension) => distance(d.from, d.to);
  const found = [a, b].filter((d) => d !== null);
  return found.sort((p, q) => long(p) - long(q)).slice(0, 1);
};

/** The measures by which the thing selected is placed, while it is moved and at rest. */
export const liveDimensions = (job: Job, ref: Ref): Dimension[] => {
  const onFace = (on: { wall: string; face: 'front' | 'back'; left: number }, width: number): Dimension[] => {
    const face = faceFor(job.site, on);
    if (!face) return [];
    const out = 9;
    const at = (s: number) => pointOnFace(face, s, out);
    return [
      dimensionLine('from left end', at(0), at(on.left)),
      dimensionLine('to right end', at(on.left + width), at(face.length)),
    ].filter((d) => distance(d.from, d.to) > 0.01);
  };
  switch (ref.list) {
    case '/site/openings': {
      const o = job.site.openings.find((r) => r.id === ref.id);
      return o ? onFace(o.on, o.width) : [];
    }
    case '/enclosures': {
      const e = job.enclosures.find((r) => r.id === ref.id);
      return e ? onFace(e.on, e.size.width) : [];
    }
    case '/site/partitions': {
      const p = job.site.partitions.find((r) => r.id === ref.id);
      return p ? [{ ...dimensionLine('length', p.from, p.to), off: 14 }] : [];
    }
    case '/site/obstacles': {
      const o = job.site.obstacles.find((r) => r.id === ref.id);
      if (!o) return [];
      const [a, b, c, d] = boxOutline(o.corner, o.size.width, o.size.depth, o.turn) as [Pt, Pt, Pt, Pt];
      const ray = (p: Pt, q: Pt): Dimension | null => {
        const mid: Pt = [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2];
        const long = distance(p, q) || 1;
        // corners run counter-clockwise: outward is to the right of each side
        const at = toWall(job, mid, [(q[1] - p[1]) / long, -(q[0] - p[0]) / long]);
        return at ? dimensionLine(`to wall ${p.join()}`, mid, at) : null;
      };
      return [...shorter(ray(a, b), ray(c, d)), ...shorter(ray(b, c), ray(d, a))];
    }
    default:
      return [];
  }
};
