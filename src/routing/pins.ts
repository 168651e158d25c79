import type { Option, Way } from '../job/schema';
import { byId, compareText } from '../units/order';
import type { Id, Pt3 } from '../units/types';
import { routingWords as say } from '../words/en/routing';
import { type Candidate, candidate, type Terms } from './candidate';

/** What the user pinned for one home run; of pins that say the same the lower id is named. */
export interface Pinned {
  readonly way: { readonly pin: Id; readonly way: Way } | null;
  readonly through: { readonly pin: Id; readonly points: readonly Pt3[] } | null;
  readonly spliceAt: { readonly pin: Id; readonly at: Pt3 } | null;
  /** Pins of which not all can hold, whatever the house is like; empty = none. */
  readonly clash: readonly Id[];
}
export interface Pins {
  of(homeRun: Id): Pinned;
  readonly spots: readonly Pt3[];
  readonly rows: readonly (readonly Id[])[];
}

/** A cable that stays is brought nowhere: it passes no points. */
const LIES_STILL: ReadonlySet<Way> = new Set(['stays', 'stays on old panel']);
/** The way whose box hangs at a place of one's choice. */
const BOX_ANYWHERE: Way = 'cut-in';

interface Own {
  readonly ways: readonly { readonly pin: Id; readonly way: Way }[];
  readonly throughs: readonly { readonly pin: Id; readonly points: readonly Pt3[] }[];
  readonly splices: readonly { readonly pin: Id; readonly at: Pt3 }[];
}

const differ = (values: readonly unknown[]): boolean => new Set(values.map((v) => JSON.stringify(v))).size > 1;

const clashOf = ({ ways, throughs, splices }: Own): Id[] => {
  const named: readonly { readonly pin: Id }[] = [
    ...(differ(ways.map((p) => p.way)) ? ways : []),
    ...(differ(throughs.map((p) => p.points)) ? throughs : []),
    ...(differ(splices.map((p) => p.at)) ? splices : []),
    ...ways.flatMap((p) => [
      ...(splices.length > 0 && p.way !== BOX_ANYWHERE ? [p, ...splices] : []),
      ...(throughs.length > 0 && LIES_STILL.has(p.way) ? [p, ...throughs] : []),
    ]),
  ];
  return [...new Set(named.map((p) => p.pin))].sort(compareText);
};

export const readPins = (option: Option): Pins => {
  const pins = byId(option.pins);
  const of = (homeRun: Id): Pinned => {
    const own: Own = {
      ways: pins.flatMap((p) => (p.pin === 'way' && p.homeRun === homeRun ? [{ pin: p.id, way: p.way }] : [])),
      throughs: pins.flatMap((p) =>
        p.pin === 'through' && p.homeRun === homeRun && p.points.length > 0 ? [{ pin: p.id, points: p.points }] : [],
      ),
      splices: pins.flatMap((p) =>
        p.pin === 'splice at' && p.homeRuns.includes(homeRun) ? [{ pin: p.id, at: p.at }] : [],
      ),
    };
    return {
      way: own.ways[0] ?? null,
      through: own.throughs[0] ?? null,
      spliceAt: own.splices[0] ?? null,
      clash: clashOf(own),
    };
  };
  return {
    of,
    spots: pins.flatMap((p) => (p.pin === 'splice at' ? [p.at] : [])),
    rows: pins.flatMap((p) => (p.pin === 'row' ? [[...p.homeRuns].sort()] : [])),
  };
};

const barredBy = (terms: Terms, way: Way, pins: readonly Id[], why: string): Candidate =>
  candidate(terms, { id: `pin ${pins.join()}`, way, stretches: [], own: () => [], why, blockedBy: pins });
const impossible = (terms: Terms, way: Way, pin: Id, because: string): Candidate =>
  barredBy(terms, way, [pin], say.pinImpossible({ way, because }));

/** Says of a cable that is barred by the points it is pinned through that it is. */
export const pinnedPointsNamed = (c: Candidate, { through }: Pinned): Candidate =>
  through && c.blockedBy.includes(through.pin) ? { ...c, why: say.throughUnreached({ pin: through.pin }) } : c;

/** Only what the pins allow. What they ask for and is not there comes back as one blocked candidate that names the pins. */
export const applyPins = (
  terms: Terms,
  pinned: Pinned,
  spotAt: (at: Pt3) => string | null,
  offered: readonly Candidate[],
  untold: readonly Candidate[],
  because: string | null,
): Candidate[] => {
  const mark = (list: readonly Candidate[]) =>
    list.map((c) => ({ ...c, why: `${say.pinned({ way: c.way })} ${c.why}` }));
  const { clash } = pinned;
  if (clash.length > 0)
    return [barredBy(terms, pinned.way?.way ?? 'cut-in', clash, say.pinsClash({ pins: clash.join(', ') }))];
  if (pinned.through && offered.every((c) => LIES_STILL.has(c.way)))
    return [barredBy(terms, 'stays on old panel', [pinned.through.pin], say.pinnedButStays())];
  let list = [...offered];
  if (pinned.spliceAt) {
    const { at, pin } = pinned.spliceAt;
    const spot = spotAt(at);
    const there = list.filter((c) => spot !== null && c.spot === spot);
    if (there.length === 0) return [impossible(terms, 'cut-in', pin, because ?? say.becauseNoSpot())];
    list = mark(there);
  }
  if (!pinned.way) return list;
  const { way, pin } = pinned.way;
  const same = list.filter((c) => c.way === way);
  if (same.length > 0) return pinned.spliceAt ? same : mark(same);
  const told = untold.filter((c) => c.way === way);
  if (told.length > 0 && !pinned.spliceAt) return mark(told);
  return [impossible(terms, way, pin, because ?? say.becauseNotOffered())];
};
