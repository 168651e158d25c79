import type { Interval } from '../geometry/freeIntervals';
import { freeIntervals } from '../geometry/freeIntervals';
import type { Option, Site } from '../job/schema';
import { pointOnFace, type WallFace, wallFaces } from '../job/site';
import type { Places } from '../plan/map/clearPlaces';
import type { Id, In } from '../units/types';
import { knownOr } from '../units/types';
import { type Label, type Line, path, ring, stroke } from './items';
import { quiet } from './names';
import type { Unrolled } from './unroll';
import { OUTLINE_WALL_IN } from './walls';
import { box } from './wallThings';

/** Places of the new panel by the id of the face. */
export type PlacesByFace = ReadonlyMap<Id, Places>;

/** The band under the wall drawing, below the slab, inches. */
export const BAND = { from: -6.5, to: -16 } as const;
/** Points of the paper outside the walls of the plan. */
const OUTSIDE = 7;

/** What a panel covers when it hangs anywhere in a clear stretch. */
const covered = ({ clear }: Places, width: In): Interval[] => clear.map(([from, to]): Interval => [from, to + width]);

/** Under each wall: strong where the panel has its spaces clear, hatched with the reason where it has not. */
export const drawWallPlaces = (walls: readonly Unrolled[], option: Option, places: PlacesByFace): (Line | Label)[] =>
  walls.flatMap(({ face, at }): (Line | Label)[] => {
    const on = places.get(face.id);
    if (!on) return [];
    const { width } = option.enclosure.size;
    const open = covered(on, width);
    const shut = freeIntervals([0, face.length], open).filter(([from, to]) => to - from > 0.5);
    return [
      ...open.map(([from, to]) =>
        ring(
          'dimensions',
          'clear place',
          box(at + from, at + to, BAND.to, BAND.from),
          stroke('profile', 'ink'),
          'paper',
        ),
      ),
      ...shut.flatMap(([from, to]): (Line | Label)[] => {
        const why = on.barred.filter((b) => b.from < to && b.to + width > from).map((b) => b.why);
        const [l, r] = [at + from, at + to];
        return [
          ring('dimensions', 'barred place', box(l, r, BAND.to, BAND.from), stroke('thin', 'ink-3'), 'barred'),
          {
            item: 'label',
            id: `barred ${face.id} ${from}`,
            layer: 'names',
            lines: [quiet([...new Set(why)].join(', '), 'ink-2')],
            rank: 6,
            must: false,
            lead: null,
            within: to - from,
            places: [{ at: [(l + r) / 2, (BAND.from + BAND.to) / 2], side: 'middle', gap: 0 }],
          },
        ];
      }),
    ];
  });

/** Outside the room's walls in plan: a strong line along each stretch where the panel has its spaces clear. */
export const drawPlanPlaces = (site: Site, option: Option, places: PlacesByFace): Line[] =>
  wallFaces(site, 'after')
    .filter((face) => !face.partition)
    .flatMap((face) => {
      const on = places.get(face.id);
      const out = -knownOr(face.thickness, OUTLINE_WALL_IN);
      const line = ([from, to]: Interval): Line =>
        path(
          'dimensions',
          'clear place',
          [at(face, from, out), at(face, to, out)],
          stroke('profile', 'ink-2'),
          OUTSIDE,
        );
      return on ? covered(on, option.enclosure.size.width).map(line) : [];
    });
const at = (face: WallFace, along: In, out: In) => pointOnFace(face, along, out);
