import type { Budget } from './remnants';

/** Ways to fill one coil. Piece lengths longest first; `counts` = pieces not yet cut. */
export interface Pattern {
  readonly counts: readonly number[];
  readonly left: number;
}

/** Sums are looked up in a bit set while lengths stay below this many units; above it only totals bound the search. */
const MOST_BITS = 20_000;

/** One node of the whole search is worth this many steps here; no list takes more than MOST_STEPS. */
const STEPS_A_NODE = 64;
const MOST_STEPS = 200_000;

/** reach[j]: bit s is set where some of the pieces from type j on add up to s, for s up to `room`. */
const reachable = (lengths: readonly number[], counts: readonly number[], from: number, room: number): bigint[] => {
  const mask = (1n << BigInt(room + 1)) - 1n;
  const reach: bigint[] = new Array(lengths.length + 1).fill(1n);
  for (let j = lengths.length - 1; j >= from; j--) {
    let bits = reach[j + 1]!;
    const length = lengths[j]!;
    // Binary splitting: 1, 2, 4 … pieces at once reach every number of them.
    for (let left = Math.min(counts[j]!, Math.floor(room / length)), step = 1; left > 0; step *= 2) {
      const take = Math.min(step, left);
      bits |= (bits << BigInt(take * length)) & mask;
      left -= take;
    }
    reach[j] = bits;
  }
  return reach;
};

/**
 * Patterns for a coil of `room` left after the lead piece: from piece type `from` on, at most `spare` left over, and
 * no piece not taken that would still fit (a coil with room for one more is never better). Least left over first.
 * `whole` is false where the list was cut off at `most` or the
 * steps ran out.
 */
export const patterns = (
  lengths: readonly number[],
  counts: readonly number[],
  from: number,
  room: number,
  spare: number,
  most: number,
  budget: Budget,
): { readonly list: readonly Pattern[]; readonly whole: boolean } => {
  const list: Pattern[] = [];
  const taken = new Array<number>(lengths.length).fill(0);
  const bits = room <= MOST_BITS ? reachable(lengths, counts, from, room) : null;
  const suffix = new Array<number>(lengths.length + 1).fill(0);
  for (let j = lengths.length - 1; j >= from; j--) suffix[j] = suffix[j + 1]! + lengths[j]! * counts[j]!;
  let whole = true;
  let steps = Math.max(0, Math.min(MOST_STEPS, budget.nodes * STEPS_A_NODE));
  const given = steps;

  const hopeless = (j: number, rest: number): boolean => {
    if (rest - suffix[j]! > spare) return true;
    if (!bits) return false;
    const least = Math.max(0, rest - spare);
    const window = (bits[j]! & ((1n << BigInt(rest + 1)) - 1n)) >> BigInt(least);
    return window === 0n;
  };
  const fits = (rest: number): boolean => {
    for (let j = lengths.length - 1; j >= from && lengths[j]! <= rest; j--) if (counts[j]! > taken[j]!) return true;
    return false;
  };
  const walk = (j: number, rest: number): void => {
    if (list.length >= most || steps-- <= 0) {
      whole = false;
      return;
    }
    if (hopeless(j, rest)) return;
    if (j === lengths.length) {
      if (!fits(rest)) list.push({ counts: [...taken], left: rest });
      return;
    }
    const length = lengths[j]!;
    for (let n = Math.min(counts[j]!, Math.floor(rest / length)); n >= 0; n--) {
      taken[j] = n;
      walk(j + 1, rest - n * length);
    }
    taken[j] = 0;
  };
  walk(from, room);
  budget.nodes -= Math.floor((given - Math.max(0, steps)) / STEPS_A_NODE);
  return { list: list.sort((a, b) => a.left - b.left), whole };
};
