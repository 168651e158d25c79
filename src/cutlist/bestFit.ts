import { type Coil, netOf, type Whole } from './model';

interface Open {
  stock: number;
  left: number;
  readonly counts: number[];
}

/** Longest piece first into the coil it fills best; a new coil where none has room: what lies in the truck, then `preferred`, then the cheapest that holds it. */
const bestFit = (whole: Whole, preferred: number, truckFirst: boolean): Open[] | null => {
  const have = whole.stocks.map((stock) => stock.have);
  const coils: Open[] = [];
  const cheapest = (length: number): number => {
    const fits = whole.stocks
      .map((stock, i) => ({ ...stock, i }))
      .filter((stock) => have[stock.i]! > 0 && stock.length >= length);
    const free = truckFirst ? fits.filter((stock) => stock.price === 0) : [];
    if (free.length > 0) return free.at(-1)!.i;
    if (fits.some((stock) => stock.i === preferred)) return preferred;
    return fits.sort((a, b) => a.price - b.price)[0]?.i ?? -1;
  };
  for (const [i, { length, count }] of whole.pieces.entries())
    for (let n = 0; n < count; n++) {
      let into: Open | undefined;
      for (const coil of coils) if (coil.left >= length && (into === undefined || coil.left < into.left)) into = coil;
      if (!into) {
        const stock = cheapest(length);
        if (stock < 0) return null;
        have[stock]!--;
        into = { stock, left: whole.stocks[stock]!.length, counts: whole.pieces.map(() => 0) };
        coils.push(into);
      }
      into.left -= length;
      into.counts[i]!++;
    }
  // A coil that is mostly empty may be a shorter one.
  for (const coil of coils) {
    const cut = whole.stocks[coil.stock]!.length - coil.left;
    for (const [i, stock] of whole.stocks.entries()) {
      if (have[i]! <= 0 || stock.length < cut) continue;
      const now = netOf(whole, [coil]);
      if (netOf(whole, [{ stock: i, counts: coil.counts }]) < now) {
        have[coil.stock]!++;
        have[i]!--;
        coil.stock = i;
        coil.left = stock.length - cut;
      }
    }
  }
  return coils;
};

/** Pieces × coils looked at before fewer stocks are tried. */
const MOST_LOOKS = 20_000_000;
const dearness = (whole: Whole, stock: number): number => whole.stocks[stock]!.price / whole.stocks[stock]!.length;

/** A packing to beat: the best of best-fit with each stock preferred. null where none of them places every piece. */
export const firstAnswer = (whole: Whole): readonly Coil[] | null => {
  let best: readonly Coil[] | null = null;
  const many = whole.pieces.reduce((sum, piece) => sum + piece.count, 0);
  const tries = Math.max(2, Math.min(whole.stocks.length + 1, Math.floor(MOST_LOOKS / many ** 2)));
  const cheapestFirst = [...whole.stocks.keys()].sort((a, b) => dearness(whole, a) - dearness(whole, b) || a - b);
  for (const truckFirst of [true, false])
    for (const preferred of [-1, ...cheapestFirst].slice(0, tries)) {
      const coils = bestFit(whole, preferred, truckFirst);
      if (coils && (best === null || netOf(whole, coils) < netOf(whole, best))) best = coils;
    }
  return best;
};
