import type { Coil, Whole } from './model';
import { type Budget, fillKeepers, type Keeping, mostWorth, NEAR, type Packing } from './remnants';

/** One coil set with its keepers chosen: what both ways of filling it share. */
export interface Attempt {
  readonly whole: Whole;
  readonly lengths: readonly number[];
  /** Coils that keep nothing, by stock. */
  readonly free: readonly number[];
  readonly keeping: readonly number[];
  /** Most length the keepers can take together. */
  readonly room: number;
  readonly budget: Budget;
  /** More waste than this is not looked at. */
  limit: number;
  /** Nothing better wastes this much or less: all of it was looked at. */
  clear: number;
  /** Only packings worth more are wanted. */
  bar: number;
  best: Packing | null;
  /** The rest into the keepers, after `done`. Answers false where the budget ended. */
  readonly close: (done: readonly Coil[], rest: readonly number[]) => boolean;
  /** This much wasted, nothing better can come. */
  readonly hopeless: (wasted: number) => boolean;
  /** Nothing better is left: no remnant counts and a packing is found, or a better one would waste no more than was looked at. */
  readonly satisfied: () => boolean;
}

export const needed = (lengths: readonly number[], counts: readonly number[]): number =>
  counts.reduce((sum, count, i) => sum + count * lengths[i]!, 0);

export const attempt = (
  whole: Whole,
  all: readonly number[],
  keeping: Keeping,
  left: number,
  bar: number,
  clear: number,
  budget: Budget,
): Attempt => {
  const none = keeping.counts.every((count) => count === 0);
  const state: Attempt = {
    whole,
    lengths: whole.pieces.map((piece) => piece.length),
    free: all.map((count, i) => count - keeping.counts[i]!),
    keeping: keeping.counts,
    room: keeping.counts.reduce(
      (sum, count, i) => (count === 0 ? sum : sum + count * (whole.stocks[i]!.length - whole.keep)),
      0,
    ),
    budget,
    limit: left,
    clear,
    bar,
    best: null,
    close: (done, rest) => {
      const closed = fillKeepers(whole, keeping.counts, rest, budget, state.bar);
      if (closed.best) {
        state.best = { coils: [...done, ...closed.best.coils], credit: closed.best.credit };
        state.bar = closed.best.credit;
      }
      return closed.complete;
    },
    hopeless: (wasted) => mostWorth(whole, keeping.counts, left - wasted) <= state.bar + NEAR,
    satisfied: () => (none ? state.best !== null : state.hopeless(state.clear + 1)),
  };
  return state;
};
