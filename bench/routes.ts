import FlatQueue from 'flatqueue';
import Graph from 'graphology';
import { bidirectional } from 'graphology-shortest-path/dijkstra.js';
import createGraph from 'ngraph.graph';
import { aStar } from 'ngraph.path';
import { stageOf } from '../src/plan/stages';
import { runPoints } from '../src/routing/existingRuns';
import { lengthWeights } from '../src/routing/prices';
import { settingOf } from '../src/routing/problem';
import { makeRoutes } from '../src/routing/routes';
import { ALONE } from '../src/routing/share';
import { sweep } from '../src/routing/sweep';
import { panelEntries } from '../src/routing/terminals';
import type { Network, Source } from '../src/routing/types';
import { basement } from './basement';
import { interleaved, type Line } from './rounds';

/** One-to-all by Dijkstra's method on the queue of another hand, the same arrays and the same second measure. */
export const onFlatQueue = (n: Network, weights: Float64Array, second: Float64Array, sources: readonly Source[]) => {
  const dist = new Float64Array(n.nodeCount).fill(Number.POSITIVE_INFINITY);
  const tie = new Float64Array(n.nodeCount).fill(Number.POSITIVE_INFINITY);
  const queue = new FlatQueue<number>();
  for (const { node, cost } of sources) {
    dist[node] = cost;
    tie[node] = 0;
    queue.push(node, cost);
  }
  while (queue.length > 0) {
    const cost = queue.peekValue()!;
    const u = queue.pop()!;
    if (cost > dist[u]!) continue;
    for (let e = n.off[u]!; e < n.off[u + 1]!; e++) {
      const v = n.to[e]!;
      const through = cost + weights[e]!;
      const along = tie[u]! + second[e]!;
      if (through > dist[v]! || (through === dist[v] && along >= tie[v]!)) continue;
      dist[v] = through;
      tie[v] = along;
      queue.push(v, through);
    }
  }
  return dist;
};

/** B1 and B2: the sweep beside general libraries, on the network of the reference basement. */
export const routeLines = (): Line[] => {
  const job = basement();
  const option = job.options[0]!;
  const { ask, facts, network } = settingOf(stageOf(job, option, 'final').ask);
  const routes = makeRoutes(network, option.enclosure, ask.unit, ALONE);
  const weights = routes.weights(facts[0]!.newCable, facts[0]!.type, 'new');
  const lengths = lengthWeights(network);
  const sources = panelEntries(network, option.enclosure).map(({ node, cost }) => ({ node, cost }));
  const one = () => sweep(network, weights, sources, Number.POSITIVE_INFINITY, lengths);
  const theirs = onFlatQueue(network, weights, lengths, sources);
  const wrong = one().dist.filter((d, i) => d !== theirs[i]).length;

  const ngraph = createGraph();
  const graphology = new Graph({ type: 'directed' });
  for (let u = 0; u < network.nodeCount; u++) graphology.addNode(String(u));
  for (let u = 0; u < network.nodeCount; u++)
    for (let e = network.off[u]!; e < network.off[u + 1]!; e++) {
      const v = network.to[e]!;
      const known = graphology.edge(String(u), String(v));
      const weight = weights[e]!;
      if (known === undefined) graphology.addEdge(String(u), String(v), { weight });
      else graphology.updateEdgeAttribute(known, 'weight', (w) => Math.min(w as number, weight));
      ngraph.addLink(u, v, { weight: known === undefined ? weight : graphology.getEdgeAttribute(known, 'weight') });
    }
  const least = Math.min(...Array.from(weights, (w, e) => w / Math.max(1, lengths[e]!)));
  const finder = aStar(ngraph, {
    oriented: true,
    distance: (_a, _b, link) => (link.data as { weight: number }).weight,
    heuristic: ({ id: a }, { id: b }) =>
      least *
      (Math.abs(network.x[a as number]! - network.x[b as number]!) +
        Math.abs(network.y[a as number]! - network.y[b as number]!)),
  });
  const ends = facts.map((f) => runPoints(network, f.id).at(-1)!.node);
  const from = sources[0]!.node;
  const ms = interleaved({
    sweep: one,
    flatqueue: () => onFlatQueue(network, weights, lengths, sources),
    ngraph: () => ends.map((end) => finder.find(from, end)),
    graphology: () => ends.map((end) => bidirectional(graphology, String(from), String(end), 'weight')),
  });
  const times = (name: 'flatqueue' | 'ngraph' | 'graphology') => ms[name] / ms.sweep;
  const line = (id: string, what: string, goal: number, name: 'flatqueue' | 'ngraph' | 'graphology'): Line => ({
    id,
    what,
    goal: `≥ ${goal} ×`,
    measured: `${times(name).toFixed(1)} ×${id === 'B1' ? `, ${wrong} costs differ` : ''}`,
    ok: times(name) >= goal && wrong === 0,
  });
  return [
    line('B1', 'one sweep with lengths, beside Dijkstra on flatqueue', 2.2, 'flatqueue'),
    line('B2', `${ends.length} home runs of one kind, beside A* of ngraph.path`, 160, 'ngraph'),
    line('B2', `${ends.length} home runs of one kind, beside Dijkstra of graphology`, 70, 'graphology'),
  ];
};
