import { segmentsCross } from '../geometry/polygon';
import type { Site } from '../job/schema';
import { pointOnFace, STUD_WALL_IN } from '../job/site';
import { DWELLING_DEPTH_IN } from '../standards/workingSpace';
import { type In, isKnown, knownOr, type Pt, type Pt3 } from '../units/types';
import { samePlace } from './courses';
import { alongOut, type Unrolled } from './unroll';
import { OUTLINE_WALL_IN } from './walls';

/** The wall drawing is cut this far before each wall: what stands nearer is seen. The depth of the working space. */
export const SEEN_IN = DWELLING_DEPTH_IN;

/** How deep behind its face a wall reaches: to the middle of a partition, through a wall of the room. */
const behind = ({ face }: Unrolled): In =>
  face.partition ? knownOr(face.thickness, STUD_WALL_IN) / 2 : knownOr(face.thickness, OUTLINE_WALL_IN);

const CLEAR_IN = 1 / 16;

/** Does another partition stand between a point of the room and this wall, as high as that point? */
export const hidden = (site: Site, { face }: Unrolled, p: Pt, z: In): boolean => {
  const [along, out] = alongOut(face, p);
  if (out <= CLEAR_IN) return false;
  const foot = pointOnFace(face, along, CLEAR_IN);
  return site.partitions.some(
    (w) =>
      w.exists.after &&
      w.id !== face.wall &&
      (!isKnown(w.height) || z < w.height) &&
      segmentsCross(p, foot, w.from, w.to),
  );
};

/** The part of a straight piece of cable that is seen before a wall, in the wall drawing; null where none is. */
const seePiece = (site: Site, wall: Unrolled, a: Pt3, b: Pt3): readonly [Pt, Pt] | null => {
  const { face, at } = wall;
  const [sa, oa] = alongOut(face, [a[0], a[1]]);
  const [sb, ob] = alongOut(face, [b[0], b[1]]);
  let [from, to] = [0, 1];
  const keep = (p: In, q: In, least: In, most: In): void => {
    if (Math.abs(q - p) < 1e-9) {
      if (p < least || p > most) to = -1;
      return;
    }
    const [t, u] = [(least - p) / (q - p), (most - p) / (q - p)];
    from = Math.max(from, Math.min(t, u));
    to = Math.min(to, Math.max(t, u));
  };
  keep(sa, sb, -CLEAR_IN, face.length + CLEAR_IN);
  keep(oa, ob, -behind(wall) - CLEAR_IN, SEEN_IN);
  if (to < from) return null;
  const on = (t: number): Pt3 => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, a[2] + (b[2] - a[2]) * t];
  const [x, y, z] = on((from + to) / 2);
  if (hidden(site, wall, [x, y], z)) return null;
  const seen = (t: number): Pt => [at + sa + (sb - sa) * t, on(t)[2]];
  return [seen(from), seen(to)];
};

/** What is seen of a course of cable before one wall: lines in the wall drawing, end-on pieces as part of them. */
export const seeCourse = (site: Site, wall: Unrolled, course: readonly Pt3[]): Pt[][] => {
  const lines: Pt[][] = [];
  for (let i = 1; i < course.length; i++) {
    const piece = seePiece(site, wall, course[i - 1]!, course[i]!);
    if (!piece) continue;
    const last = lines.at(-1);
    if (last && samePlace(last.at(-1)!, piece[0])) {
      if (!samePlace(piece[0], piece[1])) last.push(piece[1]);
    } else lines.push(samePlace(piece[0], piece[1]) ? [piece[0]] : [...piece]);
  }
  return lines.filter((l) => l.length > 1);
};

/** Where a course goes out beyond the depth of the drawing: toward whoever looks at the wall. */
export const leavesWall = (site: Site, wall: Unrolled, course: readonly Pt3[]): Pt[] =>
  course.slice(1).flatMap((b, i): Pt[] => {
    const a = course[i]!;
    const [sa, oa] = alongOut(wall.face, [a[0], a[1]]);
    const [sb, ob] = alongOut(wall.face, [b[0], b[1]]);
    if (oa <= SEEN_IN === ob <= SEEN_IN || Math.min(oa, ob) < -behind(wall) - CLEAR_IN) return [];
    const t = (SEEN_IN - oa) / (ob - oa);
    const s = sa + (sb - sa) * t;
    const z = a[2] + (b[2] - a[2]) * t;
    if (s < 0 || s > wall.face.length) return [];
    return hidden(site, wall, pointOnFace(wall.face, s, SEEN_IN), z) ? [] : [[wall.at + s, z]];
  });

/** A point of the house in the wall drawing: on the wall it is nearest to among those it is seen before; null with none. */
export const seePoint = (site: Site, walls: readonly Unrolled[], p: Pt3): Pt | null => {
  let best: { out: In; at: Pt } | null = null;
  for (const wall of walls) {
    const [along, out] = alongOut(wall.face, [p[0], p[1]]);
    const near = Math.abs(out);
    if (along < -CLEAR_IN || along > wall.face.length + CLEAR_IN) continue;
    if (out < -behind(wall) - CLEAR_IN || out > SEEN_IN || hidden(site, wall, [p[0], p[1]], p[2])) continue;
    if (best === null || near < best.out - 1e-6) best = { out: near, at: [wall.at + along, p[2]] };
  }
  return best?.at ?? null;
};
