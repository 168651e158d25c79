import { cutInFits, mayBend } from './cutIn';
import { runPoints } from './existingRuns';
import type { HomeRunFacts } from './homeRunFacts';
import { leavings, mayLeave, spurKey } from './leaving';
import { pathTo } from './path';
import { mayCrossUndersides } from './prices';
import { type Routes, type Way3, wayAlong } from './routes';
import { sweep } from './sweep';
import type { RunPoint, Sweep } from './types';

/** How an old cable gets from its run to a box: where it leaves, and its way there (null where the box is on the run). */
export interface Spur {
  readonly leaves: RunPoint;
  readonly length: number;
  readonly way: Way3 | null;
}
/** What spurs to every node come to, before they are drawn. */
export interface SpurSweep {
  /** 1/128 mill. */
  readonly cost: Float64Array;
  /** Cable left to give at each node, 1/64 in; negative where it is too short. */
  readonly left: Float64Array;
}
export interface SpurReckoned {
  /** Of the spur taken, 1/128 mill; Infinity where the cable does not get. */
  readonly cost: Float64Array;
  /** By money, then by length; none where the cable may not leave its run. */
  readonly both: readonly SpurSweep[];
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
  readonly sweeps: readonly Sweep[];
  readonly found: Map<number, Spur | null>;
}

/** Cables whose old pieces cost the same along any way. */
export const oldKey = (f: HomeRunFacts): string => `${f.homeRun.cable.kind} ${mayCrossUndersides(f.homeRun.cable)}`;

/**
 * Old cable from its run to boxes elsewhere: two sweeps for all home runs that are alike, by money and by length, started
 * from every point where they may leave, with what they lack of the most there is to give. A spur is the cheapest one
 * where the cable is long enough for it, else the shortest.
 */
export const makeSpurs = (routes: Routes): Spurs => {
  const { network, lengths } = routes;
  const key = (f: HomeRunFacts) => `${oldKey(f)} ${mayLeave(f)} ${mayBend(f.homeRun)} ${spurKey(f)}`;
  const weights = (f: HomeRunFacts) => routes.weights(f.homeRun.cable, oldKey(f), 'old');

  const prepare = (f: HomeRunFacts): Prepared => {
    const cost = new Float64Array(network.nodeCount).fill(Number.POSITIVE_INFINITY);
    const straight = new Map<number, RunPoint>();
    const leaves = new Map<number, RunPoint>();
    const found = new Map<number, Spur | null>();
    if (!mayBend(f.homeRun)) return { cost, both: [], straight, leaves, sweeps: [], found };
    const places = leavings(network, f);
    for (const p of runPoints(network, f.id))
      if (cutInFits({ leaves: p.chain, spur: 0, tail: f.tail }, f.group.reachable) && !straight.has(p.node))
        straight.set(p.node, p);
    for (const { at } of places) leaves.set(at.node, at);
    const sweeps = mayLeave(f) && places.length > 0 ? sweepBoth(f, places) : [];
    const most = Math.round(Math.max(0, ...places.map((p) => p.give)) * 64);
    const both = sweeps.map(({ dist, ties }, i): SpurSweep => {
      const [money, length] = i === 0 ? [dist, ties!.dist] : [ties!.dist, dist];
      return { cost: money, left: length.map((l) => most - l) };
    });
    for (const { cost: money, left } of [...both].reverse())
      for (let n = 0; n < cost.length; n++) if (left[n]! >= 0) cost[n] = money[n]!;
    for (const node of straight.keys()) cost[node] = 0;
    return { cost, both, straight, leaves, sweeps, found };
  };
  /** From every leaving point, each behind by what it lacks of the most there is to give. */
  const sweepBoth = (f: HomeRunFacts, places: ReturnType<typeof leavings>): Sweep[] => {
    const most = Math.max(...places.map((p) => p.give));
    const lacks = places.map(({ at, give }) => ({ node: at.node, lack: Math.round((most - give) * 64) }));
    const byMoney = lacks.map(({ node, lack }) => ({ node, cost: 0, tie: lack }));
    const byLength = lacks.map(({ node, lack }) => ({ node, cost: lack }));
    return [
      sweep(network, weights(f), byMoney, Number.POSITIVE_INFINITY, lengths, Math.round(most * 64)),
      sweep(network, lengths, byLength, Math.round(most * 64), weights(f)),
    ];
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
    const { straight, leaves, sweeps, both } = prepared(f);
    const here = straight.get(node);
    if (here) return { leaves: here, length: 0, way: null };
    const cable = f.homeRun.cable;
    for (let i = 0; i < sweeps.length; i++) {
      if (!(both[i]!.left[node]! >= 0)) continue;
      const nodes = pathTo(sweeps[i]!, node);
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
