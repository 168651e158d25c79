import { cutInFits, mayBend } from './cutIn';
import { runPoints } from './existingRuns';
import { type Frontier, frontier } from './frontier';
import type { HomeRunFacts } from './homeRunFacts';
import { leavings, mayLeave, spurKey } from './leaving';
import { pathTo } from './path';
import { lengthWeights, mayCrossUndersides } from './prices';
import { type Routes, type Way3, wayAlong } from './routes';
import type { RunPoint } from './types';

/** How an old cable gets from its run to a box: where it leaves, and its way there (null where the box is on the run). */
export interface Spur {
  readonly leaves: RunPoint;
  readonly length: number;
  readonly way: Way3 | null;
}
export interface SpurReckoned {
  /** Of the cheapest spur, 1/128 mill; Infinity where the cable does not get. */
  readonly cost: Float64Array;
  /** All spurs worth having, by what they use up of `most`, 1/64 in; null where the cable may not leave its run. */
  readonly ways: Frontier | null;
  readonly most: number;
}
export interface Spurs {
  /** The spur of a home run to a node, or null where its cable does not get there. */
  to(f: HomeRunFacts, node: number): Spur | null;
  reckon(f: HomeRunFacts): SpurReckoned;
  /** Equal for home runs whose spurs are the same. */
  key(f: HomeRunFacts): string;
  /** Cost of every edge for an old cable. */
  weights(f: HomeRunFacts): Float64Array;
}

interface Prepared extends SpurReckoned {
  /** Places on the run itself, where no spur is needed. */
  readonly straight: ReadonlyMap<number, RunPoint>;
  readonly leaves: ReadonlyMap<number, RunPoint>;
  readonly found: Map<number, Spur | null>;
}

/** Cables whose old pieces cost the same along any way. */
export const oldKey = (f: HomeRunFacts): string => `${f.homeRun.cable.kind} ${mayCrossUndersides(f.homeRun.cable)}`;

/**
 * Old cable from its run to boxes elsewhere: one search for all home runs that are alike, started from every point where
 * they may leave, with what they lack there of the most there is to give. A spur is the cheapest one that the cable is
 * long enough for.
 */
export const makeSpurs = (routes: Routes): Spurs => {
  const { network } = routes;
  const key = (f: HomeRunFacts) => `${oldKey(f)} ${mayLeave(f)} ${mayBend(f.homeRun)} ${spurKey(f)}`;
  const weights = (f: HomeRunFacts) => routes.weights(f.homeRun.cable, oldKey(f), 'old');

  const prepare = (f: HomeRunFacts): Prepared => {
    const cost = new Float64Array(network.nodeCount).fill(Number.POSITIVE_INFINITY);
    const straight = new Map<number, RunPoint>();
    const leaves = new Map<number, RunPoint>();
    const found = new Map<number, Spur | null>();
    if (!mayBend(f.homeRun)) return { cost, ways: null, most: 0, straight, leaves, found };
    const places = leavings(network, f);
    for (const p of runPoints(network, f.id))
      if (cutInFits({ leaves: p.chain, spur: 0, tail: f.tail }, f.group.reachable) && !straight.has(p.node))
        straight.set(p.node, p);
    for (const { at } of places) leaves.set(at.node, at);
    const most = Math.round(Math.max(0, ...places.map((p) => p.give)) * 64);
    const starts = places.map(({ at, give }) => ({ node: at.node, cost: 0, length: most - Math.round(give * 64) }));
    const ways =
      mayLeave(f) && places.length > 0 ? frontier(network, weights(f), lengthWeights(network), starts, most) : null;
    if (ways) for (let n = 0; n < cost.length; n++) if (ways.first[n]! >= 0) cost[n] = ways.cost[ways.first[n]!]!;
    for (const node of straight.keys()) cost[node] = 0;
    return { cost, ways, most, straight, leaves, found };
  };
  const byKey = new Map<string, Prepared>();
  const byFacts = new Map<HomeRunFacts, Prepared>();
  const prepared = (f: HomeRunFacts): Prepared => {
    const known = byFacts.get(f);
    if (known) return known;
    const made = byKey.get(key(f)) ?? prepare(f);
    byFacts.set(f, made);
    byKey.set(key(f), made);
    return made;
  };

  const find = (f: HomeRunFacts, node: number): Spur | null => {
    const { straight, leaves, ways } = prepared(f);
    const here = straight.get(node);
    if (here) return { leaves: here, length: 0, way: null };
    const cable = f.homeRun.cable;
    for (let label = ways ? ways.first[node]! : -1; label >= 0; label = ways!.next[label]!) {
      const nodes = pathTo(ways!, label);
      const start = nodes.length > 1 ? leaves.get(nodes[0]!) : undefined;
      if (!start) continue;
      const way = wayAlong(network, nodes, cable, 'old', routes.prices(cable, oldKey(f), 'old'));
      if (cutInFits({ leaves: start.chain, spur: way.length, tail: f.tail }, f.group.reachable))
        return { leaves: start, length: way.length, way };
    }
    return null;
  };
  return {
    key,
    weights,
    reckon: prepared,
    to: (f, node) => {
      const { found } = prepared(f);
      const known = found.get(node);
      if (known !== undefined) return known;
      const spur = find(f, node);
      found.set(node, spur);
      return spur;
    },
  };
};
