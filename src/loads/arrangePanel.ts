import type { DirectoryEntry, Run } from '../facts/result';
import type { ArrangementFacts } from '../facts/ruling';
import type { HomeRun, Job, Option } from '../job/schema';
import { panelSpacesFor } from '../standards/panelSpaces';
import { byId } from '../units/order';
import { type Id, isKnown } from '../units/types';
import { type Breaker, landsHere } from './breakers';
import { chooseLegs } from './legs';

type Leg = 'A' | 'B';
/** What takes a place in the panel: a breaker, or the surge device. */
interface Unit {
  readonly id: Id;
  readonly poles: 1 | 2;
  /** What stands on each leg (a single pole: the same on either); null circuits for the surge device. */
  readonly on: Readonly<Record<Leg, { readonly circuit: Id | null; readonly text: string }>>;
  readonly protection: string;
  readonly side: 'left' | 'right' | null;
  readonly amps: number;
}

const SPD_SPACES = 2;

const protectionText = (b: Breaker): string =>
  [
    isKnown(b.amps) ? `${b.amps} A` : 'rating unknown',
    b.poles === 2 ? '2-pole' : '',
    b.afci ? 'AFCI' : '',
    b.gfci ? 'GFCI' : '',
  ]
    .filter(Boolean)
    .join(' ');

/** The side a cable arrives on, where its group enters from one. */
const sideOf = (job: Job, b: Breaker): Unit['side'] => {
  const entries = job.homeRuns
    .filter((h) => h.circuits.some((c) => b.circuits.some((x) => x.id === c)))
    .map((h) => job.cableGroups.find((g) => g.id === h.group)?.entry);
  const side = entries[0];
  return entries.every((e) => e === side) && (side === 'left' || side === 'right') ? side : null;
};

const unitOf = (job: Job, b: Breaker, turned: boolean): Unit => {
  const [first, second] = turned ? [b.circuits[1]!, b.circuits[0]!] : [b.circuits[0]!, b.circuits[1] ?? b.circuits[0]!];
  return {
    id: b.id,
    poles: b.poles,
    on: { A: { circuit: first.id, text: first.label }, B: { circuit: second.id, text: second.label } },
    protection: protectionText(b),
    side: sideOf(job, b),
    amps: isKnown(b.amps) ? b.amps : 0,
  };
};

/** Spaces are numbered down two columns, odd left, even right; the two spaces of a row are on one leg, rows alternate. */
const legOfSpace = (space: number): Leg => (Math.ceil(space / 2) % 2 === 1 ? 'A' : 'B');
const columnOf = (space: number): 'left' | 'right' => (space % 2 === 1 ? 'left' : 'right');

/** First free pair of spaces one under the other, on the wished side if there is one, near the top. */
const freePair = (free: ReadonlySet<number>, side: Unit['side']): number | undefined => {
  const pairs = [...free].filter((s) => free.has(s + 2)).sort((a, b) => a - b);
  return pairs.find((s) => side === null || columnOf(s) === side) ?? pairs[0];
};
const freeSingle = (free: ReadonlySet<number>, leg: Leg, side: Unit['side']): number | undefined => {
  const spaces = [...free].sort((a, b) => a - b);
  return (
    spaces.find((s) => legOfSpace(s) === leg && (side === null || columnOf(s) === side)) ??
    spaces.find((s) => legOfSpace(s) === leg) ??
    spaces[0]
  );
};

/** Surge device nearest the main, then two-pole units from large to small, then single poles leg by leg. */
const fill = (spaces: number, units: readonly Unit[], legs: ReadonlyMap<Id, Leg>): DirectoryEntry[] => {
  const free = new Set(Array.from({ length: spaces }, (_, i) => i + 1));
  const entries: DirectoryEntry[] = [];
  const put = (unit: Unit, at: readonly number[]) => {
    for (const space of at) {
      free.delete(space);
      entries.push({ space, leg: legOfSpace(space), ...unit.on[legOfSpace(space)], protection: unit.protection });
    }
  };
  const doubles = byId(units.filter((u) => u.poles === 2)).sort((a, b) => b.amps - a.amps);
  for (const unit of doubles) {
    const top = freePair(free, unit.side);
    if (top !== undefined) put(unit, [top, top + 2]);
  }
  for (const unit of byId(units.filter((u) => u.poles === 1))) {
    const space = freeSingle(free, legs.get(unit.id) ?? 'A', unit.side);
    if (space !== undefined) put(unit, [space]);
  }
  for (const space of free)
    entries.push({ space, leg: legOfSpace(space), circuit: null, text: 'Spare', protection: '' });
  return entries.sort((a, b) => a.space - b.space);
};

/**
 * Terminals on the bars: one neutral a home run that has one, landed on its breaker where that is AFCI or GFCI, whose
 * own pigtail then takes the place on the bar; one EGC a home run with a ground, extended ones always with one.
 */
const terminals = (job: Job, breakers: readonly Breaker[], runs: readonly Run[]) => {
  const guarded = breakers.filter((b) => b.afci || b.gfci);
  const onBreaker = (h: HomeRun) => h.circuits.some((c) => guarded.some((b) => b.circuits.some((x) => x.id === c)));
  const hasNeutral = (h: HomeRun) => h.cable.neutral !== 'none';
  const extended = new Set(runs.filter((r) => r.newCable !== null).map((r) => r.homeRun));
  const landing = job.homeRuns.filter((h) => landsHere(h, runs));
  return {
    neutralsToLand: landing.filter((h) => hasNeutral(h) && !onBreaker(h)).length + guarded.length,
    groundsToLand: landing.filter((h) => h.cable.ground !== false || extended.has(h.id)).length,
  };
};

/** Spaces an option's panel has, or those of the smallest panel that holds what it needs with the spares asked for. */
const spacesOf = (job: Job, option: Option, needed: number): number =>
  isKnown(option.enclosure.spaces) ? option.enclosure.spaces : panelSpacesFor(needed + job.practice.spareSpaces);

/** Which breaker goes where: pole count, legs balanced where VA is entered, cables to the side they arrive on. */
export const arrangePanel = (
  job: Job,
  option: Option,
  breakers: readonly Breaker[],
  runs: readonly Run[],
  spds: number,
): ArrangementFacts => {
  const spd = Array.from({ length: spds }, (_, i): Unit => {
    const place = { circuit: null, text: 'Surge protective device' };
    return {
      id: `spd ${i + 1}`,
      poles: 2,
      on: { A: place, B: place },
      protection: '2-pole',
      side: null,
      amps: Number.MAX_SAFE_INTEGER,
    };
  });
  const needed = breakers.reduce((n, b) => n + b.poles, 0) + SPD_SPACES * spds;
  const spaces = spacesOf(job, option, needed);
  const { legs, turned, legA, legB } = chooseLegs(breakers, spaces);
  const units = breakers.map((b) => unitOf(job, b, turned.has(b.id)));
  return {
    directory: fill(spaces, [...spd, ...units], legs),
    spacesNeeded: needed,
    sparesLeft: isKnown(option.enclosure.spaces) ? option.enclosure.spaces - needed : 'unknown',
    legA,
    legB,
    ...terminals(job, breakers, runs),
  };
};
