import { compareText } from '../units/order';
import type { In, Pt3 } from '../units/types';
import { BACK_FROM_CUT_IN, FREED_UPSTREAM_IN } from './cutIn';
import type { CutInKind } from './cutInKinds';
import { pointAlong, runPoints } from './existingRuns';
import type { HomeRunFacts } from './homeRunFacts';
import { pointOf } from './network';
import type { PlaceCheck } from './sites';
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

/**
 * Points on the run itself: where the new cable is as long as it may be, and where a box may no longer hang.
 */
const onRun = (network: Network, { f, cheap, short, limits }: CutInKind, may: PlaceCheck): Pt3[] => {
  const chains: In[] = [];
  const points = runPoints(network, f.id);
  for (const { length } of short ? [cheap, short] : [cheap])
    for (const limit of limits)
      for (let i = 1; i < points.length; i++) {
        const [a, b] = [points[i - 1]!, points[i]!];
        const long = (b.chain - a.chain) * 64;
        const [fromA, fromB] = [limit - length[a.node]!, limit - length[b.node]!];
        if (fromA > 0 && fromA < long) chains.push(tick(a.chain + fromA / 64));
        if (fromB > 0 && fromB < long) chains.push(tick(b.chain - fromB / 64));
      }
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1]!, points[i]!];
    for (const share of may.turns(a.point, b.point)) {
      const chain = a.chain + share * (b.chain - a.chain);
      chains.push(tick(chain), tickUp(chain));
    }
  }
  return chains.filter((c) => c >= 0 && c <= f.pathLength).map((c) => pointAlong(f.path, c));
};

interface Best {
  readonly cost: number;
  /** In the search frame, so that ties fall alike wherever the job lies. */
  readonly place: Place64;
  readonly point: Pt3;
}
const before = (a: Place64, b: Place64): boolean => (a[2] - b[2] || a[1] - b[1] || a[0] - b[0]) < 0;

/** Does a box keep to one surface along an edge? Between two levels or two surfaces none hangs. */
const onOneSurface = (n: Network, u: number, v: number): boolean =>
  n.layer[u] === n.layer[v] &&
  n.layer[u] !== LAYER.loose &&
  n.face[u] === n.face[v] &&
  (n.layer[u] === LAYER.wall || n.z[u] === n.z[v]);

/**
 * The best places for a box inside edges of the network, with all the new cable there is no charge for and for each
 * charged length within it. Along an edge the cost is linear, so the best is where something turns: the old cable is
 * used up, the new one is just as long as it may be, or a box may no longer hang.
 */
const insideEdges = (network: Network, kind: CutInKind, may: PlaceCheck): Pt3[] => {
  const { spur, weights, cheap, short, limits } = kind;
  const best: (Best | null)[] = [null, ...limits.map(() => null)];
  const between = (a: Place64, b: Place64, share: number): Place64 => [
    a[0] + (b[0] - a[0]) * share,
    a[1] + (b[1] - a[1]) * share,
    a[2] + (b[2] - a[2]) * share,
  ];
  const pointOn = (u: number, v: number, x: number, long: number): Pt3 =>
    between(pointOf(network, u), pointOf(network, v), x / long);
  const placeOf = (n: number): Place64 => [network.x[n]!, network.y[n]!, network.z[n]!];
  const offer = (which: number, cost: number, u: number, v: number, x: number, long: number) => {
    const now = best[which];
    if (now && now.cost < cost) return;
    const place = between(placeOf(u), placeOf(v), x / long);
    if (now && now.cost === cost && !before(place, now.place)) return;
    const point = pointOn(u, v, x, long);
    if (may.point(u, point)) best[which] = { cost, place, point };
  };
  for (const { cost, left } of spur.both)
    for (let u = 0; u < network.nodeCount; u++) {
      if (!(left[u]! >= 0)) continue;
      for (let e = network.off[u]!; e < network.off[u + 1]!; e++) {
        const v = network.to[e]!;
        const long = network.len[e]!;
        if (long < 2 || !onOneSurface(network, u, v)) continue;
        for (const way of short ? [cheap, short] : [cheap]) {
          const at = (x: number) =>
            cost[u]! + (weights.old[e]! * x + weights.new[e]! * (long - x)) / long + way.cost[v]!;
          const end = Math.min(long, left[u]!);
          const least = Math.min(at(0), at(end));
          if (best.every((now) => now && now.cost < least)) continue;
          const attempt = (x: number) => {
            if (x <= 0 || x >= long || x > left[u]!) return;
            const length = way.length[v]! + long - x;
            best.forEach((now, which) => {
              if (which > 0 && length > limits[which - 1]!) return;
              if (!now || at(x) <= now.cost) offer(which, at(x), u, v, x, long);
            });
          };
          attempt(Math.floor(left[u]!));
          for (const limit of limits) attempt(Math.ceil(long - (limit - way.length[v]!)));
          for (const share of may.turns(pointOf(network, u), pointOf(network, v))) {
            attempt(Math.floor(share * long));
            attempt(Math.ceil(share * long));
          }
        }
      }
    }
  return best.flatMap((b) => (b ? [b.point] : []));
};

/**
 * Points inside edges of the network where something turns and a box may pay: they get nodes of their own. Found for
 * every kind of home run alone.
 */
export const turningPoints = (network: Network, kinds: readonly CutInKind[], may: PlaceCheck): Pt3[] => {
  const points = kinds.flatMap((kind) => [...onRun(network, kind, may), ...insideEdges(network, kind, may)]);
  const once = new Map(points.map((p) => [pointKey(p), p]));
  return [...once].sort(([a], [b]) => compareText(a, b)).map(([, p]) => p);
};
