import type { Interval } from '../../geometry/freeIntervals';
import type { Enclosure, Job, OnWall, Option } from '../../job/schema';
import { enclosureOnFace, type WallFace, wallFaces } from '../../job/site';
import { toSixtyFourths } from '../../units/length';
import type { In } from '../../units/types';
import { drawingWords as say } from '../../words/en/drawings';
import { type Places, placesOn } from './clearPlaces';

/** A place of the map lies so far from the next along its wall, inches. */
export const MAP_STEP_IN = 3;
const SAME = 1e-6;

/** A place that is looked at, and what is known of it before any rule is asked. */
export interface Position {
  readonly on: OnWall;
  /** What stands there, in a word; null where the panel has its spaces clear. */
  readonly why: string | null;
}

/** A whole 1/64 in at or inside the end of a clear stretch, so that the panel stays clear there. */
const inside = ([from, to]: Interval): readonly In[] => {
  const low = Math.ceil(from * 64 - SAME) / 64;
  const high = Math.floor(to * 64 + SAME) / 64;
  return low > high ? [toSixtyFourths(from)] : [low, high];
};

/** Left offsets along a face: every step from its left end, and both ends of every clear stretch. */
export const leftsOn = (length: In, width: In, { clear }: Pick<Places, 'clear'>): In[] => {
  const last = length - width;
  if (last < 0) return [];
  const steps = Array.from({ length: Math.floor(last / MAP_STEP_IN + SAME) + 1 }, (_, i) => i * MAP_STEP_IN);
  return [...new Set([...steps, ...clear.flatMap(inside)])].filter((x) => x <= last + SAME).sort((a, b) => a - b);
};

/** Old cabinets that stay where they are and would be covered. */
const covered = (job: Job, option: Option, panel: Enclosure): boolean =>
  job.enclosures.some((old) => {
    const becomes = option.replaces.find((r) => r.enclosure === old.id)?.becomes;
    if (becomes !== undefined && becomes !== 'subpanel' && becomes !== 'splice can') return false;
    if (old.on.wall !== panel.on.wall || old.on.face !== panel.on.face) return false;
    const [a, b] = [enclosureOnFace(old), enclosureOnFace(panel)];
    return a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;
  });

const onFace = (job: Job, option: Option, face: WallFace): Position[] => {
  const places = placesOn(job, option, face);
  const { size } = option.enclosure;
  return leftsOn(face.length, size.width, places).map((left): Position => {
    const on: OnWall = { ...option.enclosure.on, wall: face.wall, face: face.face, left };
    if (covered(job, option, { ...option.enclosure, on })) return { on, why: say.oldPanelStays };
    const clear = places.clear.some(([from, to]) => left >= from - SAME && left <= to + SAME);
    const why = places.barred.find((b) => left >= b.from - SAME && left <= b.to + SAME)?.why ?? say.noRoom;
    return { on, why: clear ? null : why };
  });
};

/** Every place of the map at the option's own height: by wall face, from left to right. */
export const positionsOf = (job: Job, option: Option): Position[] =>
  wallFaces(job.site, 'after').flatMap((face) => onFace(job, option, face));
