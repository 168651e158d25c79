import type { Place } from '../facts/result';
import type { Job, Option } from '../job/schema';
import { faceOf, pointOnFace, type WallFace, wallFaces } from '../job/site';
import { placeKey } from '../plan/map/rank';
import { formatDollars } from '../units/money';
import { type In, knownOr, type Pt } from '../units/types';
import { drawingWords as say } from '../words/en/drawings';
import type { PlacesByFace } from './drawPlaces';
import { type Label, type LabelPlace, type Line, path, ring, type Side, stroke } from './items';
import { circuitNumbers, faceMapOf, type MapModel, type Tick } from './mapModel';
import { quiet } from './names';
import { type Unrolled, wallOf } from './unroll';
import { OUTLINE_WALL_IN } from './walls';
import { box } from './wallThings';

/** The map under the wall drawing: ticks from the line at its bottom, hatches to its top, the triangles over it; inches. */
export const MAP_BAND = { from: -14, to: -40, over: -5 } as const;
/** Ticks of the plan: from the wall's outside, the shortest and the longest; inches. */
const PLAN = { off: 3, least: 4, most: 15, inside: 0.45 } as const;
/** Room outside the walls that the map takes in plan, its triangle not counted: dimensions stand beyond it. */
export const PLAN_MAP_IN = PLAN.off + PLAN.most + 2;
/** In plan the middle of the marks stands so far outside the wall. */
export const PLAN_MARK_IN = PLAN.off + (PLAN.least + PLAN.most) / 2;
/** In plan every second place, every fourth past 6 ft: more would run together. */
const PLAN_EVERY_IN = { within: 6, past: 12 } as const;
const TRIANGLE = 6;

const NO_PRICE = 0.12;
const high = ({ share }: Tick): number => (share === null ? NO_PRICE : 0.25 + 0.75 * share);
/** Within 6 ft strong and black, past it gray and thin: told by weight where color cannot be seen. */
const line = ({ within }: Tick) => (within ? stroke('new', 'ink') : stroke('thin', 'ink-3'));

const label = (id: string, text: string, at: Pt, sides: readonly Side[], must: boolean, within?: In): Label => ({
  item: 'label',
  id,
  layer: 'names',
  lines: [quiet(text, 'ink')],
  rank: 1,
  must,
  lead: null,
  ...(within === undefined ? {} : { within }),
  places: sides.map((side): LabelPlace => ({ at, side, gap: 4 })),
});

/** Thousands, as on the axis: $6.6k. */
const short = (cents: number): string => `$${(cents / 100_000).toFixed(1)}k`;

/** Pointing down on the line: filled where the panel hangs, open at the position offered. */
const triangle = (id: string, at: Pt, filled: boolean, size = TRIANGLE): Line =>
  ring(
    'dimensions',
    id,
    [[at[0] - size * 0.6, at[1] + size], [at[0] + size * 0.6, at[1] + size], at],
    stroke('profile', filled ? 'new' : 'ink'),
    filled ? 'new' : 'paper',
  );

/** What the open triangle says: what the best place costs more or less than the option as it hangs, else its price. */
const offer = (best: Place): string => formatDollars(Math.round((best.cents ?? 0) / 100) * 100);

