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

/** A stretch along which a box may stand anywhere, coming from node u with so much old cable left, and going on at v. */
interface Stretch {
  readonly u: number;
  readonly v: number;
  /** Whole 1/64 in, as `left`. */
  readonly long: number;
  readonly left: number;
  /** Spent by u; the whole stretch in old cable, and in new, 1/128 mill. */
  readonly spent: number;
  readonly old: number;
  readonly fresh: number;
  readonly cls: number;
}

/**
 * The best places for a box between nodes, better than at any node: with all the new cable there is no charge for, and
 * for each charged length within it. Along a stretch the cost is linear, so the best is where something turns: the old
 * cable is used up, the new one is just as long as it may be, or a box may no longer hang.
 */
class BestBetween {
  private readonly best: (Best | null)[];
  constructor(
    private readonly network: Network,
    private readonly kind: CutInKind,
    private readonly may: PlaceCheck,
  ) {
    this.best = columnsOf(kind).map((column) => bestNode(network, column, may));
  }

  find(): Pt3[] {
    this.alongRun();
    this.alongSpurs();
    return this.best.flatMap((b) => (b?.place ? [b.point] : []));
  }

  /** On the run itself nothing old is moved. */
  private alongRun(): void {
    const { f, spur, rate } = this.kind;
    const run = runPoints(this.network, f.id);
    for (let i = 1; i < run.length; i++) {
      const [a, b] = [run[i - 1]!, run[i]!];
      const long = Math.round((b.chain - a.chain) * 64);
      if (spur.cost[a.node] !== 0 || spur.cost[b.node] !== 0 || long < 2) continue;
      const same = { long, left: long, spent: 0, old: 0, fresh: rate * long, cls: ON_RUN };
      this.search({ ...same, u: a.node, v: b.node });
      this.search({ ...same, u: b.node, v: a.node });
    }
  }

  private alongSpurs(): void {
    const { network } = this;
    const { spur, weights, cheap } = this.kind;
    const { ways, most } = spur;
    let dearest = this.dearest();
    for (let i = 0; ways && i < ways.node.length; i++) {
      const [u, spent, left] = [ways.node[i]!, ways.cost[i]!, most - ways.length[i]!];
      for (let e = network.off[u]!; e < network.off[u + 1]!; e++) {
        const v = network.to[e]!;
        const long = network.len[e]!;
        const [old, fresh] = [weights.old[e]!, weights.new[e]!];
        if (long < 2 || spent + Math.min(old, fresh) + cheap.cost[v]! > dearest) continue;
        if (!onOneSurface(network, u, v)) continue;
        this.search({ u, v, long, left, spent, old, fresh, cls: network.cls[e]! });
        dearest = this.dearest();
      }
    }
  }

  /** Beyond this nothing is better anywhere. */
  private dearest(): number {
    let dearest = 0;
    for (const b of this.best) dearest = Math.max(dearest, b ? b.cost : Number.POSITIVE_INFINITY);
    return dearest;
  }

  /** With every way of new cable on from the far end. */
  private search(stretch: Stretch): void {
    const { cheap, within } = this.kind;
    const { v } = stretch;
    this.searchOn(stretch, cheap.cost[v]!, cheap.length[v]!);
    for (let i = within ? within.first[v]! : -1; i >= 0; i = within!.next[i]!)
      if (within!.length[i]! < cheap.length[v]!) this.searchOn(stretch, within!.cost[i]!, within!.length[i]!);
  }

  /** Going on from v at a cost and a length of new cable. */
  private searchOn(s: Stretch, beyond: number, further: number): void {
    const { long, left } = s;
    const end = Math.min(long, left);
    const least = Math.min(costAt(s, 0), costAt(s, end)) + beyond;
    const shortest = further + long - end;
    let pays = false;
    for (let which = 0; which < this.best.length && !pays; which++)
      pays = this.keepsTo(which, shortest) && (this.best[which] === null || least <= this.best[which]!.cost);
    if (!pays) return;
    this.attempt(s, left, beyond, further);
    for (const limit of this.kind.limits) this.attempt(s, Math.ceil(long - (limit - further)), beyond, further);
    for (const share of this.may.turns(pointOf(this.network, s.u), pointOf(this.network, s.v))) {
      this.attempt(s, Math.floor(share * long), beyond, further);
      this.attempt(s, Math.ceil(share * long), beyond, further);
    }
  }

  private keepsTo(which: number, length: number): boolean {
    return which === 0 || length <= this.kind.limits[which - 1]!;
  }

  /** A box x from u. */
  private attempt(s: Stretch, x: number, beyond: number, further: number): void {
    if (!(x > 0 && x < s.long) || x > s.left) return;
    const cost = costAt(s, x) + beyond;
    const length = further + s.long - x;
    for (let which = 0; which < this.best.length; which++)
      if (this.keepsTo(which, length)) this.offer(which, cost, s, x / s.long);
  }

  private offer(which: number, cost: number, { u, v, cls }: Stretch, share: number): void {
    const now = this.best[which];
    if (now && now.cost < cost) return;
    const { network } = this;
    const place = between(placeOf(network, u), placeOf(network, v), share);
    if (now && now.cost === cost && !(now.place && (cls - now.cls || before(place, now.place)) < 0)) return;
    const point = between(pointOf(network, u), pointOf(network, v), share);
    if (this.may.point(u, point)) this.best[which] = { cost, cls, place, point };
  }
}

const placeOf = (n: Network, v: number): Place64 => [n.x[v]!, n.y[v]!, n.z[v]!];
const costAt = ({ spent, old, fresh, long }: Stretch, x: number): number =>
  spent + (old * x + fresh * (long - x)) / long;

/**
 * Points between nodes of the network where something turns and a box may pay: they get nodes of their own. Found for
 * every kind of home run alone.
 */
export const turningPoints = (network: Network, kinds: readonly CutInKind[], may: PlaceCheck): Pt3[] => {
  const points = kinds.flatMap((kind) => new BestBetween(network, kind, may).find());
  const once = new Map(points.map((p) => [pointKey(p), p]));
  return [...once].sort(([a], [b]) => compareText(a, b)).map(([, p]) => p);
};
