import { bounds, insideParts } from '../geometry/polygon';
import { type Rings, unite } from '../geometry/unite';
import type { Job, Option } from '../job/schema';
import { enclosureOnFace, pointOnFace, roomOutline } from '../job/site';
import { byId } from '../units/order';
import type { Id, Pt } from '../units/types';
import { type Barrier, type Bars, CABLE_RADIUS_IN, readBarriers, standingPanels, uniteBars } from './clearance';
import { type Bay, type Cover, readBays, readCovers } from './closed';
import { type NetFace, readFaces, spanOnFace } from './faces';
import { type Frame, roundFrom, snap } from './networkFrame';
import { type Region, readFraming } from './networkFraming';
import type { Assumed } from './types';

/** The house as the network sees it: everything in the search frame, lists in a fixed order. */
export interface Ground {
  readonly frame: Frame;
  readonly room: readonly Pt[];
  /** Coordinates of the outline's walls that stand square to x, and to y. */
  readonly square: readonly [ReadonlySet<number>, ReadonlySet<number>];
  readonly regions: readonly Region[];
  readonly covers: readonly Cover[];
  readonly bays: readonly Bay[];
  readonly barriers: readonly Barrier[];
  readonly bars: Bars;
  readonly faces: readonly NetFace[];
  /** By face: areas in chainage and height where no cable may lie. */
  readonly patches: readonly (readonly Rings[])[];
  readonly assumed: readonly Assumed[];
}

/** Heights of things without top or bottom, 1/64 in: far beyond any house. */
const FAR = 1_000_000;
const RADIUS = CABLE_RADIUS_IN * 64;
const clamp = (z: number) => Math.max(-FAR, Math.min(FAR, Math.round(z * 64)));

type Rect = readonly [left: number, right: number, bottom: number, top: number];

/** Where a barrier meets the line a cable takes on a face, half a cable out of the wall. */
const inFrontOf = (face: NetFace, barrier: Barrier): Rect[] => {
  const a = pointOnFace(face.face, 0, CABLE_RADIUS_IN);
  const b = pointOnFace(face.face, face.face.length, CABLE_RADIUS_IN);
  const box = bounds(barrier.outline);
  if (Math.max(a[0], b[0]) < box.minX || Math.min(a[0], b[0]) > box.maxX) return [];
  if (Math.max(a[1], b[1]) < box.minY || Math.min(a[1], b[1]) > box.maxY) return [];
  return insideParts(a, b, barrier.outline).map(([from, to]) => [
    roundFrom(from * face.end, face.end / 2),
    roundFrom(to * face.end, face.end / 2),
    clamp(barrier.fromZ),
    clamp(barrier.toZ),
  ]);
};

const patchesOn = (
  face: NetFace,
  job: Job,
  option: Option,
  barriers: readonly Barrier[],
  without: ReadonlySet<Id>,
): Rings[] => {
  const rects: Rect[] = barriers.flatMap((b) => inFrontOf(face, b));
  for (const o of byId(job.site.openings)) {
    if (o.on.wall !== face.face.wall || !(o.exists.now || o.exists.after) || without.has(o.id)) continue;
    const [left, right] = spanOnFace(face, o.on.face === face.face.face, o.on.left, o.width);
    const bottom = clamp(o.on.bottom) - RADIUS;
    rects.push([left - RADIUS, right + RADIUS, bottom, clamp(o.on.bottom + o.height) + RADIUS]);
  }
  for (const e of standingPanels(job, option)) {
    if (e.on.wall !== face.face.wall || e.on.face !== face.face.face || without.has(e.id)) continue;
    const on = enclosureOnFace(e);
    const [left, right] = spanOnFace(face, true, on.left, e.size.width);
    rects.push([left, right, clamp(on.bottom), clamp(on.top)]);
  }
  return unite(
    rects.map(([left, right, bottom, top]): Pt[] => [
      [left, bottom],
      [right, bottom],
      [right, top],
      [left, top],
    ]),
  );
};

export const readGround = (job: Job, option: Option, withoutIds: readonly Id[]): Ground => {
  const without = new Set(withoutIds);
  const { frame, regions, assumed } = readFraming(job.site);
  const barriers = readBarriers(job, option, without);
  const faces = readFaces(job.site, frame, without);
  const room = roomOutline(job.site).map((p) => snap(frame, p));
  const squareTo = (axis: 0 | 1) =>
    new Set(room.filter((p, i) => p[axis] === room[(i + 1) % room.length]![axis]).map((p) => p[axis]));
  return {
    frame,
    room,
    square: [squareTo(0), squareTo(1)],
    regions,
    covers: readCovers(job.site, frame),
    bays: readBays(job.site, frame, without),
    barriers,
    bars: uniteBars(barriers, regions, frame),
    faces,
    patches: faces.map((face) => patchesOn(face, job, option, barriers, without)),
    assumed,
  };
};
