import type { Mills } from '../units/money';
import type { Packer, Packing } from './packing';

/** One way for one home run, priced without what it shares with others: boxes, spots, AFCI. */
export interface Choice {
  /** Stable text: decides ties. */
  readonly id: string;
  /** Index of the splice spot it needs, or null. */
  readonly spot: number | null;
  /** Index of its load among the packer's types, where the spot needs boxes; else null. */
  readonly load: number | null;
  readonly mills: Mills;
  /** Indices of the AFCI penalties it brings. */
  readonly penalties: readonly number[];
}
export interface Spot {
  readonly key: string;
  /** Fixed price of having it. */
  readonly mills: Mills;
  /** An old can kept for splices needs no boxes. */
  readonly boxes: boolean;
}
export interface Problem {
  /** Per home run, sorted by id; choices sorted by id and never empty. */
  readonly runs: readonly (readonly Choice[])[];
  readonly spots: readonly Spot[];
  readonly penalties: readonly Mills[];
  readonly maxSpots: number;
  readonly packer: Pick<Packer, 'types' | 'pack' | 'floor'>;
}
export interface Assignment {
  /** Index of the choice of each run. */
  readonly picks: readonly number[];
  readonly mills: Mills;
}

type Counts = number[];
const pick = (problem: Problem, picks: readonly number[], run: number): Choice => problem.runs[run]![picks[run]!]!;

/** What a choice of ways costs in all: the one true objective. Infinity where boxes or the number of spots do not allow it. */
export const costOf = (problem: Problem, picks: readonly number[]): Mills => {
  let sum = 0;
  const at = new Map<number, Counts>();
  const hit = new Set<number>();
  for (let r = 0; r < picks.length; r++) {
    const c = pick(problem, picks, r);
    sum += c.mills;
    for (const p of c.penalties) hit.add(p);
    if (c.spot === null) continue;
    const counts = at.get(c.spot) ?? problem.packer.types.map(() => 0);
    if (c.load !== null) counts[c.load]!++;
    at.set(c.spot, counts);
  }
  if (at.size > problem.maxSpots) return Number.POSITIVE_INFINITY;
  for (const p of hit) sum += problem.penalties[p]!;
  for (const [spot, counts] of at) {
    sum += problem.spots[spot]!.mills;
    if (!problem.spots[spot]!.boxes) continue;
    const packed = problem.packer.pack(counts);
    if (!packed) return Number.POSITIVE_INFINITY;
    sum += packed.mills;
  }
  return sum;
};

/** The boxes at each spot of an assignment. */
export const packingsOf = (problem: Problem, picks: readonly number[]): ReadonlyMap<number, Packing> => {
  const at = new Map<number, Counts>();
  picks.forEach((_, r) => {
    const c = pick(problem, picks, r);
    if (c.spot === null || c.load === null) return;
    const counts = at.get(c.spot) ?? problem.packer.types.map(() => 0);
    counts[c.load]!++;
    at.set(c.spot, counts);
  });
  return new Map([...at].map(([spot, counts]) => [spot, problem.packer.pack(counts)!]));
};
