import type { Option, Site } from '../job/schema';
import { faceOf, pointOnFace, type WallFace, wallFaces } from '../job/site';
import { placeKey } from '../plan/map/rank';
import { formatDollars } from '../units/money';
import type { In, Pt3 } from '../units/types';
import { stroke } from './items';
import { faceMapOf, type MapModel } from './mapModel';
import type { SolidName } from './solidNames';
import { EMPTY, edge, joined, type Shape } from './solidShapes';
import type { Edge, Solid, When } from './solids';

/** Before the wall, so that it does not lie in its face; ticks from the floor up, inches. */
const OUT = 0.75;
const LEAST = 5;
const MOST = 24;
const SHUT_HIGH = 4;
const SHUT_EVERY: In = 6;
const TRIANGLE = 7;

const at = (face: WallFace, x: In, z: In): Pt3 => [...pointOnFace(face, x, OUT), z];
/** Seen only from the room: a wall toward the eye is left out, and what stands on it with it. */
const seen = (face: WallFace): When => ({ at: at(face, 0, 0), toward: [...face.into, 0], but: null });

const faceLines = (face: WallFace, model: MapModel): Edge[] => {
  const { ticks, shut, passes } = faceMapOf(model, face);
  const when = seen(face);
  return [
    ...ticks
      .filter((t) => t.place.clear)
      .map((t) =>
        edge(
          at(face, t.x, 0),
          at(face, t.x, LEAST + (MOST - LEAST) * (t.share ?? 0)),
          t.within ? stroke('object', 'ink') : stroke('hair', 'ink-3'),
          when,
          t.within ? 0 : 3,
        ),
      ),
    ...shut.flatMap(({ along: [from, to] }): Edge[] => [
      edge(at(face, from, SHUT_HIGH), at(face, to, SHUT_HIGH), stroke('hair', 'ink-3'), when),
      ...Array.from({ length: Math.max(0, Math.floor((to - from) / SHUT_EVERY)) }, (_, i) =>
        edge(
          at(face, from + i * SHUT_EVERY, 0),
          at(face, Math.min(to, from + i * SHUT_EVERY + SHUT_HIGH), SHUT_HIGH),
          stroke('hair', 'ink-3'),
          when,
          SHUT_EVERY,
        ),
      ),
    ]),
    ...passes.map(({ x }) => edge(at(face, x, 0), at(face, x, MOST + 4), stroke('object', 'ink', 'limit'), when)),
  ];
};

/** The open triangle of the position offered, over its tick, and the place of the can on the wall in outline. */
const bestShape = (site: Site, option: Option, { best }: MapModel): Shape => {
  const face = best && faceOf(wallFaces(site, 'after'), best.on);
  if (!best || !face) return EMPTY;
  const { width, height } = option.enclosure.size;
  const [left, bottom, middle] = [best.on.left, best.on.bottom, best.on.left + width / 2];
  const when = seen(face);
  const ring = (points: readonly Pt3[], s: ReturnType<typeof stroke>): Edge[] =>
    points.map((p, i) => edge(p, points[(i + 1) % points.length]!, s, when));
  const tip = [
    at(face, middle, MOST + 1),
    at(face, middle + TRIANGLE * 0.6, MOST + 1 + TRIANGLE),
    at(face, middle - TRIANGLE * 0.6, MOST + 1 + TRIANGLE),
  ];
  const can = [
    at(face, left, bottom),
    at(face, left + width, bottom),
    at(face, left + width, bottom + height),
    at(face, left, bottom + height),
  ];
  return {
    faces: [],
    edges: [...ring(tip, stroke('profile', 'ink')), ...ring(can, stroke('object', 'ink', 'future'))],
  };
};

/** Where the new panel can go, along the foot of every wall: the same ticks as under the wall drawing. */
export const solidMap = (site: Site, option: Option, model: MapModel): Solid[] => {
  const lines = wallFaces(site, 'after').map((face): Shape => ({ faces: [], edges: faceLines(face, model) }));
  const best = bestShape(site, option, model);
  return [
    { id: 'where it can go', kind: 'places', ...joined(lines), body: null },
    ...(model.best ? [{ id: `best ${placeKey(model.best)}`, kind: 'places' as const, ...best, body: null }] : []),
  ];
};

/** The price of the position offered, lettered at its triangle. */
export const nameBest = (site: Site, option: Option, { best }: MapModel): SolidName[] => {
  const face = best && faceOf(wallFaces(site, 'after'), best.on);
  if (!best || !face) return [];
  const point = at(face, best.on.left + option.enclosure.size.width / 2, MOST + 1 + TRIANGLE);
  const text = formatDollars(Math.round((best.cents ?? 0) / 100) * 100);
  const line = { say: text, lettering: 'small', tone: 'ink' } as const;
  return [{ id: `best ${placeKey(best)}`, line, at: point, rank: 1, must: true, stands: 'beside' }];
};
