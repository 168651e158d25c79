import type { In, Pt3 } from '../units/types';

const minus = (a: Pt3, b: Pt3): Pt3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const along = (p: Pt3, u: Pt3, by: number): Pt3 => [p[0] + u[0] * by, p[1] + u[1] * by, p[2] + u[2] * by];
const unit = (p: Pt3): Pt3 => {
  const l = Math.hypot(...p);
  return [p[0] / l, p[1] / l, p[2] / l];
};
/** Turns smaller than this are no bend: float noise, or straight on. */
const STRAIGHT = 1e-4;

/**
 * A course with its corners rounded: straight lines and arcs of circles, the ends where they were. A leg too short for
 * the radius gets the largest that fits.
 */
export const bend = (course: readonly Pt3[], radius: In, steps: number): Pt3[] => {
  const points: Pt3[] = [course[0]!];
  for (let i = 1; i < course.length - 1; i++) {
    const [a, p, b] = [course[i - 1]!, course[i]!, course[i + 1]!];
    const [inLong, outLong] = [Math.hypot(...minus(p, a)), Math.hypot(...minus(b, p))];
    const [u, v] = [unit(minus(p, a)), unit(minus(b, p))];
    const cos = u[0] * v[0] + u[1] * v[1] + u[2] * v[2];
    const turn = Math.acos(Math.max(-1, Math.min(1, cos)));
    // back on itself there is no arc; straight on there is no need
    if (turn < STRAIGHT || turn > Math.PI - STRAIGHT) {
      points.push(p);
      continue;
    }
    const cut = Math.min(radius * Math.tan(turn / 2), inLong * 0.45, outLong * 0.45);
    const r = cut / Math.tan(turn / 2);
    const start = along(p, u, -cut);
    // in the plane of the bend, square to the way in, toward the way out
    const w = unit(minus(v, [u[0] * cos, u[1] * cos, u[2] * cos]));
    const center = along(start, w, r);
    for (let k = 0; k <= steps; k++) {
      const t = (turn * k) / steps;
      points.push(along(along(center, w, -r * Math.cos(t)), u, r * Math.sin(t)));
    }
  }
  points.push(course.at(-1)!);
  return points;
};
