import type { Leg } from '../facts/result';
import type { UnitMills } from '../facts/work';
import type { Enclosure } from '../job/schema';
import type { Cable } from '../standards/cable';
import type { In, Pt3 } from '../units/types';
import { lengthAlong } from './cutLength';
import { legsOf } from './legs';
import { membersCrossed } from './legsMembers';
import { type LegWork, legWorkOf } from './legWork';
import { nodeAt, pointOf } from './network';
import { faceFor, onFaceOf } from './panelPlace';
import { pathTo } from './path';
import { cablePrices, cableRate, lengthWeights, weigh } from './prices';
import { neededInside } from './reach';
import { ALONE, type Share } from './share';
import { sweep } from './sweep';
import { panelEntries } from './terminals';
import { type CablePrices, EDGE, type Network, type Source, type Sweep } from './types';

/** A way in space from a node to the new panel (or of an old cable from its run to a box), legs from the house on. */
export interface Way3 {
  readonly legs: readonly Leg[];
  readonly work: LegWork;
  readonly length: In;
  /** Where it ends. */
  readonly end: Pt3;
}

/** Dearest by nature: a shortest way through closed drywall is never what a length-only search should find first. */
const CLOSED: ReadonlySet<number> = new Set([
  EDGE.closedAlong,
  EDGE.closedAcross,
  EDGE.closedWallUp,
  EDGE.closedWallAcross,
  EDGE.unknownWallUp,
  EDGE.unknownWallAcross,
]);
const openLengths = new WeakMap<Network, Float64Array>();
const lengthsWhereOpen = (network: Network): Float64Array => {
  const known = openLengths.get(network);
  if (known) return known;
  const weights = Float64Array.from(lengthWeights(network));
  for (let e = 0; e < weights.length; e++) if (CLOSED.has(network.cls[e]!)) weights[e] = weights[e]! * 1024;
  openLengths.set(network, weights);
  return weights;
};

/** Least money, least length, or least length to the terminals inside the panel. */
export type Variant = 'cheap' | 'short' | 'reach';
/** What the way of a variant from every node comes to, before it is drawn; Infinity = none. */
export interface Reckoned {
  /** 1/128 mill. */
  readonly cost: Float64Array;
  /** 1/64 in; closed drywall counts far longer on the shortest way. */
  readonly length: Float64Array;
}
/** Ways to the new panel, remembered: a sweep a cable type and variant. */
export interface Routes {
  readonly network: Network;
  readonly share: Share;
  readonly lengths: Float64Array;
  /** The way from a node, or null where none leads to the panel. */
  to(node: number, cable: Cable, key: string, which: 'old' | 'new', variant: Variant): Way3 | null;
  reckon(cable: Cable, key: string, which: 'old' | 'new', variant: Variant): Reckoned;
  prices(cable: Cable, key: string, which: 'old' | 'new'): CablePrices;
  /** Cost of every edge for a cable. */
  weights(cable: Cable, key: string, which: 'old' | 'new'): Float64Array;
}

/** Nothing is bought for a cable that is already there; it is pulled, stapled and bored for like a new one. */
export const pricesOf = (cable: Cable, unit: UnitMills, which: 'old' | 'new', share: Share): CablePrices => {
  const own = cablePrices(cable, which === 'new' ? unit : (item) => (item.startsWith('cable:') ? 0 : unit(item)));
  return {
    ...own,
    hole: (own.hole * ALONE.hole) / share.hole,
    boardPerFt: own.boardPerFt / share.board,
    patchPerFt: own.patchPerFt / share.patch,
    tilePerFt: own.tilePerFt / share.tile,
  };
};

/** A path of nodes as a way: legs, and the work they take. */
export const wayAlong = (
  network: Network,
  nodes: readonly number[],
  cable: Cable,
  which: 'old' | 'new',
  prices: CablePrices,
): Way3 => {
  const legs = legsOf(network, nodes, which, prices);
  const start = pointOf(network, nodes[0]!);
  return {
    legs,
    work: legWorkOf(network, legs, membersCrossed(network, nodes, prices), which === 'new', cable.kind),
    length: lengthAlong([start, ...legs.map((l) => l.to)]),
    end: legs.at(-1)?.to ?? start,
  };
};

/** Entries with the longest conductor needed behind each, so that a nearer terminal may make up for a longer way. */
const deeper = (network: Network, panel: Enclosure): Source[] => {
  const face = faceFor(network.made.job.site, panel);
  if (!face) return [];
  return panelEntries(network, panel).map(({ node, point }) => {
    const need = neededInside(panel, onFaceOf(face, point));
    return { node, cost: Math.round(64 * Math.max(need.hot, need.neutral, need.ground)) };
  });
};

