import { compareText } from '../units/order';
import type { Id } from '../units/types';
import { type Problem, packingsOf } from './choice';
import type { PackedBox } from './packing';
import type { Posed } from './problem';
import type { BoxSite } from './sites';

/** A box where it hangs, with the cables joined in it. */
export interface Hung {
  /** Index of its spot in the problem. */
  readonly spot: number;
  readonly site: BoxSite;
  readonly packed: Pick<PackedBox, 'kind' | 'fillIn3'>;
  readonly homeRuns: readonly Id[];
}

/** Boxes at every spot in use, all at the spot itself, their cables given out by id. */
export const hungAt = (posed: Posed, problem: Problem, picks: readonly number[]): Hung[] => {
  const packings = packingsOf(problem, picks);
  return problem.spots.flatMap((spot, j): Hung[] => {
    const packing = spot.boxes ? packings.get(j) : undefined;
    if (!packing) return [];
    const here = posed.facts.filter((_, r) => problem.runs[r]![picks[r]!]!.spot === j);
    const queues = problem.packer.types.map((t) => here.filter((f) => f.load.key === t.key));
    const site = posed.sites.get(spot.key)!;
    return packing.boxes.map((packed) => ({
      spot: j,
      site,
      packed,
      homeRuns: packed.counts
        .flatMap((n, t) => queues[t]!.splice(0, n))
        .map((f) => f.id)
        .sort(compareText),
    }));
  });
};
