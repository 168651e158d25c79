import type { Coil, Whole } from './model';
import { relaxed, type Use } from './relaxation';

/** Few enough pieces for the search to finish what the relaxation leaves over. */
const FEW = 24;

/** Whole coils out of a relaxed answer: what it uses once or more, at least its most used pattern; then again with what is left. */
export const dive = (
  whole: Whole,
  first: readonly Use[],
  finish: (rest: Whole) => readonly Coil[] | null,
): readonly Coil[] | null => {
  const coils: Coil[] = [];
  let rest = whole.pieces.map((piece) => piece.count);
  let have = whole.stocks.map((stock) => stock.have);
  let uses = first;
  for (;;) {
    const sorted = [...uses].sort((a, b) => b.times - a.times);
    const whole1 = sorted.filter((use) => use.times >= 1 - 1e-6);
    for (const use of whole1.length > 0 ? whole1 : sorted.slice(0, 1))
      for (let n = Math.max(1, Math.floor(use.times + 1e-6)); n > 0 && have[use.stock]! > 0; n--) {
        const counts = use.counts.map((count, i) => Math.min(count, rest[i]!));
        if (counts.every((count) => count === 0)) break;
        coils.push({ stock: use.stock, counts });
        rest = rest.map((count, i) => count - counts[i]!);
        have = have.map((count, i) => (i === use.stock ? count - 1 : count));
      }
    const kept = whole.pieces
      .map((piece, i) => ({ length: piece.length, count: rest[i]!, i }))
      .filter((piece) => piece.count > 0);
    if (kept.length === 0) return coils;
    const many = kept.reduce((sum, piece) => sum + piece.count, 0);
    const smaller: Whole = {
      stocks: whole.stocks.map((stock, i) => ({ ...stock, have: Math.min(have[i]!, many) })),
      pieces: kept.map(({ length, count }) => ({ length, count })),
      total: kept.reduce((sum, piece) => sum + piece.length * piece.count, 0),
      keep: whole.keep,
    };
    const back = (coil: Coil): Coil => {
      const counts = whole.pieces.map(() => 0);
      for (const [k, count] of coil.counts.entries()) counts[kept[k]!.i] = count;
      return { stock: coil.stock, counts };
    };
    if (many <= FEW) {
      const last = finish(smaller);
      return last && [...coils, ...last.map(back)];
    }
    const next = relaxed(smaller);
    if (!next || next.uses.length === 0) {
      const last = finish(smaller);
      return last && [...coils, ...last.map(back)];
    }
    uses = next.uses.map((use) => ({ ...back(use), times: use.times }));
  }
};