/** Under each wall: a tick a place, as high as its price; hatched with the reason where the panel may not hang. */
export const drawWallMap = (
  job: Job,
  walls: readonly Unrolled[],
  option: Option,
  model: MapModel,
  places: PlacesByFace,
): (Line | Label)[] => {
  const tall = MAP_BAND.from - MAP_BAND.to;
  const half = option.enclosure.size.width / 2;
  const items = walls.flatMap((wall): (Line | Label)[] => {
    const { face, at } = wall;
    const { ticks, shut, passes } = faceMapOf(model, face);
    const barred = places.get(face.id)?.barred ?? [];
    return [
      path(
        'dimensions',
        'map line',
        [
          [at, MAP_BAND.to],
          [at + face.length, MAP_BAND.to],
        ],
        stroke('thin', 'ink'),
      ),
      ...shut.flatMap(({ along: [from, to], rules }): (Line | Label)[] => {
        if (to - from < 0.5) return [];
        const things = barred.filter((b) => b.from + half < to && b.to + half > from).map((b) => b.why);
        const why = [...new Set(things.length > 0 ? things : rules)].join(', ');
        const area = box(at + from, at + to, MAP_BAND.to, MAP_BAND.to + tall / 2);
        return [
          ring('joists', 'barred place', area, stroke('thin', 'ink-3'), 'barred'),
          {
            ...label(
              `barred ${face.id} ${from}`,
              why,
              [at + (from + to) / 2, MAP_BAND.to + tall / 4],
              ['middle'],
              false,
            ),
            rank: 6,
            within: to - from,
          },
        ];
      }),
      ...ticks
        .filter((t) => t.place.clear)
        .map((t) =>
          path(
            'joists',
            `place ${placeKey(t.place)}`,
            [
              [at + t.x, MAP_BAND.to],
              [at + t.x, MAP_BAND.to + tall * high(t)],
            ],
            line(t),
          ),
        ),
      ...passes.flatMap(({ x, circuits }): (Line | Label)[] => [
        path(
          'dimensions',
          `6 ft line ${face.id} ${x}`,
          [
            [at + x, MAP_BAND.to],
            [at + x, MAP_BAND.from + 2],
          ],
          stroke('object', 'ink', 'limit'),
        ),
        label(
          `6 ft line ${face.id} ${x}`,
          say.passes({ circuits: circuitNumbers(job, circuits) }),
          [at + x, MAP_BAND.from + 2],
          ['above right', 'above left', 'above'],
          false,
        ),
      ]),
    ];
  });
  const own = wallOf(walls, option.enclosure.on);
  const now = own && own.at + option.enclosure.on.left + half;
  const wall = model.best && wallOf(walls, model.best.on);
  const best = wall && model.best ? wall.at + model.best.on.left + half : undefined;
  return [
    ...items,
    ...(model.least !== null && model.most !== null
      ? [
          label('map least', short(model.least), [0, MAP_BAND.to + tall * 0.25], ['left'], true),
          label('map most', short(model.most), [0, MAP_BAND.from], ['left'], true),
        ]
      : []),
    ...(now === undefined ? [] : [triangle('map now', [now, MAP_BAND.from], true)]),
    ...(best === undefined || !model.best
      ? []
      : [
          triangle('map best', [best, MAP_BAND.from], false),
          label('map best', offer(model.best), [best, MAP_BAND.over], ['left', 'right'], true),
        ]),
  ];
};

/** Of places that stand close only some are drawn in plan. */
const thinned = (ticks: readonly Tick[]): Tick[] => {
  let last = Number.NEGATIVE_INFINITY;
  return ticks.filter((t) => {
    const apart = t.within ? PLAN_EVERY_IN.within : PLAN_EVERY_IN.past;
    if (!t.place.clear || t.x - last < apart - 1e-6) return false;
    last = t.x;
    return true;
  });
};

/** Outside the room's walls in plan, and shorter before a partition: a tick a place, as long as its price. */
export const drawPlanMap = (job: Job, option: Option, model: MapModel): (Line | Label)[] => {
  const faces = wallFaces(job.site, 'after');
  const out = (face: WallFace, by: In): In =>
    face.partition ? (PLAN.off + by) * PLAN.inside : -knownOr(face.thickness, OUTLINE_WALL_IN) - PLAN.off - by;
  const at = (face: WallFace, x: In, by: In): Pt => pointOnFace(face, x, out(face, by));
  const ticks = faces.flatMap((face): Line[] => {
    const on = faceMapOf(model, face);
    return [
      ...thinned(on.ticks).map((t) =>
        path(
          'joists',
          `place ${placeKey(t.place)}`,
          [at(face, t.x, 0), at(face, t.x, PLAN.least + (PLAN.most - PLAN.least) * (t.share ?? 0))],
          line(t),
        ),
      ),
      ...on.shut
        .filter(({ along: [from, to] }) => to - from >= 0.5)
        .map(({ along: [from, to] }) =>
          ring(
            'dimensions',
            'barred place',
            [at(face, from, 0), at(face, to, 0), at(face, to, PLAN.least), at(face, from, PLAN.least)],
            stroke('hair', 'ink-3'),
            'barred',
          ),
        ),
      ...on.passes.map(({ x }) =>
        path(
          'dimensions',
          `6 ft line ${face.id} ${x}`,
          [at(face, x, 0), at(face, x, PLAN.most)],
          stroke('object', 'ink', 'limit'),
        ),
      ),
    ];
  });
  const { best } = model;
  const face = best && faceOf(faces, best.on);
  if (!best || !face) return ticks;
  const middle = best.on.left + option.enclosure.size.width / 2;
  const [tip, l, r] = [
    at(face, middle, PLAN.most),
    at(face, middle - TRIANGLE * 0.7, PLAN.most + TRIANGLE * 1.6),
    at(face, middle + TRIANGLE * 0.7, PLAN.most + TRIANGLE * 1.6),
  ];
  return [
    ...ticks,
    ring('dimensions', 'map best', [l, r, tip], stroke('profile', 'ink'), 'paper'),
    label(
      'map best',
      offer(best),
      at(face, middle, PLAN.most + TRIANGLE * 1.6),
      ['above', 'left', 'right', 'below'],
      true,
    ),
  ];
};
