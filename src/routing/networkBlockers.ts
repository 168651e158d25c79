import { insideOrOn, pointToSegment } from '../geometry/polygon';
import { compareText } from '../units/order';
import type { Id, Pt, Pt3 } from '../units/types';
import { readBarriers } from './clearance';
import { buildNetwork, nodeAt, pointOf } from './network';
import { lengthWeights } from './prices';
import { sweep } from './sweep';
import type { Network } from './types';

const reaches = (network: Network, from: readonly Pt3[], to: Pt3): boolean => {
  const sources = from.flatMap((p) => nodeAt(network, p) ?? []).map((node) => ({ node, cost: 0 }));
  const target = nodeAt(network, to);
  return (
    target !== undefined && sweep(network, lengthWeights(network), sources).dist[target]! < Number.POSITIVE_INFINITY
  );
};

const distanceTo = (p: Pt, outline: readonly Pt[]): number =>
  insideOrOn(p, outline)
    ? 0
    : Math.min(...outline.map((a, i) => pointToSegment(p, a, outline[(i + 1) % outline.length]!)));

/** How many of the nearest things are tried one by one before the nearest is simply named. */
const MOST_TRIED = 24;

/**
 * What keeps a cable from a terminal: the things each of which, taken away alone, would open a way; where no single one
 * does, all that stand at the terminal; by id. Sources and target are points that were terminals of the network.
 */
export const blockersOf = (network: Network, sources: readonly number[], target: number): Id[] => {
  const { job, option, extra } = network.made;
  const from = sources.map((n) => pointOf(network, n));
  const to = pointOf(network, target);
  const plan = (p: Pt3): Pt => [p[0], p[1]];
  const already = new Set(extra.without ?? []);
  const near = (outline: readonly Pt[]) => Math.min(...[to, ...from].map((p) => distanceTo(plan(p), outline)));
  const things = [
    ...readBarriers(job, option, already).map((b) => ({ id: b.id, far: near(b.outline) })),
    ...job.site.bays.filter((b) => b.state !== 'insulated').map((b) => ({ id: b.id, far: near(b.outline) })),
    ...job.site.openings.map((o) => ({ id: o.id, far: Number.MAX_VALUE })),
  ].sort((a, b) => a.far - b.far || compareText(a.id, b.id));
  const alone = things
    .slice(0, MOST_TRIED)
    .filter(({ id }) => reaches(buildNetwork(job, option, { ...extra, without: [...already, id] }), from, to))
    .map(({ id }) => id);
  if (alone.length > 0) return alone.sort(compareText);
  const nearest = things[0]?.far ?? Number.POSITIVE_INFINITY;
  const touching = things.filter((t) => t.far <= Math.max(nearest, 1) && t.far < Number.MAX_VALUE).map((t) => t.id);
  if (touching.length > 0) return [...new Set(touching)].sort(compareText);
  const face = network.face[target]!;
  return face >= 0 ? [network.faces[face]!.wall] : [job.site.outline.map((c) => c.id).sort(compareText)[0]!];
};
