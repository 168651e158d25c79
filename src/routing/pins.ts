import type { Option, Way } from '../job/schema';
import { byId } from '../units/order';
import type { Id, Pt3 } from '../units/types';
import { routingWords as say } from '../words/en/routing';
import { type Candidate, candidate, type Terms } from './candidate';

/** What the user pinned for one home run; where two pins say the same thing the lower id holds. */
export interface Pinned {
  readonly way: { readonly pin: Id; readonly way: Way } | null;
  readonly through: readonly Pt3[];
  readonly spliceAt: { readonly pin: Id; readonly at: Pt3 } | null;
}
export interface Pins {
  of(homeRun: Id): Pinned;
  readonly spots: readonly Pt3[];
  readonly rows: readonly (readonly Id[])[];
}

export const readPins = (option: Option): Pins => {
  const pins = byId(option.pins);
  const of = (homeRun: Id): Pinned => {
    const way = pins.find((p) => p.pin === 'way' && p.homeRun === homeRun);
    const through = pins.find((p) => p.pin === 'through' && p.homeRun === homeRun);
    const splice = pins.find((p) => p.pin === 'splice at' && p.homeRuns.includes(homeRun));
    return {
      way: way?.pin === 'way' ? { pin: way.id, way: way.way } : null,
      through: through?.pin === 'through' ? through.points : [],
      spliceAt: splice?.pin === 'splice at' ? { pin: splice.id, at: splice.at } : null,
    };
  };
  return {
    of,
    spots: pins.flatMap((p) => (p.pin === 'splice at' ? [p.at] : [])),
    rows: pins.flatMap((p) => (p.pin === 'row' ? [[...p.homeRuns].sort()] : [])),
  };
};

const impossible = (terms: Terms, way: Way, pin: Id, because: string): Candidate =>
  candidate(terms, {
    id: `pin ${pin}`,
    way,
    stretches: [],
    own: () => [],
    why: say.pinImpossible({ way, because }),
    blockedBy: [pin],
  });

/** Only what the pins allow. What they ask for and is not there comes back as one blocked candidate that names the pin. */
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
  if (same.length > 0) return mark(same);
  const told = untold.filter((c) => c.way === way);
  if (told.length > 0 && !pinned.spliceAt) return mark(told);
  return [impossible(terms, way, pin, because ?? say.becauseNotOffered())];
};
