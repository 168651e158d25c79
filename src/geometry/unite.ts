import * as clipping from 'polygon-clipping';
import type { Pt } from '../units/types';
import { type Polygon, signedArea } from './polygon';

// The package's types name its functions, its module has them on the default export.
const { union } = (clipping as unknown as { default?: typeof clipping }).default ?? clipping;

/** One area: its rings taken together even-odd, outer ones and holes alike, not closed. */
export type Rings = readonly (readonly Pt[])[];

/** Beyond this many the clipper's time grows out of hand. */
const MOST_UNITED = 200;

/**
 * The union of simple polygons, as areas that may overlap: one where the clipper can unite them, so that only the
 * corners of the whole remain; else every polygon by itself, which covers the same ground with more corners (the
 * clipper gives up on some inputs whose edges all but coincide). Polygons without area are dropped.
 */
export const unite = (polygons: readonly Polygon[]): Rings[] => {
  const solid = polygons.filter((p) => Math.abs(signedArea(p)) > 1e-9);
  if (solid.length <= 1 || solid.length > MOST_UNITED) return solid.map((p) => [p]);
  const [first, ...rest] = solid.map((p) => [p.map(([x, y]): [number, number] => [x, y])]);
  try {
    return [union(first!, ...rest).flatMap((polygon) => polygon.map((ring) => ring.slice(0, -1)))];
  } catch {
    return solid.map((p) => [p]);
  }
};
