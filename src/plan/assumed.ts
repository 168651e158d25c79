import type { AfciEntry, FeederPlan, Price } from '../facts/result';
import type { Verdict } from '../facts/ruling';
import type { Work } from '../facts/work';
import { circuitName, fieldSentence } from '../job/names';
import { toPointer } from '../job/pointer';
import type { Job } from '../job/schema';
import { compareText } from '../units/order';
import { isKnown } from '../units/types';
import { assumedWords as say } from '../words/en/assumed';

type Assumed = Price['assumed'];

/** Circuits whose AFCI cannot be told, by what it waits for; what most of them wait for first. */
const afciAssumed = (job: Job, afci: readonly AfciEntry[], verdicts: readonly Verdict[]): Assumed => {
  const waiting = new Map<string, string[]>();
  for (const { circuit } of afci.filter((a) => a.required === 'cannot be told')) {
    const own = verdicts.filter((v) => v.subject === circuit && v.rule.startsWith('AFCI')).flatMap((v) => v.unknown);
    const at = job.circuits.findIndex((c) => c.id === circuit);
    const otherwise = isKnown(job.code.edition) ? toPointer(['circuits', at, 'serves']) : '/code/edition';
    for (const path of new Set(own.length > 0 ? own : [otherwise]))
      waiting.set(path, [...(waiting.get(path) ?? []), circuitName(job.circuits[at]!)]);
  }
  // by what is said, not by place in the file: the order of its lists means nothing
  return [...waiting]
    .map(([id, names]) => ({ id, circuits: [...names].sort(compareText), field: fieldSentence(job, id) }))
    .sort((a, b) => b.circuits.length - a.circuits.length || compareText(a.field, b.field))
    .map(({ id, circuits, field }) => ({ id, say: `${field} ${say.afci({ circuits })}` }));
};

/** Things of a size nobody measured, in one sentence under the first of them by name. */
const sizesAssumed = ({ site }: Job): Assumed => {
  const of = (list: 'obstacles' | 'openings') =>
    site[list]
      .flatMap(({ id, kind, sizes }, i) =>
        isKnown(sizes) ? [] : [{ name: id, id: toPointer(['site', list, i, 'sizes']), kind }],
      )
      .sort((a, b) => compareText(a.kind, b.kind) || compareText(a.name, b.name));
  const things = [...of('obstacles'), ...of('openings')];
  return things.slice(0, 1).map(({ id }) => ({ id, say: say.sizes({ things: things.map((t) => t.kind) }) }));
};

/** Work that only an old house asks for. */
const OF_OLD_HOUSES: ReadonlySet<string> = new Set(['AFCI trouble', 'lead-safe set-up']);

/**
 * What stands in the price though nobody told it, and how it was taken: a field by JSON pointer, dearest kind first.
 * Nothing is left out of the price for it, unlike what the price waits for.
 */
export const assumedIn = (
  job: Job,
  afci: readonly AfciEntry[],
  verdicts: readonly Verdict[],
  work: readonly Work[],
  feeder: Pick<FeederPlan, 'outside'>,
): Assumed => {
  const field = (id: string, how: string) => ({ id, say: `${fieldSentence(job, id)} ${how}` });
  const old = work.some((w) => OF_OLD_HOUSES.has(w.item) && w.quantity > 0);
  return [
    ...afciAssumed(job, afci, verdicts),
    ...verdicts
      .filter((v) => v.rule === 'CARRY-OVER' && v.outcome === 'cannot be told')
      .flatMap((v) => v.unknown.map((id) => field(id, say.protection())))
      .sort((a, b) => compareText(a.say, b.say)),
    ...(isKnown(job.house.occupied) ? [] : [field('/house/occupied', say.occupied())]),
    ...(old && !isKnown(job.house.yearBuilt) ? [field('/house/yearBuilt', say.yearBuilt())] : []),
    ...sizesAssumed(job),
    ...(isKnown(feeder.outside) && feeder.outside > 0 ? [{ id: '/feeder/outside', say: say.feederOutside() }] : []),
  ];
};
