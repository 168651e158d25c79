import type { Leg } from '../facts/result';
import type { UnitMills } from '../facts/work';
import type { Enclosure } from '../job/schema';
import type { Cable } from '../standards/cable';
import type { In, Pt3 } from '../units/types';
import { lengthAlong } from './cutLength';
import { type Frontier, frontier, labelOf, labelsAt, type Start } from './frontier';
import { legsOf, stepsOf } from './legs';
import { membersCrossed } from './legsMembers';
import { type LegWork, legWorkOf } from './legWork';
import { nodeAt, pointOf } from './network';
import { faceFor, onFaceOf } from './panelPlace';
import { pathBack, pathTo } from './path';
import { cablePrices, edgeCost, lengthWeights, ownRates, weigh } from './prices';
import { neededInside } from './reach';
import { ALONE, type Share } from './share';
import { sweep } from './sweep';
import { panelEntries } from './terminals';
import type { CablePrices, Network, PanelEntry, Source, Sweep } from './types';

/** A way in space from a node to the new panel (or of an old cable from its run to a box), legs from the house on. */
export interface Way3 {
  readonly legs: readonly Leg[];
  readonly work: LegWork;
  readonly length: In;
  /** What the search counts for it, and the part of that which others on the same way share, 1/128 mill. */
  readonly cost: number;
  readonly shared: number;
  /** Where it ends. */
  readonly end: Pt3;
}

/** New cable is bought and pulled; old cable is there and pulled another way. */
export type As = Leg['cable'];
/** Least money, or least length to the terminals inside the panel. */
export type Variant = 'cheap' | 'nearest';
/** What the cheapest way from every node comes to, before it is drawn; Infinity = none. */
export interface Reckoned {
  /** 1/128 mill. */
  readonly cost: Float64Array;
  /** 1/64 in. */
  readonly length: Float64Array;
}
/** Ways to the new panel, remembered: a search a cable type and use. */
export interface Routes {
  readonly network: Network;
  readonly share: Share;
  /** The way from a node, or null where none leads to the panel. */
  to(node: number, cable: Cable, key: string, as: As, variant: Variant): Way3 | null;
  reckon(cable: Cable, key: string, as: As): Reckoned;
  /** All ways worth having that are not longer than `most`, 1/64 in, with what lies `behind` each entry counted in. */
  bounded(cable: Cable, key: string, as: As, most: number, behind?: Behind): Frontier;
  /** The way a label of them stands for. */
  along(ways: Frontier, label: number, cable: Cable, key: string, as: As): Way3;
  prices(cable: Cable, key: string, as: As): CablePrices;
  /** Cost of every edge for a cable. */
  weights(cable: Cable, key: string, as: As): Float64Array;
}
/** Length that counts behind an entry of the panel, inches. */
export type Behind = (entry: PanelEntry) => In;

/** New cable is bought with its slack; nothing is bought for an old one: it is pulled, stapled and bored for all the same. */
export const pricesOf = (cable: Cable, unit: UnitMills, as: As, share: Share, slack: number): CablePrices => {
  const priceOf = (item: string) => {
    if (!item.startsWith('cable:')) return unit(item);
    const mills = as === 'new' ? unit(item) : 0;
    return mills === undefined ? undefined : mills * (1 + slack);
  };
  const own = cablePrices(cable, priceOf);
  return {
    ...own,
    hole: (own.hole * ALONE.hole) / share.hole,
    boardPerFt: own.boardPerFt / share.board,
    patchPerFt: own.patchPerFt / share.patch,
    tilePerFt: own.tilePerFt / share.tile,
  };
};

/** What a path costs in the search, and the part of it that others on the same way share, 1/128 mill. */
const costAlong = (network: Network, nodes: readonly number[], prices: CablePrices) => {
  const rates = ownRates(prices);
  const cost = edgeCost(network, prices);
  const sum = { cost: 0, shared: 0 };
  for (const { from, edge } of stepsOf(network, nodes, prices)) {
    const step = cost(from, edge);
    sum.cost += step;
    sum.shared += step - network.len[edge]! * rates[network.cls[edge]!]!;
  }
  return sum;
};

/** A path of nodes as a way: legs, and the work they take. */
export const wayAlong = (
  network: Network,
  nodes: readonly number[],
  cable: Cable,
  as: As,
  prices: CablePrices,
): Way3 => {
  const legs = legsOf(network, nodes, as, prices);
  const start = pointOf(network, nodes[0]!);
  return {
    legs,
    work: legWorkOf(legs, membersCrossed(network, nodes, prices), as === 'new', cable.kind),
    ...costAlong(network, nodes, prices),
    length: lengthAlong([start, ...legs.map((l) => l.to)]),
    end: legs.at(-1)?.to ?? start,
  };
};

