import type { Finding } from '../facts/result';
import type { Id, In, Pt } from '../units/types';
import type { Dimension } from './items';

/** Points of the paper from the space to its dimension. */
const OFF = 14;

const dimension = (id: Id, from: Pt, to: Pt, off: number): Dimension => ({
  item: 'dimension',
  id,
  layer: 'dimensions',
  from,
  to,
  clear: 0,
  off,
  beyond: 'to',
});
const along = (a: Pt, b: Pt, by: In): Pt => {
  const l = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  return [a[0] + ((b[0] - a[0]) / l) * by, a[1] + ((b[1] - a[1]) / l) * by];
};

/**
 * What a finding about the working space asks for and what was found, as dimensions in plan. Its shape runs along the
 * panel's front from left to right, then out: left near, right near, right far, left far.
 */
export const measuresOf = ({ rule, shape, measured }: Finding): Dimension[] => {
  if (shape?.length !== 4) return [];
  const [leftNear, rightNear, rightFar, leftFar] = shape.map(([x, y]): Pt => [x, y]) as [Pt, Pt, Pt, Pt];
  const id = `measured ${rule}`;
  if (rule === 'WS-DEPTH') {
    const needed = dimension(`${id} needed`, rightFar, rightNear, OFF);
    const full = Math.hypot(rightFar[0] - rightNear[0], rightFar[1] - rightNear[1]);
    const found = measured !== null && measured > 0 && measured < full;
    if (!found) return [needed];
    const middle: Pt = [(leftNear[0] + rightNear[0]) / 2, (leftNear[1] + rightNear[1]) / 2];
    const away: Pt = [middle[0] + rightFar[0] - rightNear[0], middle[1] + rightFar[1] - rightNear[1]];
    return [needed, dimension(id, along(middle, away, measured), middle, 0)];
  }
  return rule === 'WS-WIDTH' || rule === 'WS-HEIGHT' ? [dimension(id, rightFar, leftFar, OFF)] : [];
};
