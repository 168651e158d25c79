import { bounds, insideOrOn, type Polygon, signedArea } from '../geometry/polygon';
import { dot, turnAbout } from '../geometry/vector';
import { acrossJoists } from '../job/framing';
import type { Framing, Site } from '../job/schema';
import { roomOutline } from '../job/site';
import { byId, compareText } from '../units/order';
import type { Id, In, Pt, U } from '../units/types';
import { isKnown } from '../units/types';
import { type Frame, makeFrame, snap } from './networkFrame';
import type { Assumed } from './types';

/** Where the survey is silent: 2×10 joists at 16 in under an 8 ft ceiling. Common practice, no source. */
const DEFAULT = { spacing: 16, depth: 9.25, underside: 96 } as const;

/** Members closer than this are not joists: the figure is taken as a slip. */
const CLOSEST_IN = 3;

/** One framing region in the search frame; figures in 1/64 in. */
export interface Region {
  readonly id: Id;
  /** null: the region under every point no other region covers. */
  readonly ring: readonly Pt[] | null;
  /** Frame axis along which joists follow each other (0 = x), or null where they run askew to the frame. */
  readonly across: 0 | 1 | null;
  readonly normal: Pt;
  /** `normal · p - first` is a whole number of spacings on every joist's centerline. */
  readonly first: number;
  readonly spacing: number;
  readonly under: number;
  readonly depth: number;
  /** Height at which cables run in the joists: their middle, where holes belong. */
  readonly joistZ: number;
  /** 'free': open webs, nothing is bored; 'never': LVL may not be bored without its maker's word. */
  readonly boring: 'bored' | 'free' | 'never';
}

/** Joists span the shorter side of the room unless the survey says otherwise. */
const likelyDirection = (outline: Polygon): number => {
  const box = bounds(outline);
  return box.maxX - box.minX >= box.maxY - box.minY ? 90 : 0;
};

const FALLBACK: Framing = {
  id: '',
  outline: null,
  direction: 'unknown',
  firstJoist: 'unknown',
  spacing: 'unknown',
  depth: 'unknown',
  kind: 'unknown',
  underside: 'unknown',
};

const boringOf = (kind: Framing['kind']): Region['boring'] =>
  kind === 'open-web truss' ? 'free' : kind === 'LVL' ? 'never' : 'bored';

export interface FramingRead {
  readonly frame: Frame;
  /** In order of rank: where several cover a point the first counts; the last covers everything. */
  readonly regions: readonly Region[];
  readonly assumed: readonly Assumed[];
}

/**
 * The framing in a frame of its own: the frame is turned to the largest region. What the survey does not know is taken
 * as likely and listed: direction across the shorter side, 16 in, a bay in the middle, 9-1/4 in deep, sawn, underside
 * at the highest ceiling measured.
 */
