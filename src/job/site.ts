import { insideOrOn } from '../geometry/polygon';
import { add, distance, rightOf, scale, subtract, turnAbout, unit } from '../geometry/vector';
import { compareText } from '../units/order';
import type { Id, In, Pt, Pt3, U } from '../units/types';
import { knownOr } from '../units/types';
import type { Area, Build, Enclosure, Framing, Job, Obstacle, Option, Site } from './schema';

/** The site read as geometry: wall faces, areas, framing and solid things, in either state of the house. */

export type State = 'now' | 'after';

/** One side of a wall, seen by a person facing it: `from` is its left end, `into` points at that person. */
export interface WallFace {
  readonly id: Id;
  readonly wall: Id;
  readonly face: 'front' | 'back';
  readonly from: Pt;
  readonly to: Pt;
  readonly length: In;
  readonly along: Pt;
  readonly into: Pt;
  readonly build: U<Build>;
  readonly insulated: U<boolean>;
  readonly studSpacing: U<In | null>;
  readonly thickness: U<In>;
  readonly partition: boolean;
  /** Top of a partition; outline walls reach the framing. */
  readonly height: U<In>;
}

/** A 2×4 wall with drywall on both sides: where a partition stands when its thickness was not measured. Common practice, no source. */
export const STUD_WALL_IN = 4.5;

const makeFace = (
  from: Pt,
  to: Pt,
  rest: Omit<WallFace, 'id' | 'from' | 'to' | 'length' | 'along' | 'into'>,
): WallFace => {
  const along = unit(subtract(to, from));
  return {
    id: `${rest.wall}:${rest.face}`,
    from,
    to,
    length: distance(from, to),
    along,
    into: rightOf(along),
    ...rest,
  };
};

/** Every face a thing can hang on: the room side of outline walls and both sides of partitions that stand in that state. */
export const wallFaces = (site: Site, state: State): WallFace[] => {
  const faces: WallFace[] = site.outline.map((corner, i) => {
    const next = site.outline[(i + 1) % site.outline.length]!;
    const { build, insulated } = corner.face[state];
    return makeFace(corner.at, next.at, {
      wall: corner.id,
      face: 'front',
      build,
      insulated,
      studSpacing: corner.studSpacing,
      thickness: corner.thickness,
      partition: false,
      height: 'unknown',
    });
  });
  for (const p of site.partitions) {
    if (!p.exists[state]) continue;
    const right = scale(rightOf(unit(subtract(p.to, p.from))), knownOr(p.thickness, STUD_WALL_IN) / 2);
    const common = {
      wall: p.id,
      studSpacing: p.studSpacing,
      thickness: p.thickness,
      partition: true,
      height: p.height,
    };
    faces.push(makeFace(add(p.from, right), add(p.to, right), { ...common, face: 'front', ...p.front[state] }));
    faces.push(makeFace(subtract(p.to, right), subtract(p.from, right), { ...common, face: 'back', ...p.back[state] }));
  }
  return faces.sort((a, b) => compareText(a.id, b.id));
};

export const faceOf = (
  faces: readonly WallFace[],
  on: { readonly wall: Id; readonly face: string },
): WallFace | undefined => faces.find((f) => f.wall === on.wall && f.face === on.face);

/** Plan point at a chainage from a face's left end, `out` inches in front of it. */
export const pointOnFace = (face: WallFace, chainage: In, out: In = 0): Pt =>
  add(face.from, add(scale(face.along, chainage), scale(face.into, out)));

/** A thing hung on a face, in the face's own coordinates. */
export interface OnFace {
  readonly left: In;
  readonly right: In;
  readonly bottom: In;
  readonly top: In;
  readonly out: In;
}
/** How far a panel stands out of its face: a recessed one only by its trim, taken as nothing. */
export const enclosureOnFace = (e: Pick<Enclosure, 'on' | 'size' | 'mount'>): OnFace => ({
  left: e.on.left,
  right: e.on.left + e.size.width,
  bottom: e.on.bottom,
  top: e.on.bottom + e.size.height,
  out: e.mount === 'surface' ? e.size.depth : 0,
});

