import { edges } from '../../geometry/polygon';
import { add, distance, dot, scale, subtract, unit } from '../../geometry/vector';
import type { Job, Site } from '../../job/schema';
import { type WallFace, wallFaces } from '../../job/site';
import type { In, Pt } from '../../units/types';

/** What is dragged or clicked lands on whole quarters of an inch. */
export const QUARTER_IN = 1 / 4;
export const toQuarter = (inches: In): In => Math.round(inches / QUARTER_IN) * QUARTER_IN + 0;
const quarterPoint = ([x, y]: Pt): Pt => [toQuarter(x), toQuarter(y)];

const corners = (site: Site): Pt[] => [
  ...site.outline.map((c) => c.at),
  ...site.partitions.flatMap((p) => [p.from, p.to]),
  ...site.areas.flatMap((a) => a.outline),
];
const lines = (site: Site): [Pt, Pt][] => [
  ...edges(site.outline.map((c) => c.at)),
  ...site.partitions.map((p): [Pt, Pt] => [p.from, p.to]),
];

const nearest = <T>(list: readonly T[], far: (of: T) => number, within: number): T | undefined =>
  list
    .map((of) => ({ of, d: far(of) }))
    .filter(({ d }) => d <= within)
    .sort((a, b) => a.d - b.d)[0]?.of;

/** A point taken to a corner, else to a wall, else to whole quarters: what is `within` so many inches wins in that order. */
export const snapPoint = (site: Site, p: Pt, within: In): Pt => {
  const corner = nearest(corners(site), (c) => distance(c, p), within);
  if (corner) return corner;
  const onto = ([a, b]: readonly [Pt, Pt]): Pt => {
    const along = unit(subtract(b, a));
    const s = Math.min(distance(a, b), Math.max(0, toQuarter(dot(subtract(p, a), along))));
    return add(a, scale(along, s));
  };
  const wall = nearest(lines(site), (line) => distance(onto(line), p), within);
  return wall ? onto(wall) : quarterPoint(p);
};

/** A corner between two others: square to each of them where it nearly is, and whole quarters away from them. */
export const snapCorner = (p: Pt, before: Pt, after: Pt, within: In): Pt => {
  const [x, y] = ([0, 1] as const).map((k) => {
    const square = nearest([before[k], after[k]], (v) => Math.abs(v - p[k]), within);
    if (square !== undefined) return square;
    // measured from the neighbor the wall in this direction leads to
    const from = Math.abs(before[k] - p[k]) > Math.abs(after[k] - p[k]) ? before[k] : after[k];
    return from + toQuarter(p[k] - from);
  });
  return [x!, y!];
};

/** How far a wall moves square to itself so that the wall before it becomes whole quarters long. */
export const snapWallMove = (job: Job, wall: string, by: Pt): Pt => {
  const { outline } = job.site;
  const i = outline.findIndex((c) => c.id === wall);
  const partition = job.site.partitions.find((p) => p.id === wall);
  const [from, to] =
    i >= 0
      ? [outline[i]!.at, outline[(i + 1) % outline.length]!.at]
      : [partition?.from ?? [0, 0], partition?.to ?? [0, 0]];
  const along = unit(subtract(to as Pt, from as Pt));
  const across: Pt = [along[1], -along[0]];
  const out = dot(by, across);
  if (i < 0) return scale(across, toQuarter(out));
  const before = outline[(i + outline.length - 1) % outline.length]!.at;
  const reach = dot(subtract(from as Pt, before), across);
  return scale(across, toQuarter(reach + out) - reach);
};

/** A tap inside a partition still means one of its faces. */
const BEHIND_IN = 6;

export interface OnFaceAt {
  readonly face: WallFace;
  readonly chainage: In;
  /** In front of the face above nothing. */
  readonly out: In;
}

/** The wall face nearest to a point, now or after the finishing, seen from the side the point is on. */
export const faceNear = (site: Site, p: Pt, within: In): OnFaceAt | undefined => {
  const faces = new Map([...wallFaces(site, 'after'), ...wallFaces(site, 'now')].map((f) => [f.id, f]));
  const at = [...faces.values()].map((face): OnFaceAt => {
    const d = subtract(p, face.from);
    return { face, chainage: dot(d, face.along), out: dot(d, face.into) };
  });
  // behind a face lies the wall, and behind a partition its other face
  return nearest(
    at.filter(
      ({ face, chainage, out }) => chainage >= 0 && chainage <= face.length && (out >= -BEHIND_IN || !face.partition),
    ),
    ({ out }) => Math.abs(out),
    within,
  );
};

/** From a face's left end to a thing's left edge, kept on the wall: whole quarters from the end it is nearer to. */
export const snapLeft = (left: In, width: In, length: In): In => {
  const most = Math.max(0, length - width);
  const kept = Math.min(most, Math.max(0, left));
  return kept <= most / 2 ? Math.min(most, toQuarter(kept)) : Math.max(0, most - toQuarter(most - kept));
};

/** The lowest corner of a thing that stands square: against a wall where it nearly does, else on whole quarters. */
export const snapBox = (site: Site, corner: Pt, width: In, depth: In, within: In): Pt => {
  const sides = lines(site);
  const near = (k: 0 | 1, low: In, size: In): In => {
    const walls = sides
      .filter(([a, b]) => Math.abs(a[k] - b[k]) < 1e-6)
      .flatMap(([a, b]) => {
        const o = k === 0 ? 1 : 0;
        const span: readonly [In, In] = [Math.min(a[o], b[o]), Math.max(a[o], b[o])];
        const own: readonly [In, In] = o === 0 ? [corner[0], corner[0] + width] : [corner[1], corner[1] + depth];
        return own[1] > span[0] && own[0] < span[1] ? [a[k], a[k] - size] : [];
      });
    return nearest(walls, (v) => Math.abs(v - low), within) ?? toQuarter(low);
  };
  return [near(0, corner[0], width), near(1, corner[1], depth)];
};
