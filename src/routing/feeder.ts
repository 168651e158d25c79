import type { FeederLaid, RoutingAnswer, RoutingAsk } from '../facts/routing';
import { feederOutside, isFeederDrawn } from '../job/feeder';
import type { Enclosure } from '../job/schema';
import { pointOnFace } from '../job/site';
import type { Cable } from '../standards/cable';
import { compareText } from '../units/order';
import { type In, isKnown, knownOr, type Pt3 } from '../units/types';
import { routingWords as say } from '../words/en/routing';
import { cutLengthOf, newPathOf } from './cutLength';
import { BY_ITSELF, feederUnit, feederWork, NOTHING_LAID } from './feederWork';
import { nodeAt } from './network';
import { blockersOf } from './networkBlockers';
import { faceFor, onFaceOf, overlap } from './panelPlace';
import { makeRoutes, type Routes, type Way3 } from './routes';
import { panelEntries } from './terminals';
import type { Network } from './types';

/** Main lugs stand this share of the can's height from the end the main is at, in its middle. Common practice, no source. */
const LUGS_SHARE = 0.15;

const lugsOf = (e: Enclosure): { readonly left: In; readonly z: In } => {
  const down = e.size.height * LUGS_SHARE;
  const z = e.mainAt === 'top' ? e.on.bottom + e.size.height - down : e.on.bottom + down;
  return { left: e.on.left + e.size.width / 2, z };
};

/** Square distance inside a can from where the feeder enters to the main lugs, inches. */
const toLugs = (ask: RoutingAsk, e: Enclosure, entry: Pt3): In | null => {
  const face = faceFor(ask.job.site, e);
  if (!face) return null;
  const at = onFaceOf(face, entry);
  const lugs = lugsOf(e);
  return Math.abs(at.left - lugs.left) + Math.abs(at.z - lugs.z);
};

/** The old panel the feeder's path ends at: the nearest one. */
const fedPanel = (ask: RoutingAsk, end: Pt3): Enclosure | undefined =>
  [...ask.job.enclosures]
    .sort((a, b) => compareText(a.id, b.id))
    .map((e) => ({ e, far: toLugs(ask, e, end) ?? Number.POSITIVE_INFINITY }))
    .reduce<{ e: Enclosure; far: number } | undefined>((best, x) => (!best || x.far < best.far ? x : best), undefined)
    ?.e;

/**
 * In place, may the feeder stay as it is? Its conductors reach as far inside the old can as they do now; where it enters
 * the new can at the same place the new lugs must be no farther. What cannot be told is replaced.
 */
const maybeKept = (ask: RoutingAsk): boolean => {
  const { job, option } = ask;
  const end = job.feeder.path.at(-1);
  if (option.kind !== 'in place' || option.serviceDisconnect !== null || !end) return false;
  const old = fedPanel(ask, end);
  const face = faceFor(job.site, option.enclosure);
  if (!old || !face || old.on.wall !== option.enclosure.on.wall || old.on.face !== option.enclosure.on.face)
    return false;
  const at = onFaceOf(face, end);
  const { on, size } = option.enclosure;
  const inside =
    at.left >= on.left && at.left <= on.left + size.width && at.z >= on.bottom && at.z <= on.bottom + size.height;
  if (!inside) return false;
  const had = toLugs(ask, old, end);
  const needs = toLugs(ask, option.enclosure, end);
  return had !== null && needs !== null && needs <= had;
};

/**
 * Where a new feeder starts: at a service disconnect on a wall, else where the old one comes into the room; null where
 * nobody drew it.
 */
const startOf = (ask: RoutingAsk): Pt3 | null => {
  const on = ask.option.serviceDisconnect?.on;
  const face = on === undefined || on === 'outdoors' ? undefined : faceFor(ask.job.site, { on });
  if (face && on !== undefined && on !== 'outdoors') return [...pointOnFace(face, on.left), on.bottom];
  return isFeederDrawn(ask.job) ? ask.job.feeder.entersAt : null;
};

