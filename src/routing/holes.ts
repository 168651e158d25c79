import { dot } from '../geometry/vector';
import type { Cable } from '../standards/cable';
import { cableTrade } from '../standards/cableNames';
import { compareText } from '../units/order';
import type { Id, In, Pt, Pt3 } from '../units/types';
import { toFrame } from './networkFrame';
import { regionAt } from './networkFraming';
import { IN_HOLE } from './share';
import type { Network } from './types';

const NOISE = 1e-6;

/** Where a straight stretch crosses joists that are bored, in order along it, half-open (from, to]. */
export const joistCrossings = (network: Pick<Network, 'frame' | 'framing'>, from: Pt3, to: Pt3): Pt3[] => {
  const [p, q]: [Pt, Pt] = [toFrame(network.frame, [from[0], from[1]]), toFrame(network.frame, [to[0], to[1]])];
  const region = network.framing[regionAt(network.framing, [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2])];
  if (!region || region.boring === 'free') return [];
  const a = (dot(region.normal, p) - region.first) / region.spacing;
  const b = (dot(region.normal, q) - region.first) / region.spacing;
  const [low, high] = a < b ? [a, b] : [b, a];
  const points: Pt3[] = [];
  for (let k = Math.floor(low + NOISE) + 1; k <= Math.floor(high + NOISE); k++) {
    const t = (k - a) / (b - a);
    points.push([0, 1, 2].map((i) => from[i]! + (to[i]! - from[i]!) * t) as unknown as Pt3);
  }
  return a < b ? points : points.reverse();
};

export interface Hole {
  readonly at: Pt3;
  readonly diameter: In;
  readonly homeRuns: readonly Id[];
}
export interface InHole {
  readonly homeRun: Id;
  readonly cable: Cable;
}
/** Smallest bit for a set of cables, inches; null = no hole the joist allows takes them. */
export type HoleFor = (cables: readonly Cable[]) => In | null;

/**
 * Packs the cables of one row through one joist into the fewest holes, then the smallest: exact over the ways of
 * splitting them. A single cable always gets its hole, judged later by the boring rule.
 */
export const makeHolePacker = (holeFor: HoleFor) => {
  const seen = new Map<string, readonly (readonly number[])[]>();
  const diameterOf = (cables: readonly Cable[]): In | null => {
    const found = holeFor(cables);
    return found ?? (cables.length === 1 ? 0 : null);
  };

  /** Splits sorted cables into groups of indices. */
  const split = (cables: readonly Cable[]): readonly (readonly number[])[] => {
    const key = cables.map(cableTrade).join('|');
    const known = seen.get(key);
    if (known) return known;
    let best: { groups: number[][]; size: number } | null = null;
    const go = (left: readonly number[], groups: number[][], size: number) => {
      if (best && (groups.length > best.groups.length || (groups.length === best.groups.length && size >= best.size)))
        return;
      const [first, ...rest] = left;
      if (first === undefined) {
        best = { groups, size };
        return;
      }
      const tried = new Set<string>();
      const grow = (group: number[], from: number) => {
        const names = group.map((i) => cableTrade(cables[i]!)).join('|');
        const diameter = tried.has(names) ? null : diameterOf(group.map((i) => cables[i]!));
        tried.add(names);
        if (diameter !== null)
          go(
            rest.filter((i) => !group.includes(i)),
            [...groups, group],
            size + diameter,
          );
        if (group.length === IN_HOLE) return;
        for (let k = from; k < rest.length; k++) grow([...group, rest[k]!], k + 1);
      };
      grow([first], 0);
    };
    go(
      cables.map((_, i) => i),
      [],
      0,
    );
    const groups = best!.groups as readonly (readonly number[])[];
    seen.set(key, groups);
    return groups;
  };

  return (at: Pt3, inside: readonly InHole[]): Hole[] => {
    const sorted = [...inside].sort(
      (a, b) => compareText(cableTrade(a.cable), cableTrade(b.cable)) || compareText(a.homeRun, b.homeRun),
    );
    return split(sorted.map((c) => c.cable)).map((group) => ({
      at,
      diameter: diameterOf(group.map((i) => sorted[i]!.cable)) ?? 0,
      homeRuns: group.map((i) => sorted[i]!.homeRun).sort(compareText),
    }));
  };
};
