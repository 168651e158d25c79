import type { RoutingAnswer } from '../facts/routing';
import { cableName, circuitName, fieldSentence, thingNamed } from '../job/names';
import { toPointer } from '../job/pointer';
import type { Job } from '../job/schema';
import { compareText } from '../units/order';
import type { Id } from '../units/types';
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
const NO_LENGTH = 'length unknown:';
const MOVE = 'move:';
const NO_PROFIT = 'profit';

/** Why the price book has nothing for an entry, told by what the work is for. */
const noPrice = (job: Job, work: readonly RequiredWork[], id: string): string => {
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

export const missingItems = (job: Job, work: readonly RequiredWork[], ids: readonly string[]): Missing[] =>
  ids.map((id) => ({ id, say: noPrice(job, work, id) }));

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

export const sortedMissing = (list: readonly Missing[]): Missing[] => [...list].sort((a, b) => compareText(a.id, b.id));
