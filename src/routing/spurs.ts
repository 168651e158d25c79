import type { UnitMills } from '../facts/work';
import type { In } from '../units/types';
import { cutInFits, mayBend } from './cutIn';
import { runPoints } from './existingRuns';
import type { HomeRunFacts } from './homeRunFacts';
import { leavings, mayLeave, spurKey } from './leaving';
import { pathTo } from './path';
import { pricesOf, type Routes, type Way3, wayAlong } from './routes';
import { sweep } from './sweep';
import type { RunPoint, Sweep } from './types';

/** How an old cable gets from its run to a box: where it leaves, and its way there (null where the box is on the run). */
export interface Spur {
  readonly leaves: RunPoint;
  readonly length: In;
  readonly way: Way3 | null;
}
export interface Spurs {
  /** The spur of a home run to a node, or null where its cable does not get there. */
  to(f: HomeRunFacts, node: number): Spur | null;
}

/**
 * Old cable from its run to boxes elsewhere: one length sweep for all home runs that are alike, started from every point
 * where they may leave with what they have to give as a head start, so that each node is reached by the cable that has
 * most left there. On the run itself no spur is needed.
 */
export const makeSpurs = (routes: Routes, unit: UnitMills): Spurs => {
  const { network, lengths } = routes;
  const kept = new Map<
    string,
    { readonly sweep: Sweep; readonly most: number; readonly points: ReadonlyMap<number, RunPoint> }
  >();
  const onRun = new Map<string, ReadonlyMap<number, RunPoint>>();
  const ways = new Map<string, Spur | null>();

  const prepared = (f: HomeRunFacts) => {
    const key = spurKey(f);
    const known = kept.get(key);
    if (known) return known;
    const places = leavings(network, f);
    const most = Math.max(0, ...places.map((p) => p.give));
    const sources = places.map(({ at, give }) => ({ node: at.node, cost: Math.round((most - give) * 64) }));
    const points = new Map<number, RunPoint>();
    for (const { at } of places) points.set(at.node, at);
    const made = { sweep: sweep(network, lengths, sources, Math.round(most * 64)), most, points };
    kept.set(key, made);
    return made;
  };
  const runNodes = (f: HomeRunFacts) => {
    const key = spurKey(f);
    const known = onRun.get(key);
    if (known) return known;
    const map = new Map<number, RunPoint>();
    for (const p of runPoints(network, f.id)) {
      const straight = cutInFits({ leaves: p.chain, spur: 0, tail: f.tail }, f.group.reachable);
      if (straight && !map.has(p.node)) map.set(p.node, p);
    }
    onRun.set(key, map);
    return map;
  };

  const find = (f: HomeRunFacts, node: number): Spur | null => {
    const here = runNodes(f).get(node);
    if (here) return { leaves: here, length: 0, way: null };
    if (!mayLeave(f)) return null;
    const { sweep: from, points } = prepared(f);
    const nodes = pathTo(from, node);
    const leaves = nodes.length > 1 ? points.get(nodes[0]!) : undefined;
    if (!leaves) return null;
    const old = f.homeRun.cable;
    const way = wayAlong(network, nodes, old, 'old', pricesOf(old, unit, 'old', routes.share));
    const fits = cutInFits({ leaves: leaves.chain, spur: way.length, tail: f.tail }, f.group.reachable);
    return fits ? { leaves, length: way.length, way } : null;
  };

  return {
    to: (f, node) => {
      if (!mayBend(f.homeRun)) return null;
      const name = `${node} ${f.homeRun.cable.size} ${f.homeRun.cable.kind} ${mayLeave(f)} ${spurKey(f)}`;
      const known = ways.get(name);
      if (known !== undefined) return known;
      const spur = find(f, node);
      ways.set(name, spur);
      return spur;
    },
  };
};
