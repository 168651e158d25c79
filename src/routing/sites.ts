import type { Option, Site } from '../job/schema';
import { compareText } from '../units/order';
import type { In, Pt3 } from '../units/types';
import { BACK_FROM_CUT_IN, FREED_UPSTREAM_IN } from './cutIn';
import { pointAlong, runPoints } from './existingRuns';
import type { HomeRunFacts } from './homeRunFacts';
import { leavings, mayLeave, onePerKind, spurKey } from './leaving';
import { pointOf } from './network';
import type { Routes } from './routes';
import { type BoxOn, makeSpotCheck } from './spots';
import { LAYER, type Network, pointKey, type RunPoint } from './types';

/** A place a splice box may hang. */
export interface BoxSite {
  readonly key: string;
  readonly node: number;
  readonly point: Pt3;
  readonly on: BoxOn;
}

const DIGITS = 7;
/** A node's place in the search frame as a text that sorts like its figures: a job that is moved keeps its order. */
export const placeKey = (network: Network, node: number): string =>
  [network.x[node]!, network.y[node]!, network.z[node]!]
    .map((n) => String(n + 10 ** (DIGITS - 1)).padStart(DIGITS, '0'))
    .join(' ');

export const boxOnAt = (network: Network, node: number): BoxOn =>
  network.layer[node] === LAYER.wall ? 'wall' : 'joist';

const tick = (x: In) => Math.floor(x * 64 + 1e-6) / 64;
const tickUp = (x: In) => Math.ceil(x * 64 - 1e-6) / 64;

/** Chainages at which a cut-in just becomes possible or stops being so: the cheapest often lies exactly there. */
const edgesOf = (f: HomeRunFacts): In[] =>
  f.group.reachable.flatMap(([a, b]) => [
    a <= 0 ? Math.max(1 / 4, tickUp(BACK_FROM_CUT_IN - f.tail)) : tickUp(a + BACK_FROM_CUT_IN),
    tick(b - FREED_UPSTREAM_IN),
  ]);

/** The point `distance` inches before the end of a list of points, or null where it is shorter. */
const beforeEnd = (points: readonly Pt3[], distance: In): Pt3 | null => {
  const back = [...points].reverse();
  let left = distance;
  for (let i = 1; i < back.length; i++) {
    const [a, b] = [back[i - 1]!, back[i]!];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]);
    if (left <= length) return pointAlong([a, b], left);
    left -= length;
  }
  return null;
};

/**
 * Points inside edges of the network where something turns: the ends of where a cable can be cut in, how far its old
 * end goes toward the panel, and where the new cable is exactly as long as the code year lets it be. Length is linear
 * on both sides of such a point, so nothing between two of them is better.
 */
export const turningPoints = (
  network: Network,
  routes: Routes,
  facts: readonly HomeRunFacts[],
  limits: readonly In[],
): Pt3[] => {
  const found = new Map<string, Pt3>();
  const add = (p: Pt3 | null) => {
    if (p) found.set(pointKey(p), p);
  };
  for (const f of onePerKind(facts)) {
    for (const chain of edgesOf(f)) if (chain >= 0 && chain <= f.pathLength) add(pointAlong(f.path, chain));
    const places = leavings(network, f);
    let best: { readonly at: RunPoint; readonly give: In; readonly left: In } | null = null;
    for (const place of places) {
      const left = routes.away(place.at.node) / 64 - place.give;
      if (Number.isFinite(left) && (!best || left < best.left)) best = { ...place, left };
    }
    const points = runPoints(network, f.id);
    for (const limit of limits) {
      const most = tick(limit);
      for (let i = 1; i < points.length; i++) {
        const [a, b] = [points[i - 1]!, points[i]!];
        for (const [from, sign] of [
          [a, 1],
          [b, -1],
        ] as const) {
          const spare = most - routes.away(from.node) / 64;
          if (spare > 0 && spare < b.chain - a.chain) add(pointAlong(f.path, tick(from.chain + sign * spare)));
        }
      }
    }
    if (!best) continue;
    const way = routes.to(best.at.node, f.newCable, f.type, 'new', 'short');
    if (!way) continue;
    const line = [best.at.point, ...way.legs.map((l) => l.to)];
    for (const limit of limits) add(beforeEnd(line, tick(limit)));
    if (best.give > 0) add(beforeEnd(line, way.length - tick(best.give)));
  }
  return [...found].sort(([a], [b]) => compareText(a, b)).map(([, p]) => p);
};

/** A box keeps this much cable between itself and the panel: its entries and the bend. Common practice, no source. */
const FROM_PANEL_IN = 8;

const distance64 = (network: Network, a: number, b: number): number =>
  Math.abs(network.x[a]! - network.x[b]!) +
  Math.abs(network.y[a]! - network.y[b]!) +
  Math.abs(network.z[a]! - network.z[b]!);

/** The nodes an old cable can be brought to along the shortest way to the panel, from where it leaves its run. */
const progress = (network: Network, routes: Routes, f: HomeRunFacts): number[][] => {
  const places = leavings(network, f);
  const onRun = new Set(places.map((p) => p.at.node));
  return places.map(({ at, give }) => {
    const nodes: number[] = [];
    let gone = 0;
    for (const node of routes.shortNodes(at.node)) {
      const last = nodes.at(-1);
      if (last !== undefined) gone += distance64(network, last, node);
      if (!onRun.has(node) && (gone > give * 64 || !mayLeave(f))) break;
      nodes.push(node);
    }
    return nodes;
  });
};

/**
 * Places worth hanging a box at. Toward the panel a box only gets cheaper (old cable that is there takes the place of
 * new), so it is: as far as each cable goes, where cables of different runs meet, and the turning points.
 */
export const boxSites = (
  network: Network,
  routes: Routes,
  facts: readonly HomeRunFacts[],
  site: Site,
  option: Option,
): BoxSite[] => {
  const check = makeSpotCheck(site, option.moves);
  const allowed = new Map<number, boolean>();
  const may = (node: number): boolean => {
    const known = allowed.get(node);
    if (known !== undefined) return known;
    const face = network.face[node]!;
    const yes =
      network.layer[node] !== LAYER.loose &&
      routes.away(node) >= FROM_PANEL_IN * 64 &&
      check(pointOf(network, node), boxOnAt(network, node), face < 0 ? null : network.faces[face]!.id);
    allowed.set(node, yes);
    return yes;
  };
  const lines = onePerKind(facts).map((f) => ({ key: spurKey(f), list: progress(network, routes, f) }));
  const passing = new Map<number, Set<string>>();
  for (const { key, list } of lines)
    for (const nodes of list) for (const n of nodes) passing.set(n, (passing.get(n) ?? new Set()).add(key));
  const kept = new Set<number>();
  for (const { list } of lines)
    for (const nodes of list) {
      const last = nodes.findLast(may);
      if (last !== undefined) kept.add(last);
      nodes.forEach((n, i) => {
        if (i > 0 && passing.get(n)!.size > passing.get(nodes[i - 1]!)!.size && may(n)) kept.add(n);
      });
    }
  for (const p of network.made.extra.points) {
    const n = network.at.get(pointKey(p));
    if (n !== undefined && may(n)) kept.add(n);
  }
  return [...kept]
    .map(
      (node): BoxSite => ({
        key: placeKey(network, node),
        node,
        point: pointOf(network, node),
        on: boxOnAt(network, node),
      }),
    )
    .sort((a, b) => compareText(a.key, b.key));
};
