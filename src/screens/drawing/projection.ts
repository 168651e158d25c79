import type { Drawing } from '../../drawings/items';
import type { Paper } from '../../drawings/paper';
import type { Pt } from '../../units/types';

/** How a drawing lies on the screen: one point of the paper is one pixel. */
export interface Projection extends Paper {
  /** The plan point under a point of the paper: what `to` does, undone. */
  readonly from: (p: Pt) => Pt;
}

/** Where the pointer is on the paper of a drawing, by the drawing's own screen matrix. */
export const pointerOn = (svg: SVGSVGElement, pointer: { readonly clientX: number; readonly clientY: number }): Pt => {
  const matrix = svg.getScreenCTM()?.inverse();
  const p = new DOMPoint(pointer.clientX, pointer.clientY);
  const on = matrix ? p.matrixTransform(matrix) : p;
  return [on.x, on.y];
};

/** The largest scale at which the drawing fits a space with a margin for dimensions, times how much closer one looks. */
export const projectionOf = (
  { extent }: Pick<Drawing, 'extent'>,
  space: { readonly width: number; readonly height: number },
  margin: number,
  closer: number,
): Projection => {
  const w = Math.max(1, extent.maxX - extent.minX);
  const h = Math.max(1, extent.maxY - extent.minY);
  const whole = Math.min((space.width - 2 * margin) / w, (space.height - 2 * margin) / h);
  const scale = Math.max(0.2, whole) * closer;
  const width = Math.max(space.width, w * scale + 2 * margin);
  const height = Math.max(space.height, h * scale + 2 * margin);
  const left = (width - w * scale) / 2;
  const top = (height - h * scale) / 2;
  return {
    scale,
    width,
    height,
    to: ([x, y]) => [left + (x - extent.minX) * scale, top + (extent.maxY - y) * scale],
    from: ([x, y]) => [extent.minX + (x - left) / scale, extent.maxY - (y - top) / scale],
  };
};

/** A polyline moved sideways by some pixels, mitred at its corners. */
export const besideOf = (points: readonly Pt[], by: number): readonly Pt[] => {
  if (by === 0) return points;
  const normal = (p: Pt, q: Pt): Pt => {
    const l = Math.hypot(q[0] - p[0], q[1] - p[1]) || 1;
    return [(q[1] - p[1]) / l, -(q[0] - p[0]) / l]; // left of the course, y down
  };
  return points.map((b, i): Pt => {
    const a = points[i - 1];
    const c = points[i + 1];
    const n1 = a ? normal(a, b) : normal(b, c!);
    const n2 = c ? normal(b, c) : n1;
    const m: Pt = [n1[0] + n2[0], n1[1] + n2[1]];
    const d = Math.max(0.35, m[0] * n1[0] + m[1] * n1[1]);
    return [b[0] + (m[0] * by) / d, b[1] + (m[1] * by) / d];
  });
};

const r2 = (n: number): number => Math.round(n * 100) / 100;
export const pathData = (points: readonly Pt[], closed: boolean): string =>
  `M${points.map((p) => `${r2(p[0])} ${r2(p[1])}`).join('L')}${closed ? 'Z' : ''}`;
