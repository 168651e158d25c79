import type { Uncut } from '../cutlist/cutList';
import type { RoutingAnswer } from '../facts/routing';
import { cableName, circuitName, fieldSentence, thingNamed } from '../job/names';
import { toPointer } from '../job/pointer';
import type { Job, Option, PriceBook } from '../job/schema';
import { RATE } from '../pricing/unusable';
import { formatFeetInches } from '../units/length';
import { compareText } from '../units/order';
import { type Id, isKnown } from '../units/types';
import { bookItemWords as items } from '../words/en/bookItems';
import { fieldWords } from '../words/en/fields';
import { planWords as say } from '../words/en/plan';
import type { RequiredWork } from './required';

/** What a price waits for: a price book id or a JSON pointer, and the same in a sentence. */
export interface Missing {
  readonly id: string;
  readonly say: string;
}

/** A breaker whose rating nobody read: no price book has it. */
const NO_RATING = /^breaker:rating unknown \((.+)\)$/;
export const unratedBreaker = (breaker: Id): string => `breaker:rating unknown (${breaker})`;
/** The ratings, by JSON pointer, that the breaker named by a price book id waits for: those of its circuit and of the partner. */
export const unratedPaths = (job: Job, id: string): string[] => {
  const breaker = NO_RATING.exec(id)?.[1];
  return job.circuits.flatMap((c, i) =>
    breaker !== undefined && (c.id === breaker || c.partner === breaker) && !isKnown(c.amps)
      ? [toPointer(['circuits', i, 'amps'])]
      : [],
  );
};
const NO_LENGTH = 'length unknown:';
const MOVE = 'move:';
const NO_PROFIT = 'profit';

/** Why the price book has nothing for an entry, told by what the work is for. */
const noPrice = (job: Job, book: PriceBook, work: readonly RequiredWork[], id: string): string => {
  if (id === RATE) return items.noRate;
  const material = book.materials.find((m) => m.id === id);
  if (material) return items.noMoney({ entry: items.material(id), dollars: material.dollars });
  if (book.tasks.some((t) => t.id === id)) return items.noHours({ entry: items.task(id) });
  const unrated = NO_RATING.exec(id)?.[1];
  const circuit = job.circuits.find((c) => c.id === unrated);
  if (circuit) return items.noRating({ circuit: circuitName(circuit) });
  if (id.startsWith(NO_LENGTH)) {
    const homeRuns = work.filter((w) => w.item === id).flatMap((w) => w.homeRuns);
    const of = fieldWords.list([...new Set(homeRuns)].sort(compareText).map((h) => cableName(job, h)));
    return items.noLength({ cable: items.entry(`cable:${id.slice(NO_LENGTH.length)}`), of });
  }
  if (id.startsWith(MOVE)) return items.noMovePrice({ thing: thingNamed(job, id.slice(MOVE.length)) });
  return id === NO_PROFIT ? items.noProfit : items.noPrice({ entry: items.entry(id) });
};

export const missingItems = (
  job: Job,
  book: PriceBook,
  work: readonly RequiredWork[],
  ids: readonly string[],
): Missing[] => ids.map((id) => ({ id, say: noPrice(job, book, work, id) }));

export const missingFields = (job: Job, pointers: readonly string[]): Missing[] =>
  pointers.map((id) => ({ id, say: fieldSentence(job, id) }));

/** A cable that no way leads to is in no price, or at a price it cannot have. */
export const missingWays = (job: Job, { runs, feeder }: RoutingAnswer): Missing[] => {
  const by = (ids: readonly Id[]) => fieldWords.list(ids.map((id) => thingNamed(job, id)));
  return [
    ...runs.flatMap((r) =>
      r.blockedBy.length > 0
        ? [
            {
              id: toPointer(['homeRuns', job.homeRuns.findIndex((h) => h.id === r.homeRun)]),
              say: say.unreachable({ cable: cableName(job, r.homeRun), by: by(r.blockedBy) }),
            },
          ]
        : [],
    ),
    ...(feeder.blockedBy.length > 0 ? [{ id: '/feeder', say: say.feederBlocked({ by: by(feeder.blockedBy) }) }] : []),
  ];
};

/** A new feeder is measured from where it comes into the room, once that is drawn, and outside it along its way. */
export const missingFeeder = (job: Job, { serviceDisconnect }: Option, { feeder }: RoutingAnswer): Missing[] => {
  if (feeder.way !== 'replaced' || feeder.blockedBy.length > 0) return [];
  if (feeder.legs.length === 0) return [{ id: '/feeder/path', say: say.feederNotDrawn() }];
  const from = serviceDisconnect ? null : job.feeder.from.panel;
  return isKnown(feeder.outside) ? [] : [{ id: '/feeder/outside', say: say.feederUnmeasured({ from }) }];
};

/** Coils too short for the longest piece, by the entry of the book that is the longest; else by the truck. */
export const missingCoils = (book: PriceBook, list: readonly Uncut[]): Missing[] =>
  list.map(({ cable, piece, coil }) => {
    const at = book.materials.findIndex((m) => m.id === `cable:${cable}@${coil / 12}`);
    const v = { cable: items.material(`cable:${cable}`), piece: formatFeetInches(piece), coil: formatFeetInches(coil) };
    return { id: at < 0 ? '/stock' : toPointer(['priceBook', 'materials', at]), say: say.coilTooShort(v) };
  });

export const sortedMissing = (list: readonly Missing[]): Missing[] => [...list].sort((a, b) => compareText(a.id, b.id));
