import { pointToSegment } from '../geometry/polygon';
import { turnAbout } from '../geometry/vector';
import type { Obstacle, Option, Site } from '../job/schema';
import { roomOutline } from '../job/site';
import type { Id, In, Pt, Pt3 } from '../units/types';
import { type Dash, type Stroke, stroke } from './items';
import { at, bar, EMPTY, joined, pointIn, prism, type Shape } from './solidShapes';
import type { Body, ModelName, Place, Solid, When } from './solids';
import { CUT_IN, outlineAt, type Stand, stands } from './things';
import { changeDash } from './walls';

/** Which model a kind of thing is drawn with; the rest are plain blocks, pipes and beams. */
const MODEL_OF: Readonly<Record<string, ModelName>> = {
  boiler: 'boiler',
  dryer: 'dryer',
  freezer: 'freezer',
  furnace: 'furnace',
  goods: 'goods',
  radiator: 'radiator',
  shelf: 'shelf',
  sink: 'sink',
  stair: 'stair',
  sump: 'sump',
  tank: 'tank',
  washer: 'washer',
  'water heater': 'water-heater',
  workbench: 'workbench',
};
const ROUND_KINDS: readonly string[] = ['drain', 'flue', 'gas pipe', 'pipe', 'water pipe'];
/** A thing overhead that is thinner than this hides nothing and is drawn as it is. */
const THIN_IN = 5;

const middleOf = (a: Pt, b: Pt): Pt => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
const fromWall = (site: Site, p: Pt): In => {
  const ring = roomOutline(site);
  return Math.min(...ring.map((a, i) => pointToSegment(p, a, ring[(i + 1) % ring.length]!)));
};

/**
 * Where a thing stands, seen from its front. The survey has a thing's depth but not which end of it is the front: the
 * back is taken to be the end nearer to a wall.
 */
export const placeOf = (site: Site, o: Obstacle, outline: readonly Pt[]): Place => {
  const [a, b, c, d] = outline as [Pt, Pt, Pt, Pt];
  const right = turnAbout([1, 0], [0, 0], o.turn);
  const backward = fromWall(site, middleOf(a, b)) < fromWall(site, middleOf(c, d)) - 1 / 64;
  return backward
    ? { corner: at(c, o.bottom), right: [-right[0] + 0, -right[1] + 0], size: o.size }
    : { corner: at(a, o.bottom), right, size: o.size };
};

/** A stair runs the long way of its block. Which end is up is not in the survey: it rises to the right, or to the back. */
const stairPlace = (o: Obstacle, outline: readonly Pt[]): Place => {
  const [a, b] = outline as [Pt, Pt, Pt, Pt];
  const right = turnAbout([1, 0], [0, 0], o.turn);
  if (o.size.width >= o.size.depth) return { corner: at(a, o.bottom), right, size: o.size };
  const { width, depth, height } = o.size;
  return {
    corner: at(b, o.bottom),
    right: [-right[1] + 0, right[0]],
    size: { width: depth, depth: width, height },
  };
};

/** The middle of the ends of a block along its longest side: where a pipe runs. */
const pipeEnds = (place: Place): readonly [Pt3, Pt3, In] => {
  const { width, depth, height } = place.size;
  if (height >= width && height >= depth)
    return [pointIn(place, 0.5, 0.5, 0), pointIn(place, 0.5, 0.5, 1), Math.min(width, depth) / 2];
  return width >= depth
    ? [pointIn(place, 0, 0.5, 0.5), pointIn(place, 1, 0.5, 0.5), Math.min(height, depth) / 2]
    : [pointIn(place, 0.5, 0, 0.5), pointIn(place, 0.5, 1, 0.5), Math.min(height, width) / 2];
};

/** Hangs over the room and would hide it: from above a dashed outline, from below a body. */
const hidesRoom = ({ bottom, size }: Obstacle): boolean =>
  bottom >= CUT_IN && Math.min(size.width, size.depth) >= THIN_IN && Math.max(size.width, size.depth) > CUT_IN;

const strokesOf = (o: Obstacle, dash: Dash | null): { readonly outline: Stroke; readonly detail: Stroke } => ({
  outline: stroke(o.stored ? 'thin' : 'object', 'ink-2', dash),
  detail: stroke('thin', 'ink-3', dash),
});

const block = (o: Obstacle, outline: readonly Pt[], dash: Dash | null): Shape => {
  const toZ = o.bottom + o.size.height;
  const solid = { surface: 'thing', stroke: strokesOf(o, dash).outline } as const;
  if (!hidesRoom(o)) return prism(outline, o.bottom, toZ, solid);
  const above: When = { at: at(outline[0]!, o.bottom), toward: [0, 0, 1], but: null };
  const below: When = { ...above, toward: [0, 0, -1] };
  const dashed = prism(outline, o.bottom, toZ, {
    surface: 'thing',
    stroke: stroke('object', 'ink-3', 'overhead'),
    when: above,
  });
  return joined([{ ...dashed, faces: [] }, prism(outline, o.bottom, toZ, { ...solid, when: below })]);
};

/** What is taken away, or stood here before it was moved: its outline only. */
const ghost = (id: Id, outline: readonly Pt[], fromZ: In, toZ: In): Solid => ({
  id,
  kind: 'thing',
  faces: [],
  edges: prism(outline, fromZ, toZ, { surface: 'thing', stroke: stroke('old', 'old', 'away') }).edges,
  body: null,
});

const standing = (site: Site, { obstacle: o, outline }: Stand, faint: ReadonlySet<Id>): Solid => {
  const dash = changeDash(o.exists);
  if (dash === 'away') return ghost(o.id, outline, o.bottom, o.bottom + o.size.height);
  const model = Object.hasOwn(MODEL_OF, o.kind) ? MODEL_OF[o.kind]! : null;
  if (model !== null && !hidesRoom(o)) {
    const place = model === 'stair' ? stairPlace(o, outline) : placeOf(site, o, outline);
    const body: Body = {
      model,
      place,
      surface: o.stored ? 'goods' : 'thing',
      ...strokesOf(o, dash),
      faint: faint.has(o.id),
    };
    return { id: o.id, kind: 'thing', ...EMPTY, body };
  }
  if (ROUND_KINDS.includes(o.kind)) {
    const [from, to, radius] = pipeEnds(placeOf(site, o, outline));
    return {
      id: o.id,
      kind: 'thing',
      ...bar(from, to, radius, { surface: 'thing', stroke: strokesOf(o, dash).outline }),
      body: null,
    };
  }
  return { id: o.id, kind: 'thing', ...block(o, outline, dash), body: null };
};

/** Things in the room; those in `faint` are seen through, because something must be seen behind their skin. */
export const solidThings = (site: Site, moves: Option['moves'], faint: ReadonlySet<Id>): Solid[] => [
  ...moves.flatMap((m) => {
    const o = site.obstacles.find((x) => x.id === m.obstacle);
    return o ? [ghost(`${o.id} before`, outlineAt(o, o.corner), o.bottom, o.bottom + o.size.height)] : [];
  }),
  ...stands(site, moves).map((stand) => standing(site, stand, faint)),
];