/**
 * Routes to a panel. `through`: points every way must pass, in order from the house; the way is then the cheapest to the
 * first, from there to the second, and so on.
 */
export const makeRoutes = (
  network: Network,
  panel: Enclosure,
  unit: UnitMills,
  share: Share,
  through: readonly Pt3[] = [],
): Routes => {
  const lengths = lengthsWhereOpen(network);
  const trueLengths = lengthWeights(network);
  const entries: Source[] = panelEntries(network, panel).map(({ node, cost }) => ({ node, cost }));
  const waypoints = through.map((p) => nodeAt(network, p) ?? -1).reverse();

  /** Sweeps from the panel out: to the last waypoint, from it to the one before, … */
  const chain = (weights: Float64Array, second: Float64Array | null, from: readonly Source[] = entries): Sweep[] => {
    const go = (sources: readonly Source[]) => sweep(network, weights, sources, Number.POSITIVE_INFINITY, second);
    const sweeps = [go(from)];
    for (const node of waypoints) {
      const { dist, ties } = sweeps.at(-1)!;
      const cost = node < 0 ? Number.POSITIVE_INFINITY : dist[node]!;
      sweeps.push(go(Number.isFinite(cost) ? [{ node, cost, tie: ties ? ties.dist[node]! : 0 }] : []));
    }
    return sweeps;
  };
  const prices = kept((cable: Cable, which: 'old' | 'new') => pricesOf(cable, unit, which, share));
  const weights = kept((cable: Cable, which: 'old' | 'new') => weigh(network, pricesOf(cable, unit, which, share)));
  const priced = (cable: Cable, key: string, which: 'old' | 'new') => prices(`${which} ${key}`, cable, which);
  const weighed = (cable: Cable, key: string, which: 'old' | 'new') => weights(`${which} ${key}`, cable, which);
  const cheapest = kept((costs: Float64Array) => chain(costs, trueLengths));
  // of ways of one length the cable itself costs the same along all: one sweep serves every cable that may lie alike
  const shortest = kept((extras: Float64Array) => chain(lengths, extras));
  const nearest = kept((extras: Float64Array) => chain(lengths, extras, deeper(network, panel)));
  const beside = kept((p: CablePrices) => weigh(network, { ...p, perFt: 0 }));
  const sweepsFor = (cable: Cable, key: string, which: 'old' | 'new', variant: Variant): Sweep[] => {
    if (variant === 'cheap') return cheapest(`${which} ${key}`, weighed(cable, key, which));
    const p = priced(cable, key, which);
    const alike = String(p.underside);
    return (variant === 'short' ? shortest : nearest)(alike, beside(alike, p));
  };

  const nodesFrom = (sweeps: readonly Sweep[], node: number): number[] => {
    const nodes: number[] = [];
    let from = node;
    for (let i = sweeps.length - 1; i >= 0; i--) {
      const part = pathTo(sweeps[i]!, from).reverse();
      if (part.length === 0) return [];
      nodes.push(...(nodes.length > 0 ? part.slice(1) : part));
      from = part.at(-1)!;
    }
    return nodes;
  };

  const ways = kept((node: number, cable: Cable, key: string, which: 'old' | 'new', variant: Variant): Way3 | null => {
    const nodes = nodesFrom(sweepsFor(cable, key, which, variant), node);
    return nodes.length === 0 ? null : wayAlong(network, nodes, cable, which, priced(cable, key, which));
  });
  return {
    network,
    share,
    lengths,
    to: (node, cable, key, which, variant) =>
      ways(`${node} ${which} ${key} ${variant}`, node, cable, key, which, variant),
    reckon: (cable, key, which, variant) => {
      const { dist, ties } = sweepsFor(cable, key, which, variant).at(-1)!;
      if (variant === 'cheap') return { cost: dist, length: ties!.dist };
      const rate = cableRate(priced(cable, key, which));
      return { cost: dist.map((length, n) => ties!.dist[n]! + length * rate), length: dist };
    },
    prices: priced,
    weights: weighed,
  };
};

/** Remembers what was made under each name. */
const kept = <A extends readonly unknown[], T>(make: (...args: A) => T): ((name: string, ...args: A) => T) => {
  const known = new Map<string, T>();
  return (name, ...args) => {
    if (known.has(name)) return known.get(name) as T;
    const made = make(...args);
    known.set(name, made);
    return made;
  };
};
