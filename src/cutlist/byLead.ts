import { type Attempt, needed } from './attempt';
import type { Coil } from './model';
import { patterns } from './patterns';

const MOST_PATTERNS = 400;

/**
 * Fills an attempt led by pieces: the longest piece not yet placed goes to the keepers' pool or leads a free coil, filled
 * by a pattern. Strong where there are many coils alike. Answers whether nothing within the limit was left untried.
 */
export const fillByLead = (attempt: Attempt): boolean => {
  const { whole, lengths, keeping, room, budget } = attempt;
  const free = [...attempt.free];
  const remaining = whole.pieces.map((piece) => piece.count);
  const pool = lengths.map(() => 0);
  const done: Coil[] = [];
  const failed = new Map<string, number>();
  const severalKeepers = keeping.reduce((sum, count) => sum + count, 0) > 1;
  const roomFree = (): number => free.reduce((sum, count, i) => sum + count * whole.stocks[i]!.length, 0);

  const lead = (first: number, wasted: number, pooled: number): boolean => {
    const length = lengths[first]!;
    let through = true;
    for (const [i, stock] of whole.stocks.entries()) {
      if (free[i] === 0 || stock.length < length) continue;
      remaining[first]!--;
      free[i]!--;
      const found = patterns(
        lengths,
        remaining,
        first,
        stock.length - length,
        attempt.limit - wasted,
        MOST_PATTERNS,
        budget,
      );
      through = found.whole && through;
      for (const { counts, left } of found.list) {
        for (const [k, count] of counts.entries()) remaining[k]! -= count;
        done.push({ stock: i, counts: counts.map((count, k) => (k === first ? count + 1 : count)) });
        through = place(wasted + left, pooled, first) && through;
        done.pop();
        for (const [k, count] of counts.entries()) remaining[k]! += count;
        if (attempt.satisfied() || budget.nodes <= 0) break;
      }
      free[i]!++;
      remaining[first]!++;
      if (attempt.satisfied()) return through;
      if (budget.nodes <= 0) return false;
    }
    return through;
  };

  /** `led` = the length that led the last coil: it cannot go to the pool any more, or the same choice would come twice. */
  const place = (wasted: number, pooled: number, led: number): boolean => {
    if (budget.nodes-- <= 0) return false;
    if (attempt.hopeless(wasted) || needed(lengths, remaining) + pooled > roomFree() + room) return true;
    const first = remaining.findIndex((count) => count > 0);
    const coilsLeft = free.some((count) => count > 0);
    if (!coilsLeft)
      return attempt.close(
        done,
        remaining.map((count, i) => count + pool[i]!),
      );
    // A coil without a piece belongs to a smaller set.
    if (first < 0) return true;
    const key = `${remaining.join()}|${free.join()}|${severalKeepers ? pool.join() : pooled}|${led}`;
    const tried = failed.get(key);
    if (tried !== undefined && tried <= wasted) return true;
    const before = attempt.bar;
    let through = true;
    if (led !== first && pooled + lengths[first]! <= room) {
      remaining[first]!--;
      pool[first]!++;
      through = place(wasted, pooled + lengths[first]!, led);
      remaining[first]!++;
      pool[first]!--;
    }
    if (!attempt.satisfied()) through = lead(first, wasted, pooled) && through;
    if (through && attempt.bar === before) failed.set(key, wasted);
    return through;
  };
  return place(0, 0, -1);
};
