import * as clipping from 'polygon-clipping';
import type { Pt } from '../units/types';
import { type Polygon, signedArea } from './polygon';

// The package's types name its functions, its module has them on the default export.
const { union } = (clipping as unknown as { default?: typeof clipping }).default ?? clipping;

/**
 * The union of simple polygons as rings (outer ones and holes alike, for even-odd use), not closed. Slivers without
 * area are dropped; polygons that share an edge become one, so that nothing slips through the seam.
 */
export const unite = (polygons: readonly Polygon[]): Pt[][] => {
  const solid = polygons.filter((p) => Math.abs(signedArea(p)) > 1e-9);
  const [first, ...rest] = solid.map((p) => [p.map(([x, y]): [number, number] => [x, y])]);
  if (!first) return [];
  return union(first, ...rest).flatMap((polygon) => polygon.map((ring) => ring.slice(0, -1)));
};
