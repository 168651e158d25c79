import { type SpaceAnswer, searchSpace } from '../../calculations/spaceSearch';
import type { Intruder, SpaceBox, SpacePanel, SpaceVerdict } from '../../calculations/spaceZone';
import type { Remedy } from '../../facts/ruling';
import { SAME_PLACE_IN } from '../../geometry/polygon';
import { turnAbout } from '../../geometry/vector';
import type { Area, Enclosure, Obstacle, Site } from '../../job/schema';
import { enclosureOnFace, faceOf, framingAt, type WallFace, wallFaces } from '../../job/site';
import { EXISTING_DWELLING, EXTREMES } from '../../standards/editionsPlace';
import { formatFeetInches } from '../../units/length';
import { compareText } from '../../units/order';
import { type Id, type In, isKnown, type Pt, type Pt3, type U } from '../../units/types';
import { placeWords as say } from '../../words/en/rulesPlace';
import { panelById, sitePath } from '../reading';
import { cannotBeTold, type FactsInYear, type Says, stops } from '../rule';
import { blockersAround, inFront, inPlan, roomAt, structureOver } from './surroundings';

/** A panel where it hangs after the finishing. */
export interface Standing {
  readonly panel: Enclosure;
  readonly path: (key: string) => string;
  readonly face: WallFace;
  readonly room: Area | undefined;
  /** A platform or ledge before the panel lifts whoever stands there, in. */
  readonly floor: In;
  /** At the least and at the most of what was not measured: alike where everything that matters was. */
  readonly answers: readonly [SpaceAnswer, SpaceAnswer];
}

const has = (amendment: unknown): boolean => amendment !== 'no' && amendment !== false;

type End = 'least' | 'most';
const LEAST_IN = 1;

/** A thing whose sizes nobody measured, larger or smaller to every side than the ordinary one that stands for it. */
const resized = (o: Obstacle, end: End): Obstacle => {
  if (isKnown(o.sizes)) return o;
  const by = end === 'least' ? EXTREMES.thing : -EXTREMES.thing;
  const across = (length: In): In => Math.max(LEAST_IN, length + by + by);
  const { width, depth, height } = o.size;
  const size = { width: across(width), depth: across(depth), height: Math.max(LEAST_IN, height + by) };
  const inset: Pt = [o.corner[0] + (width - size.width) / 2, o.corner[1] + (depth - size.depth) / 2];
  return { ...o, size, corner: turnAbout(inset, o.corner, o.turn) };
};

/** The site with every length nobody measured at one end of what it may be. */
export const settled = (site: Site, end: End): Site => {
  const at = (value: U<In>, of: { readonly least: In; readonly most: In }): In => (isKnown(value) ? value : of[end]);
  return {
    ...site,
    partitions: site.partitions.map((p) => ({
      ...p,
      thickness: at(p.thickness, EXTREMES.thickness),
      height: at(p.height, EXTREMES.height),
    })),
    areas: site.areas.map((a) => ({
      ...a,
      state: { ...a.state, after: { ...a.state.after, ceiling: at(a.state.after.ceiling, EXTREMES.ceiling) } },
    })),
    framing: site.framing.map((f) => ({ ...f, underside: at(f.underside, EXTREMES.underside) })),
    obstacles: site.obstacles.map((o) => resized(o, end)),
  };
};

export const spacePanel = (panel: Enclosure, floor: In): SpacePanel => {
  const on = enclosureOnFace(panel);
  return { ...on, bottom: on.bottom - floor, top: on.top - floor, depth: panel.size.depth };
};

const search = (facts: FactsInYear, panel: Enclosure, site: Site, floor: In): SpaceAnswer | undefined => {
  const face = faceOf(wallFaces(site, 'after'), panel.on);
  if (!face) return undefined;
  const structure = structureOver(site, face, panel);
  return searchSpace({
    panel: spacePanel(panel, floor),
    faceLength: face.length,
    blockers: blockersAround(facts, site, face, floor),
    structureZ: isKnown(structure) ? structure - floor : structure,
    hinge: panel.doorHinge,
    existingDwelling:
      EXISTING_DWELLING[facts.edition] &&
      (facts.option.kind === 'in place' || has(facts.job.code.amendments.headroomInNewSpot)),
    amps: panel.busAmps,
  });
};

const kept = new WeakMap<FactsInYear, Map<Id, Standing | null>>();

/** The panel's place, searched once for all the rules that look at it; null where its wall does not stand. */
export const standing = (facts: FactsInYear, subject: Id): Standing | null => {
  const known = kept.get(facts) ?? new Map<Id, Standing | null>();
  kept.set(facts, known);
  const before = known.get(subject);
  if (before !== undefined) return before;
  const { panel, path } = panelById(facts, subject);
  const { site } = facts.job;
  const face = faceOf(wallFaces(site, 'after'), panel.on);
  const room = face && roomAt(site, face, panel);
  const floor = room?.state.after.floorRise ?? 0;
  const [low, high] = (['least', 'most'] as const).map((end) => search(facts, panel, settled(site, end), floor));
  const found = face && low && high ? { panel, path, face, room, floor, answers: [low, high] as const } : null;
  known.set(subject, found);
  return found;
};

