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
import { cablePrices, lengthWeights, weigh } from './prices';
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
const lengthsWhereOpen = (network: Network): Float64Array => {
  const weights = lengthWeights(network);
  weights.forEach((w, e) => {
    if (CLOSED.has(network.cls[e]!)) weights[e] = w * 1024;
  });
  return weights;
};

/** Least money, least length, or least length to the terminals inside the panel. */
export type Variant = 'cheap' | 'short' | 'reach';
/** Ways to the new panel, remembered: one cost sweep a cable type, one length sweep for all. */
export interface Routes {
  readonly network: Network;
  readonly share: Share;
  readonly lengths: Float64Array;
  /** The way from a node, or null where none leads to the panel. */
  to(node: number, cable: Cable, key: string, which: 'old' | 'new', variant: Variant): Way3 | null;
  /** Nodes of the shortest way from a node to the panel. */
  shortNodes(node: number): readonly number[];
  /** Search length from the panel, 1/64 in; Infinity = not reached. */
  away(node: number): number;
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
  const entries: Source[] = panelEntries(network, panel).map(({ node, cost }) => ({ node, cost }));
  const waypoints = through.map((p) => nodeAt(network, p) ?? -1).reverse();

  /** Sweeps from the panel out: to the last waypoint, from it to the one before, … */
  const chain = (weights: Float64Array, from: readonly Source[] = entries): Sweep[] => {
    const sweeps = [sweep(network, weights, from)];
    for (const node of waypoints) {
      const cost = node < 0 ? Number.POSITIVE_INFINITY : sweeps.at(-1)!.dist[node]!;
      sweeps.push(sweep(network, weights, Number.isFinite(cost) ? [{ node, cost }] : []));
    }
    return sweeps;
  };
  const short = chain(lengths);
  let reach: Sweep[] | null = null;
  const cheap = new Map<string, Sweep[]>();
  const sweepsFor = (cable: Cable, key: string, which: 'old' | 'new', variant: Variant): Sweep[] => {
    if (variant === 'short') return short;
    if (variant === 'reach') {
      reach ??= chain(lengths, deeper(network, panel));
      return reach;
    }
    const known = cheap.get(`${which} ${key}`);
    if (known) return known;
    const made = chain(weigh(network, pricesOf(cable, unit, which, share)));
    cheap.set(`${which} ${key}`, made);
    return made;
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

  const ways = new Map<string, Way3 | null>();
  return {
    network,
    share,
    lengths,
    to: (node, cable, key, which, variant) => {
      const name = `${node} ${which} ${key} ${variant}`;
      const known = ways.get(name);
      if (known !== undefined) return known;
      const nodes = nodesFrom(sweepsFor(cable, key, which, variant), node);
      const way =
        nodes.length === 0 ? null : wayAlong(network, nodes, cable, which, pricesOf(cable, unit, which, share));
      ways.set(name, way);
      return way;
    },
    shortNodes: (node) => nodesFrom(short, node),
    away: (node) => short.at(-1)!.dist[node]!,
  };
};
