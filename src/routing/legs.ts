import type { Leg, LegBy } from '../facts/result';
import type { Pt3 } from '../units/types';
import { pointOf } from './network';
import { edgeCost } from './prices';
import { type CablePrices, EDGE, type EdgeClass, LAYER, type Network } from './types';

/** Words for the ways of a cable. Raceways that were already there are 'raceway', new ones 'sleeve'. */
const byOf = (cls: EdgeClass, prices: CablePrices): LegBy => {
  switch (cls) {
    case EDGE.joistSide:
    case EDGE.joistSideOverTile:
    case EDGE.corner:
      return 'joist side';
    case EDGE.throughJoists:
    case EDGE.throughJoistsOverTile:
      return 'through joists';
    case EDGE.closedAlong:
    case EDGE.closedAcross:
    case EDGE.closedWallUp:
    case EDGE.closedWallAcross:
      return 'opened drywall';
    case EDGE.under:
      return prices.underside ? 'joist underside' : 'running board';
    case EDGE.overTile:
      return 'above lay-in';
    case EDGE.board:
      return 'wall board';
    case EDGE.studUp:
    case EDGE.studAcross:
      return 'stud bay';
    case EDGE.sleeve:
      return 'sleeve';
    case EDGE.unknownWallUp:
    case EDGE.unknownWallAcross:
      return prices.sleevePerFt > prices.patchPerFt ? 'sleeve' : 'opened drywall';
    case EDGE.oldSleeve:
      return 'raceway';
  }
};

/** One edge of a path: its number and the node it leaves. */
export interface Step {
  readonly from: number;
  readonly to: number;
  readonly edge: number;
}
/** The cheapest edge between each two nodes of a path. */
export const stepsOf = (network: Network, path: readonly number[], prices: CablePrices): Step[] => {
  const cost = edgeCost(network, prices);
  return path.slice(1).map((to, i) => {
    const from = path[i]!;
    let edge = -1;
    for (let e = network.off[from]!; e < network.off[from + 1]!; e++)
      if (network.to[e] === to && (edge < 0 || cost(from, e) < cost(from, edge))) edge = e;
    if (edge < 0) throw new Error(`No edge from node ${from} to node ${to}`);
    return { from, to, edge };
  });
};

const STRAIGHT = 1e-6;
const goesOn = (a: Leg, to: Pt3): boolean => {
  const u = a.to.map((c, k) => c - a.from[k]!);
  const v = to.map((c, k) => c - a.to[k]!);
  const long = Math.hypot(...u) * Math.hypot(...v);
  return long > 0 && u.reduce((sum, c, k) => sum + c * v[k]!, 0) > long * (1 - STRAIGHT);
};

/** Nodes of the two ceiling layers: a step between two heights there is taken level first, then straight up or down. */
const stepsInCeiling = (n: Network, step: Step): boolean =>
  n.layer[step.from] === n.layer[step.to] &&
  (n.layer[step.from] === LAYER.joist || n.layer[step.from] === LAYER.below) &&
  n.z[step.from] !== n.z[step.to];

/** A path as straight legs at exact points of the job, neighbors of one kind in one line merged. */
export const legsOf = (network: Network, path: readonly number[], cable: Leg['cable'], prices: CablePrices): Leg[] => {
  const legs: Leg[] = [];
  let here = path.length > 0 ? pointOf(network, path[0]!) : undefined;
  const go = (to: Pt3, by: LegBy) => {
    const last = legs.at(-1);
    if (last && last.by === by && goesOn(last, to)) legs[legs.length - 1] = { ...last, to };
    else legs.push({ from: here!, to, cable, row: null, by });
    here = to;
  };
  for (const step of stepsOf(network, path, prices)) {
    if (network.len[step.edge] === 0) continue;
    const by = byOf(network.cls[step.edge] as EdgeClass, prices);
    const to = pointOf(network, step.to);
    if (stepsInCeiling(network, step)) go([to[0], to[1], here![2]], by);
    go(to, by);
  }
  return legs;
};
