import { compareText } from '../units/order';
import type { In, Pt3 } from '../units/types';
import { BACK_FROM_CUT_IN, FREED_UPSTREAM_IN } from './cutIn';
import type { CutInKind } from './cutInKinds';
import { pointAlong, runPoints } from './existingRuns';
import type { HomeRunFacts } from './homeRunFacts';
import { pointOf } from './network';
import type { Reckoned } from './routes';
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

interface Best {
  readonly cost: number;
  /** In the search frame, so that ties fall alike wherever the job lies; null = a node that is there anyway. */
  readonly place: Place64 | null;
  readonly point: Pt3;
}
const before = (a: Place64, b: Place64): boolean => (a[2] - b[2] || a[1] - b[1] || a[0] - b[0]) < 0;

/** The cheapest node where a box may hang, for one column of costs. */
const bestNode = (network: Network, column: (node: number) => number, may: PlaceCheck): Best | null => {
  let cost = Number.POSITIVE_INFINITY;
  let found = -1;
  for (let n = 0; n < network.nodeCount; n++) {
    const c = column(n);
    if (c < cost && may.node(n)) [cost, found] = [c, n];
  }
  return found < 0 ? null : { cost, place: null, point: pointOf(network, found) };
};

/** Does a box keep to one surface along an edge? Between two levels or two surfaces none hangs. */
const onOneSurface = (n: Network, u: number, v: number): boolean =>
  n.layer[u] === n.layer[v] &&
  n.layer[u] !== LAYER.loose &&
  n.face[u] === n.face[v] &&
  (n.layer[u] === LAYER.wall || n.z[u] === n.z[v]);

/** A straight piece between two nodes along which a box may be moved: the old cable up to it, the new one on from it. */
interface Stretch {
  readonly u: number;
  readonly v: number;
  readonly long: number;
  /** Cost of the old cable to u, and of all the stretch in old cable and in new. */
  readonly spur: number;
  readonly old: number;
  readonly fresh: number;
  /** Old cable left at u. */
  readonly left: number;
}

const edgesWithin = (network: Network, { spur, weights }: CutInKind): Stretch[] => {
  const found: Stretch[] = [];
  for (const { cost, left } of spur.both)
    for (let u = 0; u < network.nodeCount; u++) {
      if (!(left[u]! >= 0)) continue;
      for (let e = network.off[u]!; e < network.off[u + 1]!; e++) {
        const v = network.to[e]!;
        if (!onOneSurface(network, u, v)) continue;
        const [old, fresh, long] = [weights.old[e]!, weights.new[e]!, network.len[e]!];
        found.push({ u, v, long, spur: cost[u]!, old, fresh, left: left[u]! });
      }
    }
  return found;
};

/** On the run itself no old cable is spent. `rate`: least cost of new cable, 1/128 mill per 1/64 in. */
const piecesOfRun = (network: Network, { f, spur }: CutInKind, rate: number): Stretch[] => {
  const points = runPoints(network, f.id);
  return points.slice(1).flatMap((b, i) => {
    const a = points[i]!;
    if (spur.cost[a.node] !== 0 || spur.cost[b.node] !== 0 || a.node === b.node) return [];
    const long = Math.round((b.chain - a.chain) * 64);
    const rest = { long, spur: 0, old: 0, fresh: rate * long, left: Number.POSITIVE_INFINITY };
    return [
      { u: a.node, v: b.node, ...rest },
      { u: b.node, v: a.node, ...rest },
    ];
  });
};

const leastRate = (network: Network, weights: Float64Array): number => {
  let least = Number.POSITIVE_INFINITY;
  weights.forEach((w, e) => {
    if (network.len[e]! > 0) least = Math.min(least, w / network.len[e]!);
  });
  return least;
};

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
  const { weights, cheap, short, limits } = kind;
  const best = columnsOf(kind).map((column) => bestNode(network, column, may));
  const placeOf = (n: number): Place64 => [network.x[n]!, network.y[n]!, network.z[n]!];
  const offer = (which: number, cost: number, { u, v, long }: Stretch, x: number) => {
    const now = best[which];
    if (now && now.cost < cost) return;
    const place = between(placeOf(u), placeOf(v), x / long);
    if (now && now.cost === cost && !(now.place && before(place, now.place))) return;
    const point = between(pointOf(network, u), pointOf(network, v), x / long);
    if (may.point(u, point)) best[which] = { cost, place, point };
  };
  const search = (s: Stretch, way: Reckoned) => {
    const { u, v, long } = s;
    const beyond = way.cost[v]!;
    const at = (x: number) => s.spur + (s.old * x + s.fresh * (long - x)) / long + beyond;
    const end = Math.min(long, s.left);
    const least = Math.min(at(0), at(end));
    const shortest = way.length[v]! + long - end;
    const within = (which: number, length: number) => which === 0 || length <= limits[which - 1]!;
    if (!best.some((now, which) => within(which, shortest) && (!now || least <= now.cost))) return;
    const attempt = (x: number) => {
      if (!(x > 0 && x < end) && x !== s.left) return;
      const cost = at(x);
      const length = way.length[v]! + long - x;
      best.forEach((now, which) => {
        if (within(which, length) && (!now || cost <= now.cost)) offer(which, cost, s, x);
      });
    };
    if (s.left < long) attempt(s.left);
    for (const limit of limits) attempt(Math.ceil(long - (limit - way.length[v]!)));
    for (const share of may.turns(pointOf(network, u), pointOf(network, v))) {
      attempt(Math.floor(share * long));
      attempt(Math.ceil(share * long));
    }
  };
  const stretches = [...piecesOfRun(network, kind, leastRate(network, weights.new)), ...edgesWithin(network, kind)];
  for (const s of stretches)
    for (const way of short ? [cheap, short] : [cheap]) if (s.long > 1 && way.cost[s.v]! < FAR) search(s, way);
  return best.flatMap((b) => (b?.place ? [b.point] : []));
};
const FAR = Number.POSITIVE_INFINITY;

/**
 * Points between nodes of the network where something turns and a box may pay: they get nodes of their own. Found for
 * every kind of home run alone.
 */
export const turningPoints = (network: Network, kinds: readonly CutInKind[], may: PlaceCheck): Pt3[] => {
  const points = kinds.flatMap((kind) => bestBetween(network, kind, may));
  const once = new Map(points.map((p) => [pointKey(p), p]));
  return [...once].sort(([a], [b]) => compareText(a, b)).map(([, p]) => p);
};
