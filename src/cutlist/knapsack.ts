import type { Budget } from './remnants';

const NODES = 200_000;

/** The most valuable pieces that fit in `room`, at most the count there is of each. null where the search was too long. */
export const bestPattern = (
  pieces: readonly { readonly length: number; readonly count: number }[],
  values: readonly number[],
  room: number,
  budget: Budget,
): { readonly counts: readonly number[]; readonly value: number } | null => {
  const order = pieces
    .map((piece, i) => ({ ...piece, i, value: values[i]! }))
    .filter((piece) => piece.value > 1e-12 && piece.length <= room)
    .sort((a, b) => b.value / b.length - a.value / a.length || a.i - b.i);
  const taken = new Array<number>(pieces.length).fill(0);
  let best: readonly number[] = [...taken];
  let most = 0;
  const given = Math.min(NODES, budget.nodes);
  let nodes = given;
  const walk = (k: number, rest: number, value: number): void => {
    if (value > most + 1e-12) {
      most = value;
      best = [...taken];
    }
    const piece = order[k];
    if (!piece || nodes-- <= 0 || value + (rest * piece.value) / piece.length <= most + 1e-12) return;
    for (let n = Math.min(piece.count, Math.floor(rest / piece.length)); n >= 0; n--) {
      taken[piece.i] = n;
      walk(k + 1, rest - n * piece.length, value + n * piece.value);
    }
    taken[piece.i] = 0;
  };
  walk(0, room, 0);
  budget.nodes -= given - Math.max(0, nodes);
  return nodes > 0 ? { counts: best, value: most } : null;
};
