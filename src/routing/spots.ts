import { bounds, insideParts, strictlyInside } from '../geometry/polygon';
import type { Build, Site } from '../job/schema';
import { areaAt, solids, type WallFace, wallFaces } from '../job/site';
import type { Id, Pt, Pt3, U } from '../units/types';

/** A wall that stays like this after the finishing leaves a box on it in sight. */
const OPEN_WALL: ReadonlySet<U<Build>> = new Set<Build>(['poured', 'block', 'plywood board', 'open studs']);
/** Appliances stand on the floor; what hangs higher than this does not bar the way of a ladder. */
const STANDS_BELOW_IN = 24;

export type BoxOn = 'joist' | 'wall';

export interface SpotCheck {
  readonly may: (point: Pt3, on: BoxOn, faceId: Id | null) => boolean;
  /** Where between two points the answer may turn, as shares of the way. */
  readonly turns: (from: Pt3, to: Pt3) => number[];
}

/**
 * May a splice box hang here and stay reachable (314.29) after the finishing? On a joist under open joists or lay-in,
 * not in a panned return or blocked bay, not over a thing that stands there; on a wall only if it is not closed later.
 * What is not known is not offered.
 */
export const makeSpotCheck = (site: Site, moves: Parameters<typeof solids>[2]): SpotCheck => {
  const later = new Map<Id, WallFace>(wallFaces(site, 'after').map((f) => [f.id, f]));
  const standing = solids(site, 'after', moves).filter((s) => s.blocksSpace && !s.stored && s.fromZ < STANDS_BELOW_IN);
  const bays = site.bays.filter((b) => b.state !== 'insulated');
  const outlines = [...standing, ...bays, ...site.areas].map((x) => x.outline);
  const may = (point: Pt3, on: BoxOn, faceId: Id | null): boolean => {
    const p: Pt = [point[0], point[1]];
    if (standing.some((s) => s.toZ <= point[2] && strictlyInside(p, s.outline))) return false;
    if (on === 'wall') {
      const face = faceId === null ? undefined : later.get(faceId);
      return face !== undefined && OPEN_WALL.has(face.build);
    }
    if (bays.some((b) => strictlyInside(p, b.outline))) return false;
    const cover = areaAt(site, p)?.state.after.cover;
    return cover === 'open joists' || cover === 'lay-in';
  };
  const boxes = outlines.map((outline) => ({ outline, box: bounds(outline) }));
  const turns = (from: Pt3, to: Pt3): number[] => {
    const [a, b]: [Pt, Pt] = [
      [from[0], from[1]],
      [to[0], to[1]],
    ];
    const near = ({ box }: (typeof boxes)[number]) =>
      Math.max(a[0], b[0]) >= box.minX &&
      Math.min(a[0], b[0]) <= box.maxX &&
      Math.max(a[1], b[1]) >= box.minY &&
      Math.min(a[1], b[1]) <= box.maxY;
    return boxes
      .filter(near)
      .flatMap(({ outline }) => insideParts(a, b, outline).flat())
      .filter((t) => t > 0 && t < 1);
  };
  return { may, turns };
};
