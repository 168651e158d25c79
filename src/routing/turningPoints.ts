import { compareText } from '../units/order';
import type { In, Pt3 } from '../units/types';
import { BACK_FROM_CUT_IN, FREED_UPSTREAM_IN } from './cutIn';
import type { CutInKind } from './cutInKinds';
import { pointAlong, runPoints } from './existingRuns';
import type { HomeRunFacts } from './homeRunFacts';
import { pointOf } from './network';
import { columnsOf, type PlaceCheck } from './sites';
import { LAYER, type Network, type Place64, pointKey } from './types';

const tick = (x: In) => Math.floor(x * 64 + 1e-6) / 64;
const tickUp = (x: In) => Math.ceil(x * 64 - 1e-6) / 64;

/** Places on a run where a cut-in just becomes possible or stops being so: cables leave exactly there. */
export const endsOfCutIn = (f: HomeRunFacts): Pt3[] =>
  f.group.reachable
    .flatMap(([a, b]) => [
      a <= 0 ? Math.max(1 / 4, tickUp(BACK_FROM_CUT_IN - f.tail)) : tickUp(a + BACK_FROM_CUT_IN),
      tick(b - FREED_UPSTREAM_IN),
    ])
    .filter((c) => c >= 0 && c <= f.pathLength)
    .map((c) => pointAlong(f.path, c));

/** Before every kind of way: on the cable's own run nothing old is moved. */
const ON_RUN = -1;

interface Best {
  readonly cost: number;
  /** Kind of way it lies on: ties fall by it first, since a turned or mirrored house keeps it. */
  readonly cls: number;
  /** In the search frame, so that ties fall alike wherever the job lies; null = a node that is there anyway. */
  readonly place: Place64 | null;
  readonly point: Pt3;
}
const before = (a: Place64, b: Place64): number => a[2] - b[2] || a[1] - b[1] || a[0] - b[0];

/** The cheapest node where a box may hang, for one column of costs. */
const bestNode = (network: Network, column: (node: number) => number, may: PlaceCheck): Best | null => {
  let cost = Number.POSITIVE_INFINITY;
  let found = -1;
  for (let n = 0; n < network.nodeCount; n++) {
    const c = column(n);
    if (c < cost && may.node(n)) [cost, found] = [c, n];
  }
  return found < 0 ? null : { cost, cls: ON_RUN, place: null, point: pointOf(network, found) };
};

/** Does a box keep to one surface along an edge? Between two levels or two surfaces none hangs. */
const onOneSurface = (n: Network, u: number, v: number): boolean =>
  n.layer[u] === n.layer[v] &&
  n.layer[u] !== LAYER.loose &&
  n.face[u] === n.face[v] &&
  (n.layer[u] === LAYER.wall || n.z[u] === n.z[v]);

const between = (a: Place64, b: Place64, share: number): Place64 => [
  a[0] + (b[0] - a[0]) * share,
  a[1] + (b[1] - a[1]) * share,
  a[2] + (b[2] - a[2]) * share,
];

/**
 * The best places for a box between nodes, better than at any node: with all the new cable there is no charge for, and
 * for each charged length within it. Along a stretch the cost is linear, so the best is where something turns: the old
 * cable is used up, the new one is just as long as it may be, or a box may no longer hang.
 */
const bestBetween = (network: Network, kind: CutInKind, may: PlaceCheck): Pt3[] => {
  const { f, spur, weights, rate, cheap, within, limits } = kind;
  const best = columnsOf(kind).map((column) => bestNode(network, column, may));
  const placeOf = (n: number): Place64 => [network.x[n]!, network.y[n]!, network.z[n]!];
  const offer = (which: number, cost: number, u: number, v: number, share: number, cls: number) => {
    const now = best[which];
    if (now && now.cost < cost) return;
    const place = between(placeOf(u), placeOf(v), share);
    if (now && now.cost === cost && !(now.place && (cls - now.cls || before(place, now.place)) < 0)) return;
    const point = between(pointOf(network, u), pointOf(network, v), share);
    if (may.point(u, point)) best[which] = { cost, cls, place, point };
  };
  const keepsTo = (which: number, length: number) => which === 0 || length <= limits[which - 1]!;
  /** From u, where `spur` was spent and `left` is left, to v: in old cable for `old`, in new for `fresh`. */
  const search = (
    u: number,
    v: number,
    long: number,
    spur: number,
    left: number,
    old: number,
    fresh: number,
    beyond: number,
    further: number,
    cls: number,
  ) => {
    const end = Math.min(long, left);
    const at = (x: number) => spur + (old * x + fresh * (long - x)) / long + beyond;
    const least = Math.min(at(0), at(end));
    const shortest = further + long - end;
    let pays = false;
    for (let which = 0; which < best.length && !pays; which++)
      pays = keepsTo(which, shortest) && (best[which] === null || least <= best[which]!.cost);
    if (!pays) return;
    const attempt = (x: number) => {
      if (!(x > 0 && x < long) || x > left) return;
      const cost = at(x);
      const length = further + long - x;
      best.forEach((now, which) => {
        if (keepsTo(which, length) && (!now || cost <= now.cost)) offer(which, cost, u, v, x / long, cls);
      });
    };
    attempt(left);
    for (const limit of limits) attempt(Math.ceil(long - (limit - further)));
    for (const share of may.turns(pointOf(network, u), pointOf(network, v))) {
      attempt(Math.floor(share * long));
      attempt(Math.ceil(share * long));
    }
  };
  /** Every way of new cable on from a node: what it costs and measures. */
  const onward = (v: number, take: (cost: number, length: number) => void): void => {
    take(cheap.cost[v]!, cheap.length[v]!);
    for (let i = within ? within.first[v]! : -1; i >= 0; i = within!.next[i]!)
      if (within!.length[i]! < cheap.length[v]!) take(within!.cost[i]!, within!.length[i]!);
  };
  const run = runPoints(network, f.id);
  for (let i = 1; i < run.length; i++) {
    const [a, b] = [run[i - 1]!, run[i]!];
    const long = Math.round((b.chain - a.chain) * 64);
    if (spur.cost[a.node] !== 0 || spur.cost[b.node] !== 0 || long < 2) continue;
    for (const [u, v] of [
      [a.node, b.node],
      [b.node, a.node],
    ] as const)
      onward(v, (cost, length) => search(u, v, long, 0, long, 0, rate * long, cost, length, ON_RUN));
  }
  const { ways, most } = spur;
  for (let i = 0; ways && i < ways.node.length; i++) {
    const u = ways.node[i]!;
    const left = most - ways.length[i]!;
    for (let e = network.off[u]!; e < network.off[u + 1]!; e++) {
      const v = network.to[e]!;
      const long = network.len[e]!;
      if (long < 2 || !onOneSurface(network, u, v)) continue;
      onward(v, (cost, length) =>
        search(u, v, long, ways.cost[i]!, left, weights.old[e]!, weights.new[e]!, cost, length, network.cls[e]!),
      );
    }
  }
  return best.flatMap((b) => (b?.place ? [b.point] : []));
};

/**
 * Points between nodes of the network where something turns and a box may pay: they get nodes of their own. Found for
 * every kind of home run alone.
 */
export const turningPoints = (network: Network, kinds: readonly CutInKind[], may: PlaceCheck): Pt3[] => {
  const points = kinds.flatMap((kind) => bestBetween(network, kind, may));
  const once = new Map(points.map((p) => [pointKey(p), p]));
  return [...once].sort(([a], [b]) => compareText(a, b)).map(([, p]) => p);
};
