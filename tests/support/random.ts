/** Small seeded generator (mulberry32, public domain algorithm): the same seed gives the same jobs everywhere. */
export interface Random {
  next(): number;
  int(from: number, to: number): number;
  pick<T>(list: readonly T[]): T;
  chance(share: number): boolean;
}

export const random = (seed: number): Random => {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const int = (from: number, to: number) => from + Math.floor(next() * (to - from + 1));
  return { next, int, pick: (list) => list[int(0, list.length - 1)]!, chance: (share) => next() < share };
};
