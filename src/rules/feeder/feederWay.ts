import type { In, Pt3 } from '../../units/types';

export const INCHES_A_FOOT = 12;

/** Length of a drawn way, in. */
export const pathLength = (path: readonly Pt3[]): In =>
  path.slice(1).reduce((sum, p, i) => sum + Math.hypot(p[0] - path[i]![0], p[1] - path[i]![1], p[2] - path[i]![2]), 0);
