import { dot, subtract } from '../geometry/vector';
import type { Build, Site } from '../job/schema';
import { type WallFace, wallFaces } from '../job/site';
import { compareText } from '../units/order';
import type { Id, In, Pt, U } from '../units/types';
import { isKnown, knownOr } from '../units/types';
import { type Frame, roundFrom, snap } from './networkFrame';
import { EDGE, type EdgeClass } from './types';

/** Studs at 16 in where they were not measured. Common practice, no source. */
const STUD_SPACING_IN = 16;

/**
 * A wall face in the search frame. Its own coordinates are the chainage from its left end and the height, 1/64 in.
 * Chainages on a sloped wall are measured from its middle and rounded, so that a mirror image has the same ones and
 * an edge is the difference of two rounded chainages.
 */
export interface NetFace {
  readonly id: Id;
  readonly face: WallFace;
  readonly from: Pt;
  readonly to: Pt;
  /** Axis that stays constant along the face (0: x), null on a sloped wall. */
  readonly fixed: 0 | 1 | null;
  readonly end: number;
  readonly up: EdgeClass;
  readonly across: EdgeClass;
  readonly studs64: number;
  /** Top of the wall, or null where it reaches the framing. */
  readonly top: number | null;
}

interface Way {
  readonly up: EdgeClass;
  readonly across: EdgeClass;
  readonly studs: boolean;
}
const SLEEVE: Way = { up: EDGE.sleeve, across: EDGE.sleeve, studs: false };
/** How cable goes along a wall as it is built today: in a sleeve on a bare one (334.15(C)), in the bays of open studs. */
const WAYS: Readonly<Record<U<Build>, Way>> = {
  poured: SLEEVE,
  block: SLEEVE,
  furred: SLEEVE,
  'plywood board': { up: EDGE.board, across: EDGE.board, studs: false },
  'open studs': { up: EDGE.studUp, across: EDGE.studAcross, studs: true },
  'finished studs': { up: EDGE.closedWallUp, across: EDGE.closedWallAcross, studs: true },
  unknown: { up: EDGE.unknownWallUp, across: EDGE.unknownWallAcross, studs: true },
};

const local = (frame: Frame, face: WallFace, build: U<Build>): NetFace => {
  const from = snap(frame, face.from);
  const to = snap(frame, face.to);
  const fixed = from[0] === to[0] ? 0 : from[1] === to[1] ? 1 : null;
  const long = fixed === null ? Math.hypot(to[0] - from[0], to[1] - from[1]) : 0;
  const end =
    fixed === 0 ? Math.abs(to[1] - from[1]) : fixed === 1 ? Math.abs(to[0] - from[0]) : 2 * roundFrom(long / 2, -1);
  const way = WAYS[build];
  const studSpacing = isKnown(face.studSpacing) && face.studSpacing !== null ? face.studSpacing : STUD_SPACING_IN;
  return {
    id: face.id,
    face,
    from,
    to,
    fixed,
    end,
    up: way.up,
    across: way.across,
    studs64: way.studs ? Math.max(64, Math.round(studSpacing * 64)) : 0,
    top: face.partition && isKnown(face.height) ? Math.round(face.height * 64) : null,
  };
};

/**
 * Every face cable may lie on: those that stand today as they are built today, and both sides of partitions that come
 * with the finishing, wired while their studs are open.
 */
export const readFaces = (site: Site, frame: Frame, without: ReadonlySet<Id>): NetFace[] => {
  const now = wallFaces(site, 'now');
  const standing = new Set(now.map((f) => f.id));
  const later = wallFaces(site, 'after').filter((f) => !standing.has(f.id));
  const openStuds = (build: U<Build>): U<Build> => (build === 'finished studs' ? 'open studs' : build);
  return [...now.map((f) => local(frame, f, f.build)), ...later.map((f) => local(frame, f, openStuds(f.build)))]
    .filter((f) => f.end > 0 && !(f.face.partition && without.has(f.face.wall)))
    .sort((a, b) => compareText(a.id, b.id));
};

/** Chainage of a point of the frame projected on a face, whole 1/64 in; may lie beyond the ends. */
export const chainOf = (face: NetFace, p: Pt): number => {
  if (face.fixed !== null) {
    const moving = face.fixed === 0 ? 1 : 0;
    return Math.round(
      Math.abs(face.to[moving] - face.from[moving]) === 0
        ? 0
        : (p[moving] - face.from[moving]) * Math.sign(face.to[moving] - face.from[moving]),
    );
  }
  const along = subtract(face.to, face.from);
  const long = Math.hypot(along[0], along[1]);
  const fromMiddle = dot(subtract(p, face.from), along) / long - long / 2;
  return roundFrom(fromMiddle, 0) + face.end / 2;
};

/** Distance of a point in front of a face (negative behind it), 1/64 in. */
export const outOf = (face: NetFace, p: Pt): number => {
  const along = subtract(face.to, face.from);
  const long = Math.hypot(along[0], along[1]);
  const off = subtract(p, face.from);
  return (off[0] * along[1] - off[1] * along[0]) / long;
};

/** Frame point at a chainage. */
export const onFace = (face: NetFace, chain: number): Pt => {
  const t = chain / face.end;
  return [face.from[0] + (face.to[0] - face.from[0]) * t, face.from[1] + (face.to[1] - face.from[1]) * t];
};

/** Chainages, 1/64 in, of something `width` wide whose left edge is `left` on the named face, seen from this face. */
export const spanOnFace = (face: NetFace, sameFace: boolean, left: In, width: In): [number, number] => {
  const from = Math.round(left * 64);
  const to = Math.round((left + width) * 64);
  return sameFace ? [from, to] : [face.end - to, face.end - from];
};

export const thicknessOf = (face: NetFace, otherwise: In): number =>
  Math.round(knownOr(face.face.thickness, otherwise) * 64);