export const readFraming = (site: Site): FramingRead => {
  const outline = roomOutline(site);
  const assumed: Assumed[] = [];
  const list = byId(site.framing);
  const pathOf = (f: Framing, key: string) => `/site/framing/${Math.max(0, site.framing.indexOf(f))}/${key}`;
  const taken = <T extends string | number>(f: Framing, key: string, value: U<T>, otherwise: T): T => {
    if (isKnown(value)) return value;
    assumed.push({ path: pathOf(f, key), value: otherwise });
    return otherwise;
  };
  const named = list.filter((f) => f.outline !== null);
  const whole = list.find((f) => f.outline === null);
  const roomArea = Math.abs(signedArea(outline));
  const sizes = named.map((f) => ({ f, area: Math.abs(signedArea(f.outline!)) }));
  if (whole) sizes.push({ f: whole, area: roomArea - sizes.reduce((n, s) => n + s.area, 0) });
  sizes.sort((a, b) => b.area - a.area || compareText(a.f.id, b.f.id));
  const main = sizes[0]?.f ?? FALLBACK;

  const ceilings = site.areas.map((a) => a.state.now.ceiling).filter(isKnown);
  const highest = ceilings.length > 0 ? Math.max(...ceilings) : DEFAULT.underside;
  const likely = likelyDirection(outline);
  const frame = makeFrame(outline, isKnown(main.direction) ? main.direction : likely);

  const middleOf = (ring: readonly Pt[], normal: Pt): number => {
    const along = ring.map((p) => dot(normal, p));
    return (Math.min(...along) + Math.max(...along)) / 2;
  };
  const makeRegion = (f: Framing): Region => {
    const direction = taken(f, 'direction', f.direction, likely);
    const inJob = acrossJoists(direction);
    const normal = turnAbout(inJob, [0, 0], frame.turn);
    const across = Math.abs(normal[1]) < 1e-9 ? 0 : Math.abs(normal[0]) < 1e-9 ? 1 : null;
    const spacing = taken(
      f,
      'spacing',
      isKnown(f.spacing) && f.spacing < CLOSEST_IN ? 'unknown' : f.spacing,
      DEFAULT.spacing,
    );
    const middle = middleOf(f.outline ?? outline, inJob);
    // a first joist is counted across the joists: without their direction its figure says nothing
    const counted = isKnown(f.direction) ? f.firstJoist : 'unknown';
    const firstJoist: In = taken(f, 'firstJoist', counted, middle - spacing / 2);
    const under = Math.round(taken(f, 'underside', f.underside, highest) * 64);
    const depth = Math.max(1, Math.round(taken(f, 'depth', f.depth, DEFAULT.depth) * 64));
    return {
      id: f.id,
      ring: f.outline?.map((p) => snap(frame, p)) ?? null,
      across,
      normal,
      first: (firstJoist - dot(normal, frame.origin)) * 64,
      spacing: spacing * 64,
      under,
      depth,
      joistZ: under + Math.round(depth / 2),
      boring: boringOf(taken(f, 'kind', f.kind, 'sawn')),
    };
  };
  const regions = named.map(makeRegion);
  const rest = whole
    ? makeRegion(whole)
    : { ...(regions.find((r) => r.id === main.id) ?? makeRegion(main)), ring: null };
  return { frame, regions: [...regions, rest], assumed };
};

/** The framing over a point of the frame. */
export const regionAt = (regions: readonly Region[], p: Pt): number => {
  const found = regions.findIndex((r) => r.ring === null || insideOrOn(p, r.ring));
  return found < 0 ? regions.length - 1 : found;
};

const WHOLE = 1e-6;
/**
 * Joists crossed between two points, in halves: two for each centerline strictly between, one for a centerline on an
 * end (the path beyond it brings the other half), none on an end where the joist lies against a wall.
 */
export const joistHalves = (region: Region, a: Pt, b: Pt, aAtWall: boolean, bAtWall: boolean): number => {
  const from = (dot(region.normal, a) - region.first) / region.spacing;
  const to = (dot(region.normal, b) - region.first) / region.spacing;
  const low = Math.min(from, to);
  const high = Math.max(from, to);
  if (high - low < WHOLE) return 0;
  let halves = 2 * Math.max(0, Math.ceil(high - WHOLE) - Math.floor(low + WHOLE) - 1);
  if (!aAtWall && Math.abs(from - Math.round(from)) < WHOLE) halves += 1;
  if (!bAtWall && Math.abs(to - Math.round(to)) < WHOLE) halves += 1;
  return halves;
};

/** Middles of a region's bays between two frame coordinates, whole units; none where its joists run askew. */
export const bayMiddles = (region: Region, from: number, to: number): number[] => {
  if (region.across === null) return [];
  const sign = region.normal[region.across];
  const first = region.first * sign;
  const middles: number[] = [];
  const k0 = Math.ceil((from - first) / region.spacing - 0.5);
  for (let k = k0; middles.length < 2000; k++) {
    const middle = Math.round(first + (k + 0.5) * region.spacing);
    if (middle >= to) break;
    if (middle > from) middles.push(middle);
  }
  return middles;
};
