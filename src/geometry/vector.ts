import type { Pt } from '../units/types';

export const add = (a: Pt, b: Pt): Pt => [a[0] + b[0], a[1] + b[1]];
export const subtract = (a: Pt, b: Pt): Pt => [a[0] - b[0], a[1] - b[1]];
export const scale = (a: Pt, k: number): Pt => [a[0] * k, a[1] * k];
export const dot = (a: Pt, b: Pt): number => a[0] * b[0] + a[1] * b[1];
/** z of the cross product: positive when b lies counter-clockwise of a. */
export const cross = (a: Pt, b: Pt): number => a[0] * b[1] - a[1] * b[0];
export const length = (a: Pt): number => Math.hypot(a[0], a[1]);
export const distance = (a: Pt, b: Pt): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
export const unit = (a: Pt): Pt => {
  const l = length(a);
  return l === 0 ? [0, 0] : [a[0] / l, a[1] / l];
};
/** A quarter turn clockwise: the right-hand side of a direction. */
export const rightOf = (a: Pt): Pt => [a[1], -a[0]];

/** Turn about a center, degrees counter-clockwise; quarter turns stay exact. */
export const turnAbout = (p: Pt, center: Pt, degrees: number): Pt => {
  const quarters = (((degrees % 360) + 360) % 360) / 90;
  const [c, s] = Number.isInteger(quarters)
    ? (
        [
          [1, 0],
          [0, 1],
          [-1, 0],
          [0, -1],
        ] as const
      )[quarters]!
    : [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const [x, y] = subtract(p, center);
  return [center[0] + x * c - y * s, center[1] + x * s + y * c];
};
