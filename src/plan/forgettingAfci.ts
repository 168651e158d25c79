import type { Price } from '../facts/result';
import type { Work } from '../facts/work';
import type { Job, PriceBook } from '../job/schema';
import { type Breaker, breakerItem, breakersOf } from '../loads/breakers';
import { charged } from '../pricing/charged';
import type { Id } from '../units/types';

const piece = (item: string, quantity: number): Work => ({ item, quantity, homeRuns: [], rule: null, alternate: null });

/**
 * The dear mistake: every breaker that is AFCI only because of this job, priced as the plain one it would have been,
 * and no time for what AFCI trips over. Overhead, profit and tax in it.
 */
export const forgettingAfci = (
  job: Job,
  book: PriceBook,
  priced: readonly Breaker[],
  gained: readonly Id[],
  gfci: readonly Id[],
  oldWiring: boolean,
): Price['forgettingAfci'] => {
  const plain = new Map(breakersOf(job, [], gfci).map((b) => [b.id, b]));
  const work = priced.flatMap((b): Work[] => {
    const before = plain.get(b.id);
    const [to, from] = [breakerItem(b), before ? breakerItem(before) : null];
    return to === null || from === null || to === from ? [] : [piece(to, 1), piece(from, -1)];
  });
  const trouble = oldWiring && gained.length > 0 ? [piece('AFCI trouble', gained.length)] : [];
  return { circuits: gained.length, cents: charged([...work, ...trouble], book, job.practice).cents };
};
