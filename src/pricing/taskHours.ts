import type { Work } from '../facts/work';
import type { PriceBook, Way } from '../job/schema';
import { compareText } from '../units/order';
import type { Id } from '../units/types';
import { type BookIndex, indexBook } from './assemblies';
import { assemblyOf, CONDITIONS, type DoneWhen, type When } from './items';

/** Where the new cabinet hangs and what feeds it. */
export interface Where {
  /** Does the new cabinet take an old one's place on the wall? See `takesOldPlace`. */
  readonly inOldPlace: boolean;
  /** Is the feeder kept that is live in the old cabinet until the outage? */
  readonly feederKept: boolean;
}
/** Likely hours, and the ends of their range, of one task in one part of the day, for one piece of work. */
export interface TaskHours {
  readonly id: string;
  readonly item: string;
  readonly when: When;
  readonly low: number;
  readonly hours: number;
  readonly high: number;
  /** The home runs it is for; none = the whole job. */
  readonly homeRuns: readonly Id[];
}

/** Ways by which the home run's own conductors end in the new panel: landed only once the old panel is dead. */
export const LANDS_IN_OUTAGE: ReadonlySet<Way> = new Set([
  'stays',
  'reuse',
  'splice in new panel',
  'stays on old panel',
]);

/**
 * The part of a piece of work that waits for the outage, and when the rest is done. What stands on the old cabinet's
 * place, or ends on conductors live in it, is worked on dead (OSHA 29 CFR 1910.333(a)(1), from memory; the order is
 * common practice, no source): nothing is landed in a cabinet that does not hang yet.
 */
const outageShare = (when: DoneWhen, landsDead: number, place: Where): readonly [share: number, rest: When] => {
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
const hoursOf = ({ item, quantity, homeRuns }: Work, books: BookIndex, wayOf: ReadonlyMap<Id, Way>, place: Where) => {
  const parts = assemblyOf(item);
  if (!parts) return [];
  const dead = homeRuns.filter((id) => LANDS_IN_OUTAGE.has(wayOf.get(id) ?? 'reuse'));
  // Where no home run is named nothing says the work can be done ahead: it counts in the outage.
  const landsDead = homeRuns.length === 0 ? 1 : dead.length / homeRuns.length;
  const [inOutage, rest] = outageShare(parts.when, landsDead, place);
  const byWay = parts.when === 'by way' && !place.inOldPlace;
  const share: readonly (readonly [When, number, readonly Id[]])[] = [
    ['outage', inOutage, byWay ? dead : homeRuns],
    [rest, 1 - inOutage, byWay ? homeRuns.filter((id) => !dead.includes(id)) : homeRuns],
  ];
  return parts.tasks.flatMap((task) => {
    const entry = books.tasks.get(task.id);
    return share
      .filter(([, part]) => part !== 0 && entry)
      .map(([when, part, ids]): TaskHours => {
        const times = part * quantity * task.quantity;
        return {
          id: task.id,
          item,
          when,
          low: times * entry!.low,
          hours: times * entry!.likely,
          high: times * entry!.high,
          homeRuns: ids,
        };
      });
  });
};

/** All the hours of the work, piece by piece; what slows the house down slows every part alike, in the outage too. */
export const taskHours = (
  work: readonly Work[],
  book: PriceBook,
  wayOf: ReadonlyMap<Id, Way>,
  place: Where,
): TaskHours[] => {
  const books = indexBook(book);
  const inOrder = [...work].sort((a, b) => compareText(a.item, b.item));
  const base = inOrder
    .filter(({ item }) => !CONDITIONS.has(item))
    .flatMap((piece) => hoursOf(piece, books, wayOf, place));
  const total = base.reduce((all, entry) => all + entry.hours, 0);
  if (total <= 0) return base;
  const slowed = inOrder
    .filter(({ item }) => CONDITIONS.has(item))
    .flatMap(({ item, quantity }) => {
      const task = books.tasks.get(item);
      if (!task) return [];
      return base.map((entry): TaskHours => {
        const share = (quantity * entry.hours) / total;
        return { ...entry, id: item, item, low: share * task.low, hours: share * task.likely, high: share * task.high };
      });
    });
  return [...base, ...slowed];
};
