import { formatFeetInches } from '../units/length';
import type { Pt } from '../units/types';
import type { Dimension } from './items';
import { alongLine, type Box, boxAt, type Paper } from './paper';

/** Lettering of a dimension, points of the paper. */
export const DIMENSION_SIZE = 11.5;
/** Width of a figure in the template lettering as a share of its size, a small fraction counted as two. Measured on the font. */
const FIGURE = 0.56;

/** How wide a dimension's figure comes out; a dimension shorter than that has it beside the line, not over it. */
export const figureWidth = ({ from, to }: Pick<Dimension, 'from' | 'to'>): number => {
  const text = formatFeetInches(Math.hypot(to[0] - from[0], to[1] - from[1]));
  return text.replace(/ \d+\/\d+/, '00').length * FIGURE * DIMENSION_SIZE;
};

/** Where a dimension's line runs on the paper, and where its figure stands. */
const laid = (
  dimension: Dimension,
  { to, scale }: Paper,
): { readonly line: readonly [Pt, Pt]; readonly figure: Box } => {
  const [a, b] = [to(dimension.from), to(dimension.to)];
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  const u: Pt = [(b[0] - a[0]) / long, (b[1] - a[1]) / long];
  const n: Pt = [u[1], -u[0]];
  const off = dimension.clear * scale + dimension.off;
  const at = (p: Pt, out: number): Pt => [p[0] + n[0] * out, p[1] + n[1] * out];
  const [A, B] = [at(a, off), at(b, off)];
  const beside = (p: Pt, by: number): Pt => [p[0] + u[0] * by, p[1] + u[1] * by];
  const wide = figureWidth(dimension);
  const steep = Math.abs(u[1]) > 0.7;
  const [w, h] = steep ? [DIMENSION_SIZE + 4, wide] : [wide, DIMENSION_SIZE + 4];
  const middle: Pt =
    long < wide
      ? beside(dimension.beyond === 'to' ? B : A, (dimension.beyond === 'to' ? 1 : -1) * (wide / 2 + 8))
      : [(A[0] + B[0]) / 2, (A[1] + B[1]) / 2];
  return { line: [A, B], figure: boxAt(middle[0] + n[0] * 6, middle[1] + n[1] * 6, w, h) };
};

/** Where its figure stands: nothing may run through it. */
export const dimensionFigure = (dimension: Dimension, paper: Paper): Box => laid(dimension, paper).figure;

/** Where a dimension has its line and its figure on the paper, so that nothing is written over them. */
export const dimensionBoxes = (dimension: Dimension, paper: Paper): Box[] => {
  const { line, figure } = laid(dimension, paper);
  return [...alongLine(...line), figure];
};
