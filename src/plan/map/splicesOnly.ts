import type { OnWall } from '../../job/schema';
import { faceOf, pointOnFace, wallFaces } from '../../job/site';
import { runPoints } from '../../routing/existingRuns';
import { factsOf, type HomeRunFacts } from '../../routing/homeRunFacts';
import { buildNetwork } from '../../routing/network';
import { lengthWeights, weigh } from '../../routing/prices';
import { pricesOf } from '../../routing/routes';
import { ALONE } from '../../routing/share';
import { sweep } from '../../routing/sweep';
import { COST_PER_MILL, LAYER, type Network, pathKey } from '../../routing/types';
import { compareText } from '../../units/order';
import type { Id, In, Pt3 } from '../../units/types';
import type { Stage } from '../stages';

/** What a place comes to if every cable were spliced where it lies today and led there: work of the new cable alone. */
export interface Spliced {
  /** Direct cost of new cable and of AFCI, whole mills; Infinity = some cable does not get there. */
  readonly mills: number;
  /** Circuits that pass the AFCI length. */
  readonly past: readonly Id[];
}

/** Wall nodes at the height of the panel's top, by face and from left to right. */
interface Level {
  readonly chains: readonly In[];
  readonly nodes: readonly number[];
}

const topOf = ({ option }: Stage): In => option.enclosure.on.bottom + option.enclosure.size.height;

/** The network with a level on every wall at the height where cables come in. The old and new cabinets stand as in the option. */
const networkOf = (stage: Stage): Network => {
  const z = topOf(stage);
  const points = wallFaces(stage.job.site, 'after').map((f): Pt3 => [...pointOnFace(f, f.length / 2), z]);
  return buildNetwork(stage.job, stage.option, { points, without: [stage.option.enclosure.id] });
};

const levelsOf = (stage: Stage, network: Network): Map<Id, Level> => {
  const z = topOf(stage);
  const found = new Map<Id, { chain: In; node: number }[]>();
  const faces = new Map(wallFaces(stage.job.site, 'after').map((f) => [f.id, f]));
  for (let n = 0; n < network.nodeCount; n++) {
    const index = network.face[n]!;
    if (network.layer[n] !== LAYER.wall || index < 0 || Math.abs(network.pz[n]! - z) > 1 / 64) continue;
    const face = faces.get(network.faces[index]!.id);
    if (!face) continue;
    const chain = (network.px[n]! - face.from[0]) * face.along[0] + (network.py[n]! - face.from[1]) * face.along[1];
    const list = found.get(face.id) ?? [];
    list.push({ chain, node: n });
    found.set(face.id, list);
  }
  return new Map(
    [...found].map(([id, list]) => {
      list.sort((a, b) => a.chain - b.chain);
      return [id, { chains: list.map((e) => e.chain), nodes: list.map((e) => e.node) }];
    }),
  );
};

/** A place between two neighboring nodes, and how far from the first to the second; found once for all cables. */
interface Between {
  readonly a: number;
  readonly b: number;
  readonly t: number;
}
const between = ({ chains, nodes }: Level, chain: In): Between => {
  let [low, high] = [0, chains.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (chains[middle]! >= chain) high = middle;
    else low = middle + 1;
  }
  const left = Math.max(0, low - 1);
  const [from, to] = [chains[left]!, chains[low]!];
  const t = to > from ? Math.min(1, Math.max(0, (chain - from) / (to - from))) : 0;
  return { a: nodes[left]!, b: nodes[low]!, t };
};
/** Between them a cost is taken as linear. */
const at = (of: Float64Array, { a, b, t }: Between): number => {
  const [x, y] = [of[a]!, of[b]!];
  return !Number.isFinite(x) ? y : !Number.isFinite(y) ? x : x + (y - x) * t;
};

/** Where a cable may be opened as it lies: its reachable part, else as far as anyone sees it. */
const openings = (network: Network, f: HomeRunFacts) => {
  const points = runPoints(network, f.id);
  const reach = points.filter((p) => f.group.reachable.some(([from, to]) => p.chain >= from && p.chain <= to));
  return (reach.length > 0 ? reach : points).map((p) => ({ node: p.node, cost: 0 }));
};

/**
 * One search for all cables that come the same way and are of one kind, from where they lie to all walls at once: what
 * makes the whole map in the time of a few plans. An estimate: it knows no cable that is drawn back and used again, no
 * boxes and nothing that cables share.
 */
export const splicesOnly = (stage: Stage): ((on: OnWall) => Spliced) => {
  const { job, option, unit, ask } = stage;
  const network = networkOf(stage);
  const levels = levelsOf(stage, network);
  const lengths = lengthWeights(network);
  const faces = wallFaces(job.site, 'after');
  const moved = [...job.homeRuns]
    .sort((a, b) => compareText(a.id, b.id))
    .flatMap((h) => factsOf(job, option, h) ?? [])
    .filter((f) => f.becomes !== null && f.becomes !== 'subpanel');
  const weights = new Map<string, Float64Array>();
  const weightsOf = (f: HomeRunFacts): Float64Array => {
    const known = weights.get(f.type);
    if (known) return known;
    const made = weigh(network, pricesOf(f.newCable, unit, 'new', ALONE, job.practice.slackShare));
    weights.set(f.type, made);
    return made;
  };
  const sweeps = new Map<string, ReturnType<typeof sweep>>();
  const sweepOf = (f: HomeRunFacts) => {
    const key = `${f.type} ${pathKey(f.path)} ${JSON.stringify(f.group.reachable)}`;
    const known = sweeps.get(key);
    if (known) return known;
    const made = sweep(network, weightsOf(f), openings(network, f), Number.POSITIVE_INFINITY, lengths);
    sweeps.set(key, made);
    return made;
  };
  const found = new Map<ReturnType<typeof sweep>, Id[]>();
  for (const f of moved) {
    const made = sweepOf(f);
    found.set(made, [...(found.get(made) ?? []), f.id]);
  }
  const searches = [...found].map(([{ dist, ties }, ids]) => ({ dist, lengths: ties!.dist, count: ids.length }));
  const searchOf = new Map([...found.values()].flatMap((ids, i) => ids.map((id) => [id, i] as const)));
  const penalties = ask.penalties.map((p) => ({
    ...p,
    searches: p.homeRuns.flatMap((h) => searchOf.get(h) ?? []),
  }));

  return (on) => {
    const face = faceOf(faces, on);
    const level = face && levels.get(face.id);
    if (!level || level.nodes.length === 0) return { mills: Number.POSITIVE_INFINITY, past: [] };
    const place = between(level, on.left + option.enclosure.size.width / 2);
    const mills = searches.reduce((sum, s) => sum + (s.count * at(s.dist, place)) / COST_PER_MILL, 0);
    const paid = penalties.filter((p) => p.searches.some((i) => at(searches[i]!.lengths, place) / 64 > p.limitIn));
    return {
      mills: Math.round(mills + paid.reduce((sum, p) => sum + p.mills, 0)),
      past: [...new Set(paid.flatMap((p) => p.circuits))].sort(compareText),
    };
  };
};
