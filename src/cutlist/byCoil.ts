import { type Attempt, needed } from './attempt';
import type { Coil } from './model';
import { patterns } from './patterns';

const MOST_PATTERNS = 4000;

/**
 * Fills an attempt coil by coil, the shortest first: it has the fewest patterns, and the last coil takes what is left.
 * Strong where there are few coils of different lengths. Answers whether nothing within the limit was left untried.
 */
export const fillByCoil = (attempt: Attempt): boolean => {
  const { whole, lengths, keeping, room, budget } = attempt;
  const coils = attempt.free
    .flatMap((count, stock) => Array.from({ length: count }, () => stock))
    .sort((a, b) => whole.stocks[a]!.length - whole.stocks[b]!.length || a - b);
  const roomFrom = coils.map((_, k) => coils.slice(k).reduce((sum, stock) => sum + whole.stocks[stock]!.length, room));
  const remaining = whole.pieces.map((piece) => piece.count);
  const done: Coil[] = [];
  const failed = new Map<string, number>();
  const noKeeper = keeping.every((count) => count === 0);

  const place = (k: number, wasted: number): boolean => {
    if (budget.nodes-- <= 0) return false;
    const rest = needed(lengths, remaining);
    if (attempt.hopeless(wasted) || rest > (roomFrom[k] ?? room)) return true;
    const stock = coils[k];
    if (stock === undefined) return attempt.close(done, remaining);
    if (rest === 0) return true;
    const { length } = whole.stocks[stock]!;
    if (noKeeper && k === coils.length - 1)
      return attempt.close(
        [...done, { stock, counts: [...remaining] }],
        remaining.map(() => 0),
      );
    const key = `${k}|${remaining.join()}`;
    const tried = failed.get(key);
    if (tried !== undefined && tried <= wasted) return true;
    const before = attempt.bar;
    const found = patterns(lengths, remaining, 0, length, attempt.limit - wasted, MOST_PATTERNS, budget);
    let through = found.whole;
    for (const { counts, left } of found.list) {
      if (left === length) continue;
      for (const [i, count] of counts.entries()) remaining[i]! -= count;
      done.push({ stock, counts });
      through = place(k + 1, wasted + left) && through;
      done.pop();
      for (const [i, count] of counts.entries()) remaining[i]! += count;
      if (attempt.satisfied()) return through;
      if (budget.nodes <= 0) return false;
    }
    if (through && attempt.bar === before) failed.set(key, wasted);
    return through;
  };
  return place(0, 0);
};
