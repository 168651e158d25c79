/**
 * Among how many cables each shared thing is divided while ways are compared. What a cable really adds depends on who
 * else goes there, so an answer is sought for cables that go alone and again for cables that go together, and the one
 * that is cheaper when everything is counted once is kept.
 */
export interface Share {
  readonly hole: number;
  readonly board: number;
  readonly patch: number;
  readonly tile: number;
}

/** Two-wire cables that share a bored row (310.15(C)(1) keeps four of them at full rating). */
const IN_ROW = 4;
/** Side by side on a 12 in board with a cable's width between. Common practice, no source. */
export const ON_BOARD = 10;
/** Crews pull at most three cables through one hole: more will not pass without damage. Common practice, no source. */
export const IN_HOLE = 3;

export const ALONE: Share = { hole: IN_ROW, board: 1, patch: 1, tile: 1 };
export const together = (cables: number): Share => ({
  hole: IN_ROW,
  board: Math.max(1, Math.min(cables, ON_BOARD)),
  patch: Math.max(1, cables),
  tile: Math.max(1, cables),
});
/** Smallest share a thing can ever fall to: for bounds from below. */
export const leastShare = (cables: number): Share => ({ ...together(cables), hole: IN_HOLE });
