import { add, distance, dot, scale, subtract, unit } from '../geometry/vector';
import { type Id, type In, knownOr, type Pt, type Pt3 } from '../units/types';
import type { Job, Pin, Site } from './schema';
import { STUD_WALL_IN } from './site';

/**
 * Walls move together with everything on them. Things hung on a face carry their distance from its left end and keep it
 * as it is. Points on a wall (existing runs, the feeder, sleeves, pins, edges of areas, ends of partitions) keep their
 * distance from the end their side of the wall is measured from, and go no farther than the new wall's other end.
 * Obstacles stand on the floor and stay.
 */

/** A point this near to a wall is on it: cable stapled to the wall or in a sleeve, drawn at its center. */
const ON_WALL_IN = 1;
/** Two measured places this near are the same corner. */
const SAME_CORNER_IN = 1 / 32;

interface Moved {
  readonly from: Pt;
  readonly to: Pt;
  readonly newFrom: Pt;
  readonly newTo: Pt;
  /** From the line the wall is given by to its face: nothing for the room's own walls. */
  readonly half: In;
}

const carry = (p: Pt, wall: Moved): Pt | undefined => {
  if (distance(p, wall.from) <= SAME_CORNER_IN) return add(wall.newFrom, subtract(p, wall.from));
  if (distance(p, wall.to) <= SAME_CORNER_IN) return add(wall.newTo, subtract(p, wall.to));
  const along = unit(subtract(wall.to, wall.from));
  const across: Pt = [along[1], -along[0]];
  const d = subtract(p, wall.from);
  const [chainage, out] = [dot(d, along), dot(d, across)];
  if (Math.abs(out) > wall.half + ON_WALL_IN || chainage < 0 || chainage > distance(wall.from, wall.to))
    return undefined;
  const newAlong = unit(subtract(wall.newTo, wall.newFrom));
  const newAcross: Pt = [newAlong[1], -newAlong[0]];
  const kept = Math.min(chainage, distance(wall.newFrom, wall.newTo));
  return add(wall.newFrom, add(scale(newAlong, kept), scale(newAcross, out)));
};

/** Carries every point of the job that lies on one of the moved walls; corners first, so that an end stays an end. */
const carryAll = (job: Job, walls: readonly Moved[], skipPartition: Id | null): Job => {
  const isEnd = (p: Pt) => (w: Moved) => distance(p, w.from) <= SAME_CORNER_IN || distance(p, w.to) <= SAME_CORNER_IN;
  const move = (p: Pt): Pt => {
    const wall = walls.find(isEnd(p)) ?? walls.find((w) => carry(p, w) !== undefined);
    return (wall && carry(p, wall)) ?? p;
  };
  const move3 = ([x, y, z]: Pt3): Pt3 => [...move([x, y]), z];
  const path = (points: readonly Pt3[]) => points.map(move3);
  const outline = (points: readonly Pt[]) => points.map(move);
  const pin = (p: Pin): Pin => {
    if (p.pin === 'through') return { ...p, points: path(p.points) };
    if (p.pin === 'splice at') return { ...p, at: move3(p.at) };
    return p.pin === 'keep out' ? { ...p, outline: outline(p.outline) } : p;
  };
  return {
    ...job,
    site: {
      ...job.site,
      partitions: job.site.partitions.map((p) =>
        p.id === skipPartition ? p : { ...p, from: move(p.from), to: move(p.to) },
      ),
      areas: job.site.areas.map((a) => ({ ...a, outline: outline(a.outline) })),
      framing: job.site.framing.map((f) => ({ ...f, outline: f.outline && outline(f.outline) })),
      bays: job.site.bays.map((b) => ({ ...b, outline: outline(b.outline) })),
      sleeves: job.site.sleeves.map((s) => ({ ...s, from: move3(s.from), to: move3(s.to) })),
    },
    feeder: { ...job.feeder, entersAt: move3(job.feeder.entersAt), path: path(job.feeder.path) },
    cableGroups: job.cableGroups.map((g) => ({ ...g, path: path(g.path) })),
    homeRuns: job.homeRuns.map((h) => ({ ...h, ownPath: h.ownPath && path(h.ownPath) })),
    options: job.options.map((o) => ({ ...o, pins: o.pins.map(pin) })),
  };
};

/** New places for some corners of the room, by wall id. */
const moveCorners = (job: Job, to: ReadonlyMap<Id, Pt>): Job => {
  const { outline } = job.site;
  const at = (i: number): Pt => outline[i % outline.length]!.at;
  const newAt = (i: number): Pt => to.get(outline[i % outline.length]!.id) ?? at(i);
  const walls = outline
    .map((_, i): Moved => ({ from: at(i), to: at(i + 1), newFrom: newAt(i), newTo: newAt(i + 1), half: 0 }))
    .filter((w) => w.from !== w.newFrom || w.to !== w.newTo);
  const carried = carryAll(job, walls, null);
  const corners: Site['outline'] = outline.map((c, i) => (newAt(i) === c.at ? c : { ...c, at: newAt(i) }));
  return { ...carried, site: { ...carried.site, outline: corners } };
};

/** Undefined where no wall of the room has that id. */
export const moveCorner = (job: Job, wall: Id, to: Pt): Job | undefined =>
  job.site.outline.some((c) => c.id === wall) ? moveCorners(job, new Map([[wall, to]])) : undefined;

/** Undefined where there is no such wall. */
export const moveWall = (job: Job, wall: Id, by: Pt): Job | undefined => {
  const { outline } = job.site;
  const i = outline.findIndex((c) => c.id === wall);
  if (i >= 0) {
    const [start, end] = [outline[i]!, outline[(i + 1) % outline.length]!];
    return moveCorners(
      job,
      new Map([
        [start.id, add(start.at, by)],
        [end.id, add(end.at, by)],
      ]),
    );
  }
  const partition = job.site.partitions.find((p) => p.id === wall);
  return partition && movePartition(job, wall, add(partition.from, by), add(partition.to, by));
};

/** New ends for a partition; undefined where there is none with that id. */
export const movePartition = (job: Job, wall: Id, from: Pt, to: Pt): Job | undefined => {
  const partition = job.site.partitions.find((p) => p.id === wall);
  if (!partition) return undefined;
  const half = knownOr(partition.thickness, STUD_WALL_IN) / 2;
  const moved = { from: partition.from, to: partition.to, newFrom: from, newTo: to, half };
  const carried = carryAll(job, [moved], partition.id);
  const partitions = carried.site.partitions.map((p) => (p.id === wall ? { ...partition, from, to } : p));
  return { ...carried, site: { ...carried.site, partitions } };
};