/** Every length of the site that a place rule may wait for. */
const unmeasured = ({ job }: FactsInYear, place: Standing): string[] => {
  const { site } = job;
  const framing = framingAt(site, inFront(place.face, place.panel));
  return [
    ...site.partitions.flatMap((p) =>
      (['thickness', 'height'] as const).flatMap((key) =>
        p.exists.after && !isKnown(p[key]) ? [sitePath(job, 'partitions', p.id, key)] : [],
      ),
    ),
    ...site.obstacles.flatMap((o) =>
      o.exists.after && !isKnown(o.sizes) ? [sitePath(job, 'obstacles', o.id, 'sizes')] : [],
    ),
    ...site.areas.flatMap((a) =>
      isKnown(a.state.after.ceiling) ? [] : [sitePath(job, 'areas', a.id, 'state', 'after', 'ceiling')],
    ),
    ...(framing
      ? isKnown(framing.underside)
        ? []
        : [sitePath(job, 'framing', framing.id, 'underside')]
      : ['/site/framing']),
  ];
};

/** What one part of the search says at both ends: the worse of two alike, or that it hangs on what was not measured. */
export const part = <K extends 'depth' | 'width' | 'height' | 'door' | 'above' | 'below' | 'body'>(
  place: Standing,
  key: K,
): SpaceAnswer[K] => {
  const [low, high] = place.answers;
  if (low[key].outcome !== high[key].outcome) return { ...low[key], outcome: 'cannot be told' };
  const measured = (v: SpaceVerdict) => v.measuredIn ?? Number.POSITIVE_INFINITY;
  return measured(low[key]) <= measured(high[key]) ? low[key] : high[key];
};

/** Runs `then` where the wall stands, and says so where it does not. */
export const atPlace = (facts: FactsInYear, subject: Id, then: (place: Standing) => Says): Says => {
  const place = standing(facts, subject);
  return place ? then(place) : stops(say.noWall(), { remedies: [{ say: say.otherPlace(), cents: null, work: [] }] });
};

export const waitsForMeasure = (facts: FactsInYear, place: Standing, more: readonly string[] = []): Says =>
  cannotBeTold(say.unmeasured(), say.unmeasuredLook(), [...unmeasured(facts, place), ...more]);

/** Kinds of what is in the way, in words. */
export const namesOf = ({ job }: FactsInYear, intruders: readonly Intruder[]): string => {
  const { obstacles, areas } = job.site;
  const names = intruders.map(
    ({ id }) =>
      obstacles.find((o) => o.id === id)?.kind ?? (areas.some((a) => a.id === id) ? say.aCeiling() : say.aWall()),
  );
  return [...new Set(names)].sort(compareText).join(', ');
};

/** A thing that can be moved is moved at the price the survey gave; else the panel goes elsewhere. */
export const remediesFor = ({ job }: FactsInYear, intruders: readonly Intruder[]): Remedy[] => [
  ...job.site.obstacles
    .filter((o) => o.moveCents !== null && intruders.some((i) => i.id === o.id))
    .sort((a, b) => compareText(a.id, b.id))
    .map((o) => ({ say: say.move({ thing: o.kind }), cents: o.moveCents, work: [] })),
  { say: say.shift(), cents: null, work: [] },
];

/** The four corners of a box in plan at one of its levels. */
export const shapeOf = (place: Standing, box: SpaceBox, at: 'bottom' | 'top' = 'bottom'): Pt3[] => {
  const [left, right] = box.along.map((x) => (Number.isFinite(x) ? x : 0)) as [number, number];
  const [near, far] = box.out;
  const z = (at === 'bottom' ? box.z[0] : box.z[1]) + place.floor;
  return (
    [
      [left, near],
      [right, near],
      [right, far],
      [left, far],
    ] as const
  ).map((p): Pt3 => {
    const [x, y] = inPlan(place.face, p);
    return [x, y, z];
  });
};

const SIXTEENTHS = 16;
/** What is clear is said rounded down, so that what is short by a hair is not said to be enough. */
const clear = (length: In): string => formatFeetInches(Math.floor(length * SIXTEENTHS + SAME_PLACE_IN) / SIXTEENTHS);
export const inFeet = (length: In | null): string => clear(length ?? 0);
export const orOpen = (length: In | null): string | null => (length === null ? null : clear(length));

/** JSON pointer of a wall face's build in one state of the house. */
export const buildPath = ({ job }: FactsInYear, { face }: Pick<Standing, 'face'>, state: 'now' | 'after'): string =>
  face.partition
    ? sitePath(job, 'partitions', face.wall, face.face, state, 'build')
    : sitePath(job, 'outline', face.wall, 'face', state, 'build');
