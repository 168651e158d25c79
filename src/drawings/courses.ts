import { distance } from '../geometry/vector';
import type { In, Pt, Pt3 } from '../units/types';

/** Courses of cable in space and in plan. */

const SAME_IN = 1 / 128;
export const samePlace = (a: Pt, b: Pt): boolean => distance(a, b) < SAME_IN;
const flat = (p: Pt3): Pt => [p[0], p[1]];
const step = (a: Pt3, b: Pt3): In => Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]);

export const courseLength = (course: readonly Pt3[]): In =>
  course.reduce((sum, p, i) => (i === 0 ? 0 : sum + step(course[i - 1]!, p)), 0);

/** The plan of a course: risers are points, doubled points are dropped. */
export const inPlan = (course: readonly Pt3[]): Pt[] =>
  course.map(flat).filter((p, i, all) => i === 0 || !samePlace(p, all[i - 1]!));

/** The piece of a course between two distances along it. */
export const piece = (course: readonly Pt3[], from: In, to: In): Pt3[] => {
  const points: Pt3[] = [];
  let at = 0;
  for (let i = 1; i < course.length; i++) {
    const a = course[i - 1]!;
    const b = course[i]!;
    const long = step(a, b);
    const on = (s: In): Pt3 => {
      const t = long === 0 ? 0 : (s - at) / long;
      return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, a[2] + (b[2] - a[2]) * t];
    };
    const [s, e] = [Math.max(from, at), Math.min(to, at + long)];
    if (s < e) points.push(...(points.length === 0 ? [on(s)] : []), on(e));
    at += long;
  }
  return points;
};

/** How far along a course its nearest place to a point is. */
export const chainageOf = (course: readonly Pt3[], p: Pt3): In => {
  let best = { far: Number.POSITIVE_INFINITY, at: 0 };
  let at = 0;
  for (let i = 1; i < course.length; i++) {
    const a = course[i - 1]!;
    const b = course[i]!;
    const long = step(a, b);
    const dot = (b[0] - a[0]) * (p[0] - a[0]) + (b[1] - a[1]) * (p[1] - a[1]) + (b[2] - a[2]) * (p[2] - a[2]);
    const t = long === 0 ? 0 : Math.min(1, Math.max(0, dot / (long * long)));
    const near: Pt3 = [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, a[2] + (b[2] - a[2]) * t];
    const far = step(near, p);
    if (far < best.far - 1e-9) best = { far, at: at + t * long };
    at += long;
  }
  return best.at;
};

/** Does the course end by rising through the floor above? */
export const risesAway = (course: readonly Pt3[]): boolean => {
  const end = course.at(-1);
  const before = course.at(-2);
  return end !== undefined && before !== undefined && samePlace(flat(end), flat(before)) && end[2] > before[2];
};
