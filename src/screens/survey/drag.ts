import { add, dot, subtract } from '../../geometry/vector';
import type { Edit } from '../../job/edit';
import type { Enclosure, Job } from '../../job/schema';
import type { In, Pt, Pt3 } from '../../units/types';
import { faceFor } from './outlines';
import { fieldValue, type Ref } from './ref';
import { faceNear, snapBox, snapCorner, snapLeft, snapPoint, snapWallMove, toQuarter } from './snap';

/** A place by which a thing is reshaped. */
export interface Grip {
  /** Which of its points. */
  readonly key: string;
  readonly at: Pt;
}

type Point = Pt | Pt3;
const COURSES: Readonly<Record<string, string>> = {
  '/site/areas': '/outline',
  '/site/framing': '/outline',
  '/site/bays': '/outline',
  '/cableGroups': '/path',
};
/** The field that holds a thing's points. */
export const courseField = (ref: Ref): string | undefined =>
  ref.id === '/feeder' && ref.list === '' ? '/path' : COURSES[ref.list];

const flat = (p: Point): Pt => [p[0], p[1]];
const moved = (p: Point, to: Pt): Point => (p.length === 3 ? [...to, p[2]] : to);

const course = (job: Job, ref: Ref): readonly Point[] => {
  const field = courseField(ref);
  const points = field === undefined ? null : fieldValue(job, ref, field);
  return Array.isArray(points) ? (points as Point[]) : [];
};
/** A field of a record, or of a part of the job there is one of. */
export const setField = (ref: Ref, field: string, value: unknown): Edit =>
  ref.list === ''
    ? { edit: 'set value', path: `${ref.id}${field}`, value }
    : { edit: 'set field', list: ref.list, id: ref.id, field, value };

export const gripsOf = (job: Job, ref: Ref): Grip[] => {
  const { outline, partitions, sleeves } = job.site;
  if (ref.list === '/site/outline') {
    const i = outline.findIndex((c) => c.id === ref.id);
    return i < 0 ? [] : [outline[i]!, outline[(i + 1) % outline.length]!].map(({ id, at }) => ({ key: id, at }));
  }
  const ends = [...partitions, ...sleeves].find((r) => r.id === ref.id);
  if ((ref.list === '/site/partitions' || ref.list === '/site/sleeves') && ends)
    return [
      { key: 'from', at: flat(ends.from) },
      { key: 'to', at: flat(ends.to) },
    ];
  return course(job, ref).map((p, i) => ({ key: String(i), at: flat(p) }));
};

/** The edit that takes a grip to a place; null where it has none. `within` inches of something, it snaps to it. */
export const dragGrip = (job: Job, ref: Ref, key: string, to: Pt, within: In): Edit | null => {
  const { outline, partitions } = job.site;
  switch (ref.list) {
    case '/site/outline': {
      const i = outline.findIndex((c) => c.id === key);
      if (i < 0) return null;
      const [before, after] = [outline.at(i - 1)!, outline[(i + 1) % outline.length]!];
      return { edit: 'move corner', wall: key, to: snapCorner(to, before.at, after.at, within) };
    }
    case '/site/partitions': {
      const p = partitions.find((w) => w.id === ref.id);
      if (!p) return null;
      const end = snapPoint({ ...job.site, partitions: partitions.filter((w) => w !== p) }, to, within);
      const other = key === 'from' ? p.to : p.from;
      const square = snapCorner(end, other, other, within);
      const at = end[0] === toQuarter(to[0]) && end[1] === toQuarter(to[1]) ? square : end;
      return { edit: 'move partition', wall: p.id, from: key === 'from' ? at : p.from, to: key === 'to' ? at : p.to };
    }
    case '/site/sleeves': {
      const now = fieldValue(job, ref, `/${key}`) as Pt3;
      return setField(ref, `/${key}`, moved(now, snapPoint(job.site, to, within)));
    }
    default: {
      const points = course(job, ref);
      const now = points[Number(key)];
      const field = courseField(ref);
      if (!now || field === undefined) return null;
      return setField(ref, field, points.with(Number(key), moved(now, snapPoint(job.site, to, within))));
    }
  }
};

const along = (job: Job, ref: Ref, on: Enclosure['on'], width: In, by: Pt, to: Pt, within: In): Edit | null => {
  const other = faceNear(job.site, to, within * 2);
  const now = faceFor(job.site, on);
  const face =
    other && now && other.face.id !== now.id && Math.abs(dot(subtract(to, now.from), now.into)) > within * 3
      ? other.face
      : now;
  if (!face) return null;
  // on its own wall it keeps under the hand where it was taken; on another its middle goes to the hand
  const left = face === now ? on.left + dot(by, face.along) : (other?.chainage ?? 0) - width / 2;
  return setField(ref, '/on', {
    ...on,
    wall: face.wall,
    face: face.face,
    left: snapLeft(left, width, face.length),
  });
};

/** The edit that moves a whole thing by the way from one place to another; null where it does not move as a whole. */
export const dragBody = (job: Job, ref: Ref, from: Pt, to: Pt, within: In): Edit | null => {
  const by = subtract(to, from);
  const { site } = job;
  switch (ref.list) {
    case '/site/outline':
    case '/site/partitions':
      return { edit: 'move wall', wall: ref.id, by: snapWallMove(job, ref.id, by) };
    case '/site/openings': {
      const o = site.openings.find((r) => r.id === ref.id);
      return o ? along(job, ref, o.on, o.width, by, to, within) : null;
    }
    case '/enclosures': {
      const e = job.enclosures.find((r) => r.id === ref.id);
      return e ? along(job, ref, e.on, e.size.width, by, to, within) : null;
    }
    case '/site/obstacles': {
      const o = site.obstacles.find((r) => r.id === ref.id);
      if (!o) return null;
      const corner = add(o.corner, by);
      const square = o.turn % 360 === 0;
      const at = square
        ? snapBox(site, corner, o.size.width, o.size.depth, within)
        : ([toQuarter(corner[0]), toQuarter(corner[1])] as const);
      return setField(ref, '/corner', at);
    }
    case '/site/areas':
    case '/site/bays': {
      const shift: Pt = [toQuarter(by[0]), toQuarter(by[1])];
      return setField(
        ref,
        '/outline',
        course(job, ref).map((p) => add(flat(p), shift)),
      );
    }
    default:
      return null;
  }
};
