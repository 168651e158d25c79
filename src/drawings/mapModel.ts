import type { Place } from '../facts/result';
import type { Interval } from '../geometry/freeIntervals';
import type { Job, Option } from '../job/schema';
import type { WallFace } from '../job/site';
import { offered } from '../plan/map/rank';
import type { Cents, Id, In } from '../units/types';

/** A place of the map on its wall: `x` = chainage of the panel's middle. */
export interface Tick {
  readonly place: Place;
  readonly x: In;
  /** Height of its tick: 0 the cheapest of the map, 1 the dearest; null where it has no price. */
  readonly share: number | null;
  /** No circuit needs AFCI because of its length there that would not need it at the place with the fewest. */
  readonly within: boolean;
}
/** A stretch of a wall where the panel may not hang. */
export interface Shut {
  readonly along: Interval;
  readonly rules: readonly string[];
}
/** Where along a wall circuits pass 6 ft from one place to the next. */
export interface Pass {
  readonly x: In;
  readonly circuits: readonly Id[];
}
export interface FaceMap {
  readonly ticks: readonly Tick[];
  readonly shut: readonly Shut[];
  readonly passes: readonly Pass[];
}
/** The map laid out for drawing: the same in plan, on the walls and in space. */
export interface MapModel {
  readonly faces: ReadonlyMap<Id, FaceMap>;
  readonly least: Cents | null;
  readonly most: Cents | null;
  readonly best: Place | undefined;
}

const faceId = ({ on }: Place): Id => `${on.wall}:${on.face}`;

const differing = (a: readonly Id[], b: readonly Id[]): Id[] => [
  ...a.filter((c) => !b.includes(c)),
  ...b.filter((c) => !a.includes(c)),
];

/** Places of the option's own height and way up: those that stand side by side along the walls. */
export const ownHeight = (option: Option, places: readonly Place[]): Place[] =>
  places.filter((p) => p.on.bottom === option.enclosure.on.bottom && p.upright === option.enclosure.upright);

const shutOf = (list: readonly Tick[]): Shut[] => {
  const out: { from: In; to: In; rules: readonly string[] }[] = [];
  list.forEach(({ place, x }, i) => {
    if (place.clear) return;
    const [before, after] = [list[i - 1], list[i + 1]];
    const from = before ? (before.place.clear ? before.x : (before.x + x) / 2) : x;
    const to = after ? (after.place.clear ? after.x : (after.x + x) / 2) : x;
    const last = out.at(-1);
    if (last && before && !before.place.clear && last.rules.join() === place.rules.join()) last.to = to;
    else out.push({ from, to, rules: place.rules });
  });
  return out.map(({ from, to, rules }) => ({ along: [from, to], rules }));
};

const passesOf = (list: readonly Tick[]): Pass[] =>
  list.slice(1).flatMap((b, i): Pass[] => {
    const a = list[i]!;
    if (!a.place.clear || !b.place.clear) return [];
    const circuits = differing(a.place.past, b.place.past);
    return circuits.length > 0 ? [{ x: (a.x + b.x) / 2, circuits }] : [];
  });

export const mapModel = (option: Option, places: readonly Place[]): MapModel => {
  const prices = places.flatMap((p) => (p.clear && p.cents !== null ? [p.cents] : []));
  const [least, most] = prices.length > 0 ? [Math.min(...prices), Math.max(...prices)] : [null, null];
  const fewest = Math.min(...places.flatMap((p) => (p.clear && p.afciAdded !== null ? [p.afciAdded] : [])));
  const half = option.enclosure.size.width / 2;
  const lists = new Map<Id, Tick[]>();
  for (const place of ownHeight(option, places)) {
    const { cents } = place;
    const share =
      cents === null || least === null || most === null ? null : most > least ? (cents - least) / (most - least) : 0;
    const list = lists.get(faceId(place)) ?? [];
    list.push({ place, x: place.on.left + half, share, within: (place.afciAdded ?? 0) <= fewest });
    lists.set(faceId(place), list);
  }
  const faces = new Map<Id, FaceMap>();
  for (const [id, list] of lists) {
    list.sort((a, b) => a.x - b.x);
    faces.set(id, { ticks: list, shut: shutOf(list), passes: passesOf(list) });
  }
  return { faces, least, most, best: offered(places) };
};

export const faceMapOf = ({ faces }: MapModel, face: Pick<WallFace, 'id'>): FaceMap =>
  faces.get(face.id) ?? { ticks: [], shut: [], passes: [] };

/** Numbers of circuits, as on their breakers. */
export const circuitNumbers = (job: Job, ids: readonly Id[]): string =>
  ids.map((id) => job.circuits.find((c) => c.id === id)?.number || id).join(', ');