/** The longest conductor needed behind an entry, so that a nearer terminal may make up for a longer way. */
const deepest = (panel: Enclosure, face: ReturnType<typeof faceFor>): Behind => {
  if (!face) return () => 0;
  return ({ point }) => {
    const need = neededInside(panel, onFaceOf(face, point));
    return Math.max(need.hot, need.neutral, need.ground);
  };
};
const in64 = (x: In): number => Math.ceil(64 * x - 1e-6);

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
  const lengths = lengthWeights(network);
  const { slackShare } = network.made.job.practice;
  const entries = panelEntries(network, panel);
  const plain: Source[] = entries.map(({ node, cost }) => ({ node, cost }));
  const waypoints = through.map((p) => nodeAt(network, p) ?? -1).reverse();

  /** Sweeps from the panel out: to the last waypoint, from it to the one before, … */
  const chain = (weights: Float64Array, second: Float64Array, from: readonly Source[] = plain): Sweep[] => {
    const go = (sources: readonly Source[]) => sweep(network, weights, sources, Number.POSITIVE_INFINITY, second);
    const sweeps = [go(from)];
    for (const node of waypoints) {
      const { dist, ties } = sweeps.at(-1)!;
      const cost = node < 0 ? Number.POSITIVE_INFINITY : dist[node]!;
      sweeps.push(go(Number.isFinite(cost) ? [{ node, cost, tie: ties!.dist[node]! }] : []));
    }
    return sweeps;
  };
  const prices = kept((cable: Cable, as: As) => pricesOf(cable, unit, as, share, slackShare));
  const priced = (cable: Cable, key: string, as: As) => prices(`${as} ${key}`, cable, as);
  const weights = kept((p: CablePrices) => weigh(network, p));
  const weighed = (cable: Cable, key: string, as: As) => weights(`${as} ${key}`, priced(cable, key, as));
  const cheapest = kept((costs: Float64Array) => chain(costs, lengths));
  const nearest = kept((costs: Float64Array) => {
    const behind = deepest(panel, faceFor(network.made.job.site, panel));
    return chain(
      lengths,
      costs,
      entries.map((e) => ({ node: e.node, cost: in64(behind(e)) })),
    );
  });
  const sweepsFor = (cable: Cable, key: string, as: As, variant: Variant): Sweep[] =>
    (variant === 'cheap' ? cheapest : nearest)(`${as} ${key}`, weighed(cable, key, as));

  /** The frontier before each: from the panel to the waypoint it starts at. */
  const before = new Map<Frontier, Frontier>();
  const bounded = kept((costs: Float64Array, most: number, behind: Behind): Frontier => {
    const go = (starts: readonly Start[]) => frontier(network, costs, lengths, starts, most);
    let last = go(entries.map((e) => ({ node: e.node, cost: e.cost, length: in64(behind(e)) })));
    for (const node of waypoints) {
      const next = go(node < 0 ? [] : labelsAt(last, node));
      before.set(next, last);
      last = next;
    }
    return last;
  });

  /** From the house to the panel: the nodes of the last search's path, and on from where it starts. */
  const nodesAlong = (ways: Frontier, label: number): number[] => {
    const nodes: number[] = [];
    let [search, at]: [Frontier | undefined, number] = [ways, label];
    while (search) {
      const { nodes: part, root } = pathBack(search, at);
      nodes.push(...part.reverse().slice(nodes.length > 0 ? 1 : 0));
      const earlier = before.get(search);
      if (earlier)
        at = labelOf(earlier, { node: part.at(-1)!, cost: search.cost[root]!, length: search.length[root]! });
      search = earlier;
    }
    return nodes;
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

  const ways = kept((node: number, cable: Cable, key: string, as: As, variant: Variant): Way3 | null => {
    const nodes = nodesFrom(sweepsFor(cable, key, as, variant), node);
    return nodes.length === 0 ? null : wayAlong(network, nodes, cable, as, priced(cable, key, as));
  });
  const drawn = new Map<Frontier, Map<number, Way3>>();
  return {
    network,
    share,
    to: (node, cable, key, as, variant) => ways(`${node} ${as} ${key} ${variant}`, node, cable, key, as, variant),
    reckon: (cable, key, as) => {
      const { dist, ties } = sweepsFor(cable, key, as, 'cheap').at(-1)!;
      return { cost: dist, length: ties!.dist };
    },
    bounded: (cable, key, as, most, behind = () => 0) =>
      bounded(`${as} ${key} ${most} ${entries.map(behind).join()}`, weighed(cable, key, as), most, behind),
    along: (found, label, cable, key, as) => {
      const known = drawn.get(found) ?? new Map<number, Way3>();
      drawn.set(found, known);
      const way = known.get(label) ?? wayAlong(network, nodesAlong(found, label), cable, as, priced(cable, key, as));
      known.set(label, way);
      return way;
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