const FEEDER = 'feeder';
type Laid = FeederLaid & Pick<RoutingAnswer['feeder'], 'holes' | 'supports' | 'plates'>;
const feederRoutes = (ask: RoutingAsk, network: Network, cable: Cable): Routes =>
  makeRoutes(network, ask.option.enclosure, feederUnit(ask.unit, cable), BY_ITSELF);

/** Points the network needs for the feeder beyond those it has. */
export const feederPoints = (ask: RoutingAsk): Pt3[] => {
  const start = startOf(ask);
  return start ? [start] : [];
};

/** Why the feeder stays or is a new one, for people. */
const whyOf = (ask: RoutingAsk, kept: boolean): string => {
  if (kept) return say.feederKept();
  if (ask.option.serviceDisconnect) return say.feederFromDisconnect();
  if (!isFeederDrawn(ask.job)) return say.feederNotDrawn();
  return ask.option.kind === 'relocate' ? say.feederMoved() : say.feederShort();
};

/** A new feeder along the cheapest way for its own cable; null where nobody drew where it starts. */
const replacedWay = (ask: RoutingAsk, network: Network): Laid | null => {
  const start = startOf(ask);
  if (!start) return null;
  const node = nodeAt(network, start);
  const panel = ask.option.enclosure;
  const way =
    node === undefined
      ? null
      : feederRoutes(ask, network, ask.feederCable).to(node, ask.feederCable, FEEDER, 'new', 'cheap');
  if (!way) {
    const entries = panelEntries(network, panel).map((e) => e.node);
    const blockedBy = node === undefined || entries.length === 0 ? [panel.id] : blockersOf(network, entries, node);
    return { legs: [], cutLength: 0, blockedBy, ...NOTHING_LAID };
  }
  const outside = knownOr(feederOutside(ask.job, ask.option), 0); // what is not known is missing in the price
  const { practice } = ask.job;
  const cutLength = cutLengthOf(newPathOf(way.legs) + outside, 2 * practice.tailOfFeeder, practice);
  return { legs: way.legs, cutLength, blockedBy: [], ...feederWork(network, way, ask.feederCable, outside) };
};

/** The old feeder spliced where the old panel hangs and led on to the new one: the same conductors, a box in the old panel's place. */
const extendedWay = (ask: RoutingAsk, network: Network): Laid | null => {
  const { job, option } = ask;
  const end = job.feeder.path.at(-1);
  const old = end && option.serviceDisconnect === null ? fedPanel(ask, end) : undefined;
  const { cable } = job.feeder;
  if (!old || !isKnown(cable.kind) || !isKnown(cable.size) || overlap(old, option.enclosure)) return null;
  const routes = feederRoutes(ask, network, cable);
  const ways = panelEntries(network, old).flatMap(({ node }) => routes.to(node, cable, FEEDER, 'new', 'cheap') ?? []);
  const way = ways.reduce<Way3 | null>((best, w) => (best && best.cost <= w.cost ? best : w), null);
  if (!way) return null;
  const { practice } = job;
  const cutLength = cutLengthOf(newPathOf(way.legs), practice.freeInBox + practice.tailOfFeeder, practice);
  return { legs: way.legs, cutLength, blockedBy: [], ...feederWork(network, way, cable, 0) };
};

const asLaid = (laid: Laid | null): FeederLaid | null =>
  laid && { legs: laid.legs, cutLength: laid.cutLength, blockedBy: laid.blockedBy, work: laid.work };

/** The feeder's way: kept where its lugs are reached in place, else replaced; the others beside it, to compare with. */
export const feederOf = (ask: RoutingAsk, network: Network): RoutingAnswer['feeder'] => {
  const kept = maybeKept(ask);
  const live = ask.grade === 'live';
  const replaced = kept && live ? null : replacedWay(ask, network);
  const others = live
    ? null
    : { extended: kept ? null : asLaid(extendedWay(ask, network)), replaced: asLaid(replaced) };
  const why = whyOf(ask, kept);
  const none = { legs: [], cutLength: 0, blockedBy: [], ...NOTHING_LAID } as const;
  return kept
    ? { ...none, way: 'kept', why, outside: 0, others }
    : { ...(replaced ?? none), way: 'replaced', why, outside: feederOutside(ask.job, ask.option), others };
};
