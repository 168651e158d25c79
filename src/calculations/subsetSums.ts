/** One thing that may be taken: how much it weighs (whole number) and whether it takes a place. */
export interface SumItem {
  readonly weight: number;
  readonly place: 0 | 1;
}

/** Every (places taken, weight) that some choice of items reaches, each remembered by the first item that reached it. */
export interface SubsetSums {
  reached(places: number, weight: number): boolean;
  /** Positions of the items of one choice that reaches it. */
  choice(places: number, weight: number): Set<number>;
}

const WORD = 32;

/**
 * Subset sums up to `most`, bounded by count, over bit sets: a row of bits per number of places, shifted by each item's weight. An
 * item index is written once per cell, when its bit first appears, so a choice is read back without keeping stages.
 */
export const subsetSums = (items: readonly SumItem[], most: number): SubsetSums => {
  const width = most + 1;
  const places = items.reduce((sum, item) => sum + item.place, 0);
  const words = Math.ceil(width / WORD);
  const rows = Array.from({ length: places + 1 }, () => new Uint32Array(words));
  const firstBy = new Int16Array((places + 1) * width).fill(-1);
  rows[0]![0] = 1;

  // Bits past `most` in the last word belong to no sum.
  const lastWord = width % WORD === 0 ? -1 : (1 << (width % WORD)) - 1;
  const mark = (fresh: number, row: number, word: number, item: number) => {
    for (let bits = fresh; bits !== 0; bits &= bits - 1)
      firstBy[row * width + word * WORD + 31 - Math.clz32(bits & -bits)] = item;
  };
  /** row `to` |= row `from` << weight. From the top down, so that a row shifted into itself reads what was there before. */
  const shift = (from: number, to: number, weight: number, item: number) => {
    const [source, target] = [rows[from]!, rows[to]!];
    const [whole, part] = [Math.floor(weight / WORD), weight % WORD];
    for (let word = words - 1; word >= whole; word--) {
      const high = source[word - whole]! << part;
      const low = part > 0 && word > whole ? source[word - whole - 1]! >>> (WORD - part) : 0;
      const fresh = (high | low) & ~target[word]! & (word === words - 1 ? lastWord : -1);
      if (fresh === 0) continue;
      target[word] = target[word]! | fresh;
      mark(fresh, to, word, item);
    }
  };
  let taken = 0;
  for (const [i, { weight, place }] of items.entries()) {
    for (let row = taken; row >= 0; row--) shift(row, row + place, weight, i);
    taken += place;
  }
  return {
    reached: (row, weight) =>
      row >= 0 && row <= places && weight >= 0 && weight < width
        ? ((rows[row]![Math.floor(weight / WORD)]! >>> (weight % WORD)) & 1) === 1
        : false,
    choice: (row, weight) => {
      const chosen = new Set<number>();
      let [at, left] = [row, weight];
      while (at > 0 || left > 0) {
        const i = firstBy[at * width + left]!;
        if (i < 0) throw new Error('asked for a sum that was not reached');
        chosen.add(i);
        at -= items[i]!.place;
        left -= items[i]!.weight;
      }
      return chosen;
    },
  };
};
