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

/** A packing to beat: the best of best-fit with each stock preferred. null where none of them places every piece. */
export const firstAnswer = (whole: Whole): readonly Coil[] | null => {
  let best: readonly Coil[] | null = null;
  for (const truckFirst of [true, false])
    for (const preferred of [-1, ...whole.stocks.keys()]) {
      const coils = bestFit(whole, preferred, truckFirst);
      if (coils && (best === null || netOf(whole, coils) < netOf(whole, best))) best = coils;
    }
  return best;
};
