import { bounds } from '../../geometry/polygon';
import type { Area, CableGroup, Enclosure, Framing, Job, OnWall, Opening, Partition, Site } from '../../job/schema';
import { boxOutline, enclosureOnFace, faceOf, pointOnFace, wallFaces } from '../../job/site';
import type { In, Pt, Pt3 } from '../../units/types';
import { freshId } from './ref';

/** Records as they are when first drawn: what was clicked or typed, ordinary sizes, and for the rest 'unknown'. */

const BOTH = { now: true, after: true } as const;
const UNKNOWN_FACE = { build: 'unknown', insulated: 'unknown' } as const;
const UNKNOWN_FACES = { now: UNKNOWN_FACE, after: UNKNOWN_FACE } as const;

/** Ordinary openings, width, height and sill. Common sizes, no source. */
const OPENINGS = {
  door: { width: 32, height: 80, bottom: 0 },
  window: { width: 32, height: 20, bottom: 64 },
  'cased opening': { width: 36, height: 80, bottom: 0 },
} as const;
export type OpeningKind = keyof typeof OPENINGS;
export const OPENING_KINDS = Object.keys(OPENINGS) as OpeningKind[];
export const openingWidth = (kind: OpeningKind): In => OPENINGS[kind].width;

export const newOpening = (job: Job, kind: OpeningKind, on: Pick<OnWall, 'wall' | 'face' | 'left'>): Opening => {
  const { width, height, bottom } = OPENINGS[kind];
  const swing = kind === 'door' ? 'unknown' : null;
  return {
    id: freshId(job, '/site/openings', kind),
    kind,
    exists: BOTH,
    on: { ...on, bottom },
    width,
    height,
    sizes: 'unknown',
    hinge: swing,
    swings: swing,
  };
};

/** An ordinary small panel hung at eye level. Common sizes, no source. */
const CAN = { width: 14.5, depth: 3.75, height: 24 } as const;
const CAN_BOTTOM = 48;
export const CAN_WIDTH = CAN.width;

export const newEnclosure = (job: Job, on: Pick<OnWall, 'wall' | 'face' | 'left'>): Enclosure => ({
  id: freshId(job, '/enclosures', 'old'),
  on: { ...on, bottom: CAN_BOTTOM },
  size: CAN,
  mount: 'surface',
  upright: true,
  mainAt: 'top',
  mainAmps: 'unknown',
  role: 'unknown',
  bonded: 'unknown',
  electrodeLandsHere: 'unknown',
  busAmps: 'unknown',
  spaces: 'unknown',
  knockouts: 'unknown',
  neutralTerminals: 'unknown',
  groundTerminals: 'unknown',
  lugs: 'unknown',
  topHandle: 'unknown',
  doorHinge: 'unknown',
  weatherproof: 'unknown',
  finish: '',
  trim: '',
  attached: [],
});

export type Entry = CableGroup['entry'];
/** Where cables of an entry leave a can: in the middle of that side, on the wall. Undefined while its wall is gone. */
export const entryPoint = (job: Job, can: Enclosure, entry: Entry): Pt3 | undefined => {
  const face = faceOf(wallFaces(job.site, 'now'), can.on) ?? faceOf(wallFaces(job.site, 'after'), can.on);
  if (!face) return undefined;
  const { left, right, bottom, top } = enclosureOnFace(can);
  const along = entry === 'left' ? left : entry === 'right' ? right : (left + right) / 2;
  const z = entry === 'top' ? top : entry === 'bottom' ? bottom : (bottom + top) / 2;
  return [...pointOnFace(face, along), z];
};

export const newGroup = (job: Job, enclosure: string, path: readonly Pt3[], entry: Entry): CableGroup => ({
  id: freshId(job, '/cableGroups', 'cables'),
  enclosure,
  path: [...path],
  reachable: [],
  pivot: 'unknown',
  drawsBack: 'unknown',
  entry,
  tails: 'unknown',
});

export const newPartition = (job: Job, from: Pt, to: Pt): Partition => ({
  id: freshId(job, '/site/partitions', 'partition'),
  from,
  to,
  thickness: 'unknown',
  height: 'unknown',
  exists: BOTH,
  front: UNKNOWN_FACES,
  back: UNKNOWN_FACES,
  studSpacing: 'unknown',
});

const UNKNOWN_STATE = { use: 'unknown', cover: 'unknown', ceiling: 'unknown', floorRise: 0 } as const;
export const newArea = (job: Job, outline: readonly Pt[]): Area => ({
  id: freshId(job, '/site/areas', 'area'),
  outline: [...outline],
  state: { now: UNKNOWN_STATE, after: UNKNOWN_STATE },
});

/** Joists of the whole room where there is no outline. */
export const newFraming = (job: Job, outline: readonly Pt[] | null): Framing => ({
  id: freshId(job, '/site/framing', 'joists'),
  outline: outline && [...outline],
  direction: 'unknown',
  firstJoist: 'unknown',
  spacing: 'unknown',
  depth: 'unknown',
  kind: 'unknown',
  underside: 'unknown',
});

export const newBay = (job: Job, outline: readonly Pt[]): Site['bays'][number] => ({
  id: freshId(job, '/site/bays', 'bay'),
  outline: [...outline],
  state: 'panned return',
});

/** A sleeve through the wall near a point, an ordinary conduit size. */
export const newSleeve = (job: Job, from: Pt3, to: Pt3): Site['sleeves'][number] => ({
  id: freshId(job, '/site/sleeves', 'sleeve'),
  from,
  to,
  diameter: 1,
  metal: true,
});

const STEP_IN = 6;
/** A corner where a thing of that size stands free in the room: along the wall first. For those who place by typing. */
export const freePlace = (job: Job, width: In, depth: In): Pt => {
  const box = bounds(job.site.outline.map((c) => c.at));
  const taken = job.site.obstacles.map((o) => bounds(boxOutline(o.corner, o.size.width, o.size.depth, o.turn)));
  for (let y = box.minY; y + depth <= box.maxY; y += STEP_IN)
    for (let x = box.minX; x + width <= box.maxX; x += STEP_IN)
      if (taken.every((t) => x >= t.maxX || x + width <= t.minX || y >= t.maxY || y + depth <= t.minY)) return [x, y];
  return [box.minX, box.minY];
};
