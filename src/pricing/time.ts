import type { Run, TimePlan } from '../facts/result';
import type { Work } from '../facts/work';
import type { PriceBook, Terms, Way } from '../job/schema';
import { compareText } from '../units/order';
import type { Id } from '../units/types';
import { bookItemWords as words } from '../words/en/bookItems';
import { timeWords as say } from '../words/en/time';
import { allAtOnce, clockHours, noRollOver, type RollAsk, rolledCircuits, rolledOver } from './cutOver';
import { holdPoints } from './holdPoints';
import { rangeOf } from './range';
import { type TaskHours, taskHours, type Where } from './taskHours';

/** From eight to five with an hour of rest. Common practice, no source. */
const REST_HOURS = 1;
/** Hours of work in a day, rest taken off; a day is never shorter than an hour. */
export const workingDay = ({ startsAt, endsAt }: Pick<Terms, 'startsAt' | 'endsAt'>): number =>
  Math.max(1, endsAt - startsAt - REST_HOURS);

export interface TimeAsk extends Where {
  /** The work that will be done (alternates left out already). */
  readonly work: readonly Work[];
  readonly book: PriceBook;
  readonly runs: readonly Pick<Run, 'homeRun' | 'way'>[];
  /** Every circuit of the panels being replaced. */
  readonly circuits: readonly Id[];
  readonly circuitsOf: (homeRun: Id) => readonly Id[];
  readonly terms: Terms;
  /** Is a space free at the source for a second feeder, while the first still feeds the old panel? */
  readonly spaceAtSource: boolean | 'unknown';
}
export interface TimeAnswer {
  readonly plan: TimePlan;
  /** Labor-hours of the whole job (a crew of two does two in an hour). */
  readonly crewHours: number;
  /** Hours of the clock the whole house is without power. */
  readonly outageHours: number;
}

const tidy = (hours: number): number => Math.round(hours * 1e4) / 1e4;
const total = (list: readonly TaskHours[]): number => list.reduce((all, t) => all + t.hours, 0);

/** The outage that nine of ten such days do not pass, by the same analytic range as the price. */
const longOutage = (tasks: readonly TaskHours[], people: number): number => {
  const likely = total(tasks);
  if (likely === 0) return 0;
  const parts = tasks.map((t, i) => ({
    id: `${i} ${t.id}`,
    group: 'labor' as const,
    low: t.low,
    likely: t.hours,
    high: t.high,
  }));
  return clockHours(tasks, people) * (rangeOf(parts).high / likely);
};

/** Hours by task, summed over pieces of work. */
const byTask = (hours: readonly TaskHours[]): TimePlan['byTask'] => {
  const sum = new Map<string, { id: string; say: string; when: TaskHours['when']; hours: number }>();
  for (const { id, when, hours: h } of hours) {
    const key = `${id}|${when}`;
    sum.set(key, { id, say: words.task(id), when, hours: (sum.get(key)?.hours ?? 0) + h });
  }
  return [...sum.values()]
    .filter((entry) => entry.hours !== 0)
    .map((entry) => ({ ...entry, hours: tidy(entry.hours) }))
    .sort((a, b) => compareText(a.id, b.id) || compareText(a.when, b.when));
};

/** A quarter of an hour down: an hour of the clock one can tell a crew. */
const quarterDown = (hour: number): number => Math.floor(hour * 4) / 4;
const PEOPLE = [1, 2, 3] as const;

/**
 * Hours by task and by what can be done ahead: holes, boxes, extensions and a cabinet on a new place before the outage;
 * the old panel stripped, cables drawn back, splices made and circuits tested in it; the rest after. With one, two or
 * three people, all at once or rolled over; the last hour to shut off, and where an inspector must have been.
 */
export const timePlan = ({
  work,
  book,
  runs,
  circuits,
  circuitsOf,
  terms,
  spaceAtSource,
  ...where
}: TimeAsk): TimeAnswer => {
  const wayOf = waysOf(runs);
  const hours = taskHours(work, book, wayOf, where);
  const barred = noRollOver(where, spaceAtSource);
  const rolls = terms.cutOver === 'roll-over' && barred === null;
  const day = workingDay(terms);
  const extra = taskHours(rollWork({ circuitsOf, wayOf, circuits }), book, wayOf, where);
  const rolling = (people: number) =>
    rolledOver({ hours: rolls ? hours : [...hours, ...extra], people, circuitsOf, wayOf, circuits });
  const offFor = (people: number) => (rolls ? rolling(people) : allAtOnce(hours, people));
  const off = offFor(terms.people);
  const shown = rolls ? rolling(terms.people).hours : hours;
  const crewHours = tidy(total(hours));
  const outageHours = tidy(off.house);
  const high = longOutage(off.houseTasks, terms.people);
  const goNoGo = quarterDown(terms.endsAt - high);
  const clock = terms.endsAt - terms.startsAt;

  const crews = PEOPLE.flatMap((people) => {
    const days = (all: number) => tidy(all / (people * day));
    const together = { people, cutOver: 'all at once' as const };
    const apart = { people, cutOver: 'roll-over' as const };
    const withRoll = rolls ? total(hours) : total(hours) + total(extra);
    const without = rolls ? total(hours) - total(extra) : total(hours);
    return [
      { ...together, days: days(without), outageHours: tidy(allAtOnce(hours.filter(isNoRoll), people).house) },
      ...(barred === null ? [{ ...apart, days: days(withRoll), outageHours: tidy(rolling(people).house) }] : []),
    ];
  });
  const remarks = [
    ...(off.house > day ? [{ id: 'outage over a day', say: say.overADay({ hours: round(off.house), day }) }] : []),
    ...(off.house <= day && high > clock
      ? [{ id: 'outage may pass the day', say: say.mayPass({ hours: round(high) }) }]
      : []),
    ...(terms.cutOver === 'roll-over' && barred !== null ? [{ id: 'no roll-over', say: say.noRollOver[barred] }] : []),
    ...(rolls ? [{ id: 'rolled over', say: say.rolled }] : []),
  ];
  return {
    crewHours,
    outageHours,
    plan: {
      days: tidy(crewHours / (terms.people * day)),
      byTask: byTask(shown),
      outage: [...circuits].sort(compareText).map((circuit) => ({ circuit, hours: tidy(off.circuit(circuit)) })),
      people: terms.people,
      cutOver: rolls ? 'roll-over' : 'all at once',
      crews,
      longOutageHours: tidy(high),
      goNoGo: off.house > 0 && goNoGo >= terms.startsAt ? goNoGo : null,
      holds: holdPoints(work),
      remarks,
    },
  };
};
const isNoRoll = ({ id }: TaskHours): boolean => id !== 'roll over';
const round = (hours: number): number => Math.round(hours * 10) / 10;

const rollWork = (ask: Omit<RollAsk, 'hours' | 'people'>): Work[] => {
  const quantity = rolledCircuits(ask).size;
  return quantity === 0 ? [] : [{ item: 'roll over', quantity, homeRuns: [], rule: null, alternate: null }];
};
const waysOf = (runs: TimeAsk['runs']): ReadonlyMap<Id, Way> => new Map(runs.map((run) => [run.homeRun, run.way]));
/** What rolling over adds to the work where it is asked for and can be: once for every circuit moved alone. */
export const rollOverWork = ({ terms, spaceAtSource, runs, ...ask }: Omit<TimeAsk, 'work'>): Work[] =>
  terms.cutOver === 'roll-over' && noRollOver(ask, spaceAtSource) === null
    ? rollWork({ ...ask, wayOf: waysOf(runs) })
    : [];
