import { edges, insideOrOn, pointToSegment } from '../geometry/polygon';
import { compareText } from '../units/order';
import type { Id, Pt, Pt3 } from '../units/types';
import { readBarriers } from './clearance';
import { buildNetwork, nodeAt, pointOf } from './network';
import { toFrame } from './networkFrame';
import { regionAt } from './networkFraming';
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

/** The same network without one thing. Kept, since many cables may ask about the same few things. */
const keptWithout = new WeakMap<Network, Map<Id, Network>>();
const withoutThing = (network: Network, id: Id): Network => {
  const kept = keptWithout.get(network) ?? new Map<Id, Network>();
  keptWithout.set(network, kept);
  const { job, option, extra } = network.made;
  const made = kept.get(id) ?? buildNetwork(job, option, { ...extra, without: [...(extra.without ?? []), id] });
  kept.set(id, made);
  return made;
};

const plan = (p: Pt3): Pt => [p[0], p[1]];
const toOutline = (p: Pt, outline: readonly Pt[]): number =>
  insideOrOn(p, outline) ? 0 : Math.min(...edges(outline).map(([a, b]) => pointToSegment(p, a, b)));

/** How many of the nearest things are tried one by one. */
const MOST_TRIED = 24;
/** A thing this near to a terminal stands at it. */
const AT_TERMINAL_IN = 1;

interface Thing {
  readonly id: Id;
  readonly far: number;
  /** A cable begins at a panel: that it stands there says nothing. */
  readonly panel: boolean;
}
const thingsBy = (network: Network, ends: readonly Pt3[]): Thing[] => {
  const { job, option, extra } = network.made;
  const far = (outline: readonly Pt[]) => Math.min(...ends.map((p) => toOutline(plan(p), outline)));
  const corners = job.site.outline;
  const onWall = (wall: Id): readonly Pt[] => {
    const i = corners.findIndex((c) => c.id === wall);
    const partition = job.site.partitions.find((p) => p.id === wall);
    return i >= 0
      ? [corners[i]!.at, corners[(i + 1) % corners.length]!.at]
      : partition
        ? [partition.from, partition.to]
        : [];
  };
  return [
    ...readBarriers(job, option, new Set(extra.without ?? [])).map((b) => ({
      id: b.id,
      far: far(b.outline),
      panel: b.what === 'panel',
    })),
    ...job.site.bays
      .filter((b) => b.state !== 'insulated')
      .map((b) => ({ id: b.id, far: far(b.outline), panel: false })),
    ...job.site.openings.map((o) => ({ id: o.id, far: far(onWall(o.on.wall)), panel: false })),
  ].sort((a, b) => a.far - b.far || compareText(a.id, b.id));
};

/** Walls nearest to an end that lies outside the room, and framing that may not be bored over an end. */
const surroundings = (network: Network, ends: readonly Pt3[]): Id[] => {
  const corners = network.made.job.site.outline;
  const walls = corners.map((c, i) => ({ id: c.id, from: c.at, to: corners[(i + 1) % corners.length]!.at }));
  const room = corners.map((c) => c.at);
  return ends.flatMap((end) => {
    const region = network.framing[regionAt(network.framing, toFrame(network.frame, plan(end)))]!;
    const framing = region.boring === 'never' && region.id !== '' ? [region.id] : [];
    if (insideOrOn(plan(end), room)) return framing;
    const far = walls.map((w) => pointToSegment(plan(end), w.from, w.to));
    const nearest = Math.min(...far);
    return [...framing, ...walls.filter((_, i) => far[i] === nearest).map((w) => w.id)];
  });
};

/**
 * What keeps a cable from a terminal, by id: the things each of which, taken away alone, would open a way; where no
 * single one would, everything that stands at either end, framing that may not be bored and the wall an end lies
 * behind; failing these, the nearest thing or wall. Sources and target are terminals of the network.
 */
export const blockersOf = (network: Network, sources: readonly number[], target: number): Id[] => {
  const from = sources.map((n) => pointOf(network, n));
  const to = pointOf(network, target);
  const ends = [to, ...from];
  const things = thingsBy(network, ends);
  const inOrder = (ids: readonly Id[]) => [...new Set(ids)].sort(compareText);
  const alone = things
    .slice(0, MOST_TRIED)
    .filter(({ id }) => reaches(withoutThing(network, id), from, to))
    .map(({ id }) => id);
  if (alone.length > 0) return inOrder(alone);
  const standing = things.filter((t) => t.far <= AT_TERMINAL_IN && !t.panel).map((t) => t.id);
  const around = [...standing, ...surroundings(network, ends)];
  if (around.length > 0) return inOrder(around);
  if (things.length > 0) return [things[0]!.id];
  const walls = network.made.job.site.outline.map((c, i, all) => ({
    id: c.id,
    far: pointToSegment(plan(to), c.at, all[(i + 1) % all.length]!.at),
  }));
  return [walls.sort((a, b) => a.far - b.far || compareText(a.id, b.id))[0]!.id];
};
