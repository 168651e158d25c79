import { figureWidth, DIMENSION_SIZE as SIZE } from '../../drawings/dimensionBoxes';
import type { Dimension } from '../../drawings/items';
import type { Paper } from '../../drawings/paper';
import type { Pt } from '../../units/types';
import { lengthParts } from '../parts/lengthParts';
import css from './drawing.module.css';

/** Of the trade: the gap before an extension line, how far it and the dimension line run over, half a tick. */
const GAP = 3;
const OVER = 4;
const TICK = 3.4;

const angleToRead = (dx: number, dy: number): number => {
  const a = (Math.atan2(dy, dx) * 180) / Math.PI;
  const flipped = a > 90.01 || a <= -90.01 ? a + 180 : a;
  return Math.abs(flipped - 90) < 0.1 ? -90 : flipped;
};

/** From below or from the right, figure over the line. */
export const PaintDimension = ({ dimension, on }: { readonly dimension: Dimension; readonly on: Paper }) => {
  const [a, b] = [on.to(dimension.from), on.to(dimension.to)];
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const long = Math.hypot(dx, dy) || 1;
  const u: Pt = [dx / long, dy / long];
  const n: Pt = [u[1], -u[0]]; // left of from→to, y down
  const start = dimension.clear * on.scale;
  const off = start + dimension.off;
  const at = (p: Pt, out: number, along = 0): Pt => [
    p[0] + n[0] * out + u[0] * along,
    p[1] + n[1] * out + u[1] * along,
  ];
  const line = (p: Pt, q: Pt, className: string | undefined, key: string) => (
    <line key={key} x1={p[0]} y1={p[1]} x2={q[0]} y2={q[1]} className={className} />
  );
  const inches = Math.hypot(dimension.to[0] - dimension.from[0], dimension.to[1] - dimension.from[1]);
  const { whole, top, bottom } = lengthParts(inches);
  const angle = angleToRead(dx, dy);
  const short = long < figureWidth(dimension);
  const [A, B] = [at(a, off), at(b, off)];
  // text stands over the line as it is read, whichever side of the wall that is
  const up = (angle * Math.PI) / 180;
  const lift = short ? -SIZE * 0.35 : 4;
  const way = dimension.beyond === 'to' ? 1 : -1;
  const end = way === 1 ? B : A;
  const middle: Pt = short
    ? [end[0] + u[0] * 8 * way, end[1] + u[1] * 8 * way]
    : [(A[0] + B[0]) / 2, (A[1] + B[1]) / 2];
  const text: Pt = [middle[0] + Math.sin(up) * lift, middle[1] - Math.cos(up) * lift];
  const reads: Pt = [Math.cos(up), Math.sin(up)];
  const forward = reads[0] * u[0] + reads[1] * u[1] >= 0;
  return (
    <g>
      {line(at(a, start + GAP), at(a, off + OVER), css.dimension, 'a')}
      {line(at(b, start + GAP), at(b, off + OVER), css.dimension, 'b')}
      {line(at(a, off, -OVER), at(b, off, OVER), css.dimension, 'line')}
      {[A, B].map((p, i) =>
        line(
          [p[0] - (u[0] - n[0]) * TICK, p[1] - (u[1] - n[1]) * TICK],
          [p[0] + (u[0] - n[0]) * TICK, p[1] + (u[1] - n[1]) * TICK],
          css.tick,
          `tick ${i}`,
        ),
      )}
      <text
        className={css.dimensionText}
        fontSize={SIZE}
        textAnchor={short ? (forward === (way === 1) ? 'start' : 'end') : 'middle'}
        transform={`translate(${text[0]} ${text[1]}) rotate(${angle})`}
      >
        {whole}
        {top !== null && <tspan className={css.fraction} dx={whole === '' ? 0 : 1}>{`${top}⁄${bottom}`}</tspan>}″
      </text>
    </g>
  );
};
