import { buildNetwork, nodeAt } from '../src/routing/network';
import { weigh } from '../src/routing/prices';
import { sweep } from '../src/routing/sweep';
import { panelEntries } from '../src/routing/terminals';
import type { Pt } from '../src/units/types';
import { PRICES, type Room, routeRoom } from '../tests/properties/routesRooms';
import { basement } from './basement';
import { type Line, median } from './rounds';

const PATHS = 1_500;
const EVERY_INCH: Pt[] = Array.from({ length: 420 }, (_, i) => [i, i]);

const costsOf = ({ job, option, targets }: Room, lines: readonly Pt[]) => {
  const network = buildNetwork(job, option, { points: targets, lines });
  const { dist } = sweep(network, weigh(network, PRICES), panelEntries(network, option.enclosure));
  return { costs: targets.map((p) => dist[nodeAt(network, p)!]!), nodes: network.nodeCount };
};

/** How many nodes lines every inch take on the reference basement for one of ours. */
const onBasement = (): number => {
  const job = basement();
  const option = job.options[0]!;
  const points = job.cableGroups.map((g) => g.path.at(-1)!);
  const nodes = (lines: readonly Pt[]) => buildNetwork(job, option, { points, lines }).nodeCount;
  return nodes(Array.from({ length: 481 }, (_, i) => [i, i])) / nodes([]);
};

/** B3: our grid beside one with lines every inch in both directions besides: what it costs to reach, how many nodes it takes. */
export const gridLines = (): Line[] => {
  let paths = 0;
  let differ = 0;
  const shares: number[] = [];
  for (let seed = 1; paths < PATHS; seed++) {
    const room = routeRoom(seed);
    const [ours, dense] = [costsOf(room, []), costsOf(room, EVERY_INCH)];
    ours.costs.forEach((cost, i) => {
      if (!Number.isFinite(cost) && !Number.isFinite(dense.costs[i]!)) return;
      paths++;
      if (cost !== dense.costs[i]) differ++;
    });
    shares.push(dense.nodes / ours.nodes);
  }
  const reference = onBasement();
  return [
    {
      id: 'B3',
      what: `cost of ${paths} paths beside a grid with lines every inch, sloped walls included`,
      goal: '0 differ, nodes ≤ 1/30 on the reference basement',
      measured: `${differ} differ, nodes 1/${reference.toFixed(0)} (1/${median(shares).toFixed(0)} in these rooms)`,
      ok: differ === 0 && reference >= 30,
    },
  ];
};