/** A solid thing in the room: plan outline and height range. */
export interface Solid {
  readonly id: Id;
  readonly kind: string;
  readonly outline: readonly Pt[];
  readonly fromZ: In;
  readonly toZ: In;
  readonly blocksCable: boolean;
  readonly blocksSpace: boolean;
  readonly foreign: boolean;
  readonly clearance: In;
  readonly stored: boolean;
  readonly moveCents: number | null;
}

/** Four corners of a box of plan size `width` (x) × `depth` (y), lowest corner at `corner`, turned about it. */
export const boxOutline = (corner: Pt, width: In, depth: In, turn: number): Pt[] =>
  (
    [
      corner,
      [corner[0] + width, corner[1]],
      [corner[0] + width, corner[1] + depth],
      [corner[0], corner[1] + depth],
    ] as const
  ).map((p) => turnAbout(p, corner, turn));

const solidOf = (o: Obstacle, corner: Pt): Solid => ({
  id: o.id,
  kind: o.kind,
  outline: boxOutline(corner, o.size.width, o.size.depth, o.turn),
  fromZ: o.bottom,
  toZ: o.bottom + o.size.height,
  blocksCable: o.blocksCable,
  blocksSpace: o.blocksSpace,
  foreign: o.foreign,
  clearance: o.clearance,
  stored: o.stored,
  moveCents: o.moveCents,
});

/** Obstacles that stand in a state of the house, with an option's moves carried out; sorted by id. */
export const solids = (site: Site, state: State, moves: Option['moves'] = []): Solid[] =>
  site.obstacles
    .filter((o) => o.exists[state])
    .flatMap((o) => {
      const to = moves.find((m) => m.obstacle === o.id)?.to ?? o.corner;
      return to === 'away' ? [] : [solidOf(o, to)];
    })
    .sort((a, b) => compareText(a.id, b.id));

/** The area a point lies in; where areas overlap the smallest id wins, so that no list order matters. */
export const areaAt = (site: Site, p: Pt): Area | undefined =>
  site.areas.filter((a) => insideOrOn(p, a.outline)).sort((a, b) => compareText(a.id, b.id))[0];

/** The framing over a point: a region with its own outline before one that covers the whole room. */
export const framingAt = (site: Site, p: Pt): Framing | undefined => {
  const over = site.framing.filter((f) => f.outline === null || insideOrOn(p, f.outline));
  return over.sort((a, b) => Number(a.outline === null) - Number(b.outline === null) || compareText(a.id, b.id))[0];
};

export const roomOutline = (site: Site): Pt[] => site.outline.map((c) => c.at);

/** Center of an enclosure's front in plan and its middle height; undefined when its wall does not exist. */
export const enclosureCenter = (site: Site, state: State, e: Enclosure): Pt3 | undefined => {
  const face = faceOf(wallFaces(site, state), e.on);
  if (!face) return undefined;
  const box = enclosureOnFace(e);
  const [x, y] = pointOnFace(face, (box.left + box.right) / 2, 0);
  return [x, y, (box.bottom + box.top) / 2];
};

export const optionById = (job: Job, id: Id): Option | undefined => job.options.find((o) => o.id === id);

/** The group's path, pivot and tails as they hold for one home run. */
export const visibleRun = (job: Job, homeRunId: Id) => {
  const homeRun = job.homeRuns.find((h) => h.id === homeRunId);
  const group = homeRun && job.cableGroups.find((g) => g.id === homeRun.group);
  if (!homeRun || !group) return undefined;
  return {
    homeRun,
    group,
    path: homeRun.ownPath ?? group.path,
    pivot: homeRun.ownPivot ?? group.pivot,
    tails: homeRun.ownTails ?? group.tails,
  };
};
