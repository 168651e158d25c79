import type { Run, TimePlan } from '../facts/result';
import type { Work } from '../facts/work';
import type { PriceBook, Way } from '../job/schema';
import { compareText } from '../units/order';
import type { Id } from '../units/types';
import { bookItemWords as words } from '../words/en/bookItems';
import { indexBook } from './assemblies';
import { assemblyOf, CONDITIONS, type DoneWhen, type When } from './items';

/** Two electricians, eight hours a day. Common practice, no source. */
export const CREW = { people: 2, hoursPerDay: 8 } as const;
export type Crew = { readonly people: number; readonly hoursPerDay: number };

export interface TimeAsk {
  /** The work that will be done (alternates left out already). */
  readonly work: readonly Work[];
  readonly book: PriceBook;
  readonly runs: readonly Pick<Run, 'homeRun' | 'way'>[];
  /** Every circuit of the panels being replaced. */
  readonly circuits: readonly Id[];
  /** Does the new cabinet take an old one's place on the wall? See `takesOldPlace`. */
  readonly inOldPlace: boolean;
  /** Is the feeder kept that is live in the old cabinet until the outage? */
  readonly feederKept: boolean;
  readonly crew?: Crew;
}
export interface TimeAnswer {
  readonly plan: TimePlan;
  /** Labor-hours of the whole job (a crew of two does two in an hour). */
  readonly crewHours: number;
  /** Hours of the clock the house is without power, all circuits cut over at once. */
  readonly outageHours: number;
}

/** Ways by which the home run's own conductors end in the new panel: landed only once the old panel is dead. */
const LANDS_IN_OUTAGE: ReadonlySet<Way> = new Set(['stays', 'reuse', 'splice in new panel', 'stays on old panel']);
const tidy = (hours: number): number => Math.round(hours * 1e4) / 1e4;

type Place = Pick<TimeAsk, 'inOldPlace' | 'feederKept'>;

/**
 * The part of a piece of work that waits for the outage, and when the rest is done. What stands on the old cabinet's
 * place, or ends on conductors live in it, is worked on dead (OSHA 29 CFR 1910.333(a)(1), from memory; the order is
 * common practice, no source): nothing is landed in a cabinet that does not hang yet.
 */
const outageShare = (when: DoneWhen, landsDead: number, place: Place): readonly [share: number, rest: When] => {
  switch (when) {
    case 'by way':
      return [place.inOldPlace ? 1 : landsDead, 'before outage'];
    case 'by place, else before':
      return [place.inOldPlace ? 1 : 0, 'before outage'];
    case 'by place, else after':
      return [place.inOldPlace ? 1 : 0, 'after'];
    case 'by feeder, else before':
      return [place.inOldPlace || place.feederKept ? 1 : 0, 'before outage'];
    default:
      return [when === 'outage' ? 1 : 0, when];
  }
};

/** Labor-hours per task and part of the day for one piece of work, by way and place where these decide. */
const hoursOf = (
  { item, quantity, homeRuns }: Work,
  hours: (task: string) => number,
  wayOf: ReadonlyMap<Id, Way>,
  place: Place,
): { id: string; hours: number; when: When }[] => {
  const parts = assemblyOf(item);
  if (!parts) return [];
  // Where no home run is named nothing says the work can be done ahead: it counts in the outage.
  const landsDead =
    homeRuns.length === 0
      ? 1
      : homeRuns.filter((id) => LANDS_IN_OUTAGE.has(wayOf.get(id) ?? 'reuse')).length / homeRuns.length;
  const [inOutage, rest] = outageShare(parts.when, landsDead, place);
  const share: readonly (readonly [When, number])[] = [
    ['outage', inOutage],
    [rest, 1 - inOutage],
  ];
  return parts.tasks.flatMap((task) =>
    share.map(([when, part]) => ({ id: task.id, when, hours: part * quantity * task.quantity * hours(task.id) })),
  );
};

/**
 * Hours by task and by what can be done ahead: holes, boxes, extensions and a cabinet on a new place before the outage; the old
 * panel stripped, cables drawn back, splices made and circuits tested in it; the rest after. The house is cut over all
 * at once: the old panel is dead from the first to the last of it, so every circuit is off for the whole outage.
 */
export const timePlan = ({ work, book, runs, circuits, crew = CREW, ...place }: TimeAsk): TimeAnswer => {
  const { tasks } = indexBook(book);
  const likely = (task: string) => tasks.get(task)?.likely ?? 0;
  const wayOf = new Map(runs.map((run) => [run.homeRun, run.way]));
  const sum = new Map<string, { id: string; when: When; hours: number }>();
  const add = (id: string, when: When, hours: number) => {
    if (hours === 0) return;
    const key = `${id}|${when}`;
    sum.set(key, { id, when, hours: (sum.get(key)?.hours ?? 0) + hours });
  };
  const inOrder = [...work].sort((a, b) => compareText(a.item, b.item));
  for (const piece of inOrder.filter(({ item }) => !CONDITIONS.has(item)))
    for (const { id, when, hours } of hoursOf(piece, likely, wayOf, place)) add(id, when, hours);
  // A slower house slows everything alike, in the outage too.
  const base = [...sum.values()];
  const total = base.reduce((all, entry) => all + entry.hours, 0);
  if (total > 0)
    for (const { item, quantity } of inOrder.filter((piece) => CONDITIONS.has(piece.item)))
      for (const { when, hours } of base) add(item, when, (quantity * likely(item) * hours) / total);

  const byTask = [...sum.values()]
    .map(({ id, when, hours }) => ({ id, say: words.task(id), hours: tidy(hours), when }))
    .sort((a, b) => compareText(a.id, b.id) || compareText(a.when, b.when));
  const hoursWhen = (...whens: readonly When[]) =>
    byTask.reduce((all, entry) => all + (whens.includes(entry.when) ? entry.hours : 0), 0);
  const crewHours = tidy(hoursWhen('before outage', 'outage', 'after'));
  const outageHours = tidy(hoursWhen('outage') / crew.people);
  return {
    crewHours,
    outageHours,
    plan: {
      days: tidy(crewHours / (crew.people * crew.hoursPerDay)),
      byTask,
      outage: [...circuits].sort(compareText).map((circuit) => ({ circuit, hours: outageHours })),
    },
  };
};
