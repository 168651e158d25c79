import type { LegBy } from '../facts/result';
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

/** A straight stretch of a cable's way. */
export interface Stretch {
  readonly from: Pt3;
  readonly to: Pt3;
  readonly by: LegBy;
}
/** Where a joist is bored, and the stretch that it is bored for. */
export interface Bored {
  readonly at: Pt3;
  readonly of: number;
}

/**
 * The joists a cable bores, in order along it: those whose centerline it comes to from one side and leaves on the other
 * while it stays level among the joists. One it only begins, ends or turns back on is not bored.
 */
export const joistHoles = (network: Pick<Network, 'frame' | 'framing'>, stretches: readonly Stretch[]): Bored[] => {
  const bored: Bored[] = [];
  let arrived: { readonly region: number; readonly joist: number; readonly side: number } | null = null;
  stretches.forEach(({ from, to, by }, of) => {
    if (by !== 'through joists') {
      if (by !== 'joist side' || from[2] !== to[2]) arrived = null;
      return;
    }
    const [p, q]: [Pt, Pt] = [toFrame(network.frame, [from[0], from[1]]), toFrame(network.frame, [to[0], to[1]])];
    const index = regionAt(network.framing, [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2]);
    const region = network.framing[index];
    if (!region || region.boring === 'free') {
      arrived = null;
      return;
    }
    const a = (dot(region.normal, p) - region.first) / region.spacing;
    const b = (dot(region.normal, q) - region.first) / region.spacing;
    const side = Math.sign(b - a);
    const goesOn = arrived?.region === index && arrived.side === side && Math.abs(a - arrived.joist) < NOISE;
    if (goesOn) bored.push({ at: from, of });
    const first = side > 0 ? Math.floor(a + NOISE) + 1 : Math.ceil(a - NOISE) - 1;
    for (let k = first; side > 0 ? k < b - NOISE : k > b + NOISE; k += side) {
      const t = (k - a) / (b - a);
      bored.push({ at: [0, 1, 2].map((i) => from[i]! + (to[i]! - from[i]!) * t) as unknown as Pt3, of });
    }
    const joist = Math.round(b);
    arrived = Math.abs(b - joist) < NOISE ? { region: index, joist, side } : null;
  });
  return bored;
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
