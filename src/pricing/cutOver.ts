import type { Way } from '../job/schema';
import type { Id } from '../units/types';
import type { When } from './items';
import type { TaskHours, Where } from './taskHours';

/**
 * How circuits come off the old panel and onto the new one. All at once: the house is dark from the first to the last
 * of it. Rolled over: the new panel is fed beside the old one in a short outage; every circuit that is cut upstream is
 * then moved alone, dead at its own breaker; what must be drawn out of the old panel itself follows together once that
 * is dead. Common practice, no source; nothing is worked on live either way.
 */

/** Ways whose joint lies away from both panels, with the new end landed beforehand. */
export const ROLLS: ReadonlySet<Way> = new Set(['cut-in', 'new home run']);

/** Work on the feeder and the service: the house is dark for it in any case. */
const HOUSE: ReadonlySet<string> = new Set(['shutdown', 'lug', 'feeder breaker', 'electrode', 'service disconnect']);
const isOfHouse = ({ id, item }: TaskHours): boolean => HOUSE.has(id) || HOUSE.has(item);

/** Work of every circuit alike that names no home run: its share is the circuit's. */
const OF_CIRCUITS: ReadonlySet<string> = new Set(['test circuit', 'roll over']);

/** Work at a cabinet, where two can stand and no third. Common practice, no source. */
const AT_CABINET =
  /^(shutdown|strip|lug|main|land|feeder breaker|ground bar|spd|hub|attached device|test circuit|remove old panel|mount)/;
const MOST_AT_CABINET = 2;

const sum = (list: readonly TaskHours[], of: (t: TaskHours) => number = (t) => t.hours): number =>
  list.reduce((all, entry) => all + of(entry), 0);

/** Hours of the clock that so many people need for it: all work at once, but only two of them at a cabinet. */
export const clockHours = (list: readonly TaskHours[], people: number): number =>
  Math.max(sum(list) / people, sum(list.filter((t) => AT_CABINET.test(t.id))) / Math.min(people, MOST_AT_CABINET));

export interface Off {
  /** Hours of the clock the whole house is dark. */
  readonly house: number;
  readonly houseTasks: readonly TaskHours[];
  readonly circuit: (id: Id) => number;
}
export const allAtOnce = (hours: readonly TaskHours[], people: number): Off => {
  const houseTasks = hours.filter((t) => t.when === 'outage');
  const house = clockHours(houseTasks, people);
  return { house, houseTasks, circuit: () => house };
};

/** What keeps a house from being rolled over, or null: the new panel must be able to live beside the old one. */
export const noRollOver = (
  { inOldPlace, feederKept }: Where,
  spaceAtSource: boolean | 'unknown',
): 'old place' | 'feeder kept' | 'no space' | 'space unknown' | null => {
  if (inOldPlace) return 'old place';
  if (feederKept) return 'feeder kept';
  if (spaceAtSource === 'unknown') return 'space unknown';
  return spaceAtSource ? null : 'no space';
};

export interface RollAsk {
  readonly hours: readonly TaskHours[];
  readonly people: number;
  readonly circuitsOf: (homeRun: Id) => readonly Id[];
  readonly wayOf: ReadonlyMap<Id, Way>;
  readonly circuits: readonly Id[];
}
/** Circuits that can be moved alone: every cable of theirs is cut upstream. */
export const rolledCircuits = ({ circuitsOf, wayOf, circuits }: Omit<RollAsk, 'hours' | 'people'>): ReadonlySet<Id> => {
  const held = new Set([...wayOf].flatMap(([homeRun, way]) => (ROLLS.has(way) ? [] : circuitsOf(homeRun))));
  const moved = new Set([...wayOf].flatMap(([homeRun, way]) => (ROLLS.has(way) ? circuitsOf(homeRun) : [])));
  return new Set(circuits.filter((id) => moved.has(id) && !held.has(id)));
};

/** The same work rolled over: the tasks with their new part of the day, and how long each circuit is off. */
export const rolledOver = (ask: RollAsk): Off & { readonly hours: readonly TaskHours[] } => {
  const { people, circuitsOf, circuits } = ask;
  const rolled = rolledCircuits(ask);
  const inOutage = ask.hours.filter((t) => t.when === 'outage');
  const houseTasks = inOutage.filter(isOfHouse);
  const house = clockHours(houseTasks, people);
  // of a piece of work, what is one circuit's
  const shareOf = (t: TaskHours, circuit: Id): number => {
    if (OF_CIRCUITS.has(t.id)) return 1 / Math.max(1, t.id === 'roll over' ? rolled.size : circuits.length);
    const its = t.homeRuns.filter((h) => circuitsOf(h).includes(circuit)).length;
    return t.homeRuns.length === 0 ? 0 : its / t.homeRuns.length;
  };
  const rest = ask.hours.filter((t) => (t.when === 'outage' && !isOfHouse(t)) || t.id === 'roll over');
  const ownOf = (circuit: Id): number => rest.reduce((all, t) => all + t.hours * shareOf(t, circuit), 0);
  const ofRolled = [...rolled].reduce((all, circuit) => all + ownOf(circuit), 0);
  // the others wait together while the old panel is dead
  const together = Math.max(0, sum(rest) - ofRolled) / people;
  return {
    house,
    houseTasks,
    circuit: (id) => house + (rolled.has(id) ? ownOf(id) : together),
    hours: ask.hours.map((t) => (t.when === 'outage' && !isOfHouse(t) ? { ...t, when: 'after' as When } : t)),
  };
};
