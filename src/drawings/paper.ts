import type { Pt } from '../units/types';
import type { Line } from './items';

/** A sheet a drawing is put on: points of the paper, y down. */
export interface Paper {
  readonly width: number;
  readonly height: number;
  /** Points of the paper an inch of the house takes. */
  readonly scale: number;
  readonly to: (p: Pt) => Pt;
}
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}
export const boxAt = (x: number, y: number, w: number, h: number): Box => ({ x: x - w / 2, y: y - h / 2, w, h });

/** The area two boxes share. */
export const shared = (a: Box, b: Box): number =>
  Math.max(0, Math.min(a.x + a.w, b.x + b.w) - Math.max(a.x, b.x)) *
  Math.max(0, Math.min(a.y + a.h, b.y + b.h) - Math.max(a.y, b.y));

const STEP = 8;
const THICK = 4;
/** A line as a string of small boxes, so that one lying at an angle does not fill its whole extent. */
export const alongLine = (a: Pt, b: Pt): Box[] => {
  const count = Math.max(1, Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) / STEP));
  return Array.from({ length: count }, (_, k) => {
    const t = (k + 0.5) / count;
    return boxAt(a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, THICK, THICK);
  });
};
export const inkBoxes = (line: Line, to: Paper['to']): Box[] => {
  const points = (line.closed ? [...line.points, line.points[0]!] : line.points).map(to);
  return points.slice(1).flatMap((b, i) => alongLine(points[i]!, b));
};
