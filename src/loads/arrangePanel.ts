import { legOfSpace } from '../calculations/panelSlots';
import type { DirectoryEntry, Run } from '../facts/result';
import type { ArrangementFacts } from '../facts/ruling';
import type { Circuit, HomeRun, Job, Option } from '../job/schema';
import { enclosureOnFace } from '../job/site';
import { panelSpacesFor } from '../standards/panelSpaces';
import { byId } from '../units/order';
import { type Id, isKnown } from '../units/types';
import { directoryWords as say } from '../words/en/directory';
import { type Breaker, landsHere } from './breakers';
import { directoryTexts } from './directoryText';
import { entriesInto, type OnPanel, spaceAt, tailTo } from './insidePanel';
import { chooseLegs, type LegChoice } from './legs';
import { type Placing, placeUnits } from './slots';

type Leg = 'A' | 'B';
/** What takes a place in the panel: a breaker, or the surge device. */
interface Unit {
  readonly id: Id;
  readonly poles: 1 | 2;
  readonly va: number;
  /** What stands on each leg (a single pole: the same on either); null circuits for the surge device. */
  readonly on: Readonly<Record<Leg, { readonly circuit: Id | null; readonly text: string }>>;
  readonly protection: string;
  readonly amps: number;
  /** Where its cables come into the panel. */
  readonly from: readonly OnPanel[];
}

const SPD_SPACES = 2;
/** The surge device keeps the shortest leads of all: its inches weigh before any other's. */
const SPD_WEIGHT = 1000;
const SPD = 'spd';

const protectionText = (b: Breaker): string =>
  [
    isKnown(b.amps) ? `${b.amps} A` : say.ratingUnknown,
    b.poles === 2 ? '2-pole' : '',
    b.afci ? 'AFCI' : '',
    b.gfci ? 'GFCI' : '',
  ]
    .filter(Boolean)
    .join(' ');

const unitsOf = (
  job: Job,
  option: Option,
  breakers: readonly Breaker[],
  runs: readonly Run[],
  turned: ReadonlySet<Id>,
): Unit[] => {
  const texts = directoryTexts(job.circuits);
  const entries = entriesInto(job, option.enclosure, runs);
  const at = (c: Circuit) => ({ circuit: c.id, text: texts.get(c.id) ?? c.label });
  return breakers.map((b) => {
    const [first, second] = turned.has(b.id)
      ? [b.circuits[1]!, b.circuits[0]!]
      : [b.circuits[0]!, b.circuits[1] ?? b.circuits[0]!];
    const cables = job.homeRuns.filter((h) => h.circuits.some((id) => b.circuits.some((c) => c.id === id)));
    return {
      id: b.id,
      poles: b.poles,
      va: b.circuits.reduce((sum, c) => sum + (isKnown(c.va) ? c.va : 0), 0),
      on: { A: at(first), B: at(second) },
      protection: protectionText(b),
      amps: isKnown(b.amps) ? b.amps : 0,
      from: cables.flatMap((h) => entries.get(h.id) ?? []),
    };
  });
};
const surgeDevices = (count: number): Unit[] =>
  Array.from({ length: count }, (_, i) => {
    const place = { circuit: null, text: say.surge };
    return {
      id: `${SPD} ${i + 1}`,
      poles: 2,
      va: 0,
      on: { A: place, B: place },
      protection: '2-pole',
      amps: Number.MAX_SAFE_INTEGER,
      from: [],
    };
  });

/** Every space of the panel with what stands in it: surge device by the main, then whatever has the shortest conductors. */
const fill = (
  option: Option,
  spaces: number,
  units: readonly Unit[],
  choice: LegChoice,
): { directory: DirectoryEntry[]; legs: ReadonlyMap<Id, Leg> } => {
  const can = option.enclosure;
  const box = enclosureOnFace(can);
  const main = { left: (box.left + box.right) / 2, z: can.mainAt === 'top' ? box.top : box.bottom };
  const places = Array.from({ length: spaces + 1 }, (_, space) => spaceAt(can, spaces, Math.max(1, space)));
  const placing = (u: Unit): Placing => {
    const tails = places.map((at) =>
      u.on.A.circuit === null
        ? SPD_WEIGHT * tailTo(main, at)
        : u.from.reduce((sum, entry) => sum + tailTo(entry, at), 0),
    );
    return { id: u.id, va: u.va, tail: (space) => tails[space]! };
  };
  // where there are more than fit, the larger ones find a place
  const doubles = byId(units.filter((u) => u.poles === 2)).sort((a, b) => b.amps - a.amps);
  const singles = byId(units.filter((u) => u.poles === 1));
  const { at, legs } = placeUnits(
    spaces,
    doubles.map(placing),
    singles.map(placing),
    choice.legs,
    choice.legA - choice.legB,
  );
  const inSpace = new Map(units.flatMap((u) => (at.get(u.id) ?? []).map((space) => [space, u] as const)));
  const directory = Array.from({ length: spaces }, (_, i): DirectoryEntry => {
    const [space, leg] = [i + 1, legOfSpace(i + 1)];
    const unit = inSpace.get(space);
    return unit
      ? { space, leg, ...unit.on[leg], protection: unit.protection }
      : { space, leg, circuit: null, text: say.spare, protection: '' };
  });
  return { directory, legs };
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

/** Which breaker goes where: pole count, legs level where VA is entered, then by the shortest conductors from where each cable comes in. */
export const arrangePanel = (
  job: Job,
  option: Option,
  breakers: readonly Breaker[],
  runs: readonly Run[],
  spds: number,
): ArrangementFacts => {
  const needed = breakers.reduce((n, b) => n + b.poles, 0) + SPD_SPACES * spds;
  const spaces = spacesOf(job, option, needed);
  const choice = chooseLegs(breakers, spaces, spds);
  const units = unitsOf(job, option, breakers, runs, choice.turned);
  const { directory, legs } = fill(option, spaces, [...surgeDevices(spds), ...units], choice);
  const moved = units
    .filter((u) => u.poles === 1)
    .reduce((sum, u) => {
      const [was, is] = [choice.legs.get(u.id), legs.get(u.id) ?? choice.legs.get(u.id)];
      return was === is ? sum : sum + (is === 'A' ? u.va : -u.va);
    }, 0);
  return {
    directory,
    spacesNeeded: needed,
    sparesLeft: isKnown(option.enclosure.spaces) ? option.enclosure.spaces - needed : 'unknown',
    legA: choice.legA + moved,
    legB: choice.legB - moved,
    ...terminals(job, breakers, runs),
  };
};
