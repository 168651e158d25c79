import { boxFillIn3 } from '../calculations/boxFill';
import type { BoxKind, RoutingAsk } from '../facts/routing';
import { toPointer } from '../job/pointer';
import { compareText } from '../units/order';
import { type Id, isKnown, type Pt3 } from '../units/types';
import { routingWords as say } from '../words/en/routing';
import type { Candidate, Terms } from './candidate';
import type { Choice, Problem, Spot } from './choice';
import { factsOf, type HomeRunFacts } from './homeRunFacts';
import { packerFor } from './keptPackers';
import { nodeAt, pointOf } from './network';
import { blockersOf } from './networkBlockers';
import type { FillOf, Packer } from './packing';
import { applyPins, type Pinned, type Pins, pinnedPointsNamed, readPins } from './pins';
import { makePricer, type Pricer } from './pricer';
import { prune } from './prune';
import { lengthsThatMatter, networkFor, type Roads, roadsIn } from './roads';
import type { Routes } from './routes';
import { ALONE, type Share, together } from './share';
import { type BoxSite, boxOnAt, boxSites, makePlaceCheck, type PlaceCheck, placeKey } from './sites';
import { type Cans, spliceCansOf } from './spliceCans';
import { panelEntries } from './terminals';
import type { Assumed, Network } from './types';
import { barredFromCutIn, cutInWays, newHomeRunWay, spliceCanWays, staysOnOldWay } from './waysNew';
import { oldWays } from './waysOld';

/** Everything a question to routing comes down to, before anything is chosen. */
export interface Posed {
  readonly ask: RoutingAsk;
  readonly terms: Terms;
  readonly facts: readonly HomeRunFacts[];
  readonly routes: Routes;
  readonly routesOf: (homeRun: Id) => Routes;
  readonly pins: Pins;
  readonly cans: Cans;
  readonly sites: ReadonlyMap<string, BoxSite>;
  /** Candidates in the order of the problem's choices. */
  readonly candidates: readonly (readonly Candidate[])[];
  readonly problem: Problem;
  readonly packer: Packer;
  readonly fill: FillOf;
  readonly boxPrice: { readonly box: (kind: BoxKind) => number; readonly connector: (size: string) => number };
  readonly assumed: readonly Assumed[];
}

const yes = (value: unknown): boolean => value === true || value === 'yes';
const no = (value: unknown): boolean => value === false || value === 'no';

const sitesWithPins = ({ routes, kinds, may }: Roads, pins: Pins): BoxSite[] => {
  const { network } = routes;
  const found = boxSites(network, kinds, may);
  for (const at of pins.spots) {
    const node = nodeAt(network, at);
    if (node !== undefined && !found.some((s) => s.node === node))
      found.push({ key: placeKey(network, node), node, point: pointOf(network, node), on: boxOnAt(network, node) });
  }
  return found.sort((a, b) => compareText(a.key, b.key));
};

const spotsOf = (candidates: readonly (readonly Candidate[])[], pricer: Pricer, cans: Cans): Spot[] => {
  const keys = [...new Set(candidates.flatMap((list) => list.flatMap((c) => c.spot ?? [])))].sort(compareText);
  const spot = pricer.of('splice spot');
  const keeping = Math.max(0, pricer.of('splice can') - pricer.of('remove old panel'));
  return keys.map((key) => {
    const boxes = key.startsWith('box ');
    const kept = !boxes && cans.kept.includes(key.slice('can '.length));
    return { key, boxes, mills: spot + (boxes || kept ? 0 : keeping) };
  });
};

/** AFCI penalties that a way of a home run brings, by their index. */
export const penaltiesOf = (ask: RoutingAsk, homeRun: Id, c: Candidate): number[] => {
  const counted = yes(ask.job.code.amendments.afciCountsTails) ? c.codeLengthWithTails : c.codeLength;
  return ask.penalties.flatMap((p, i) =>
    p.homeRuns.includes(homeRun) && (counted > p.limitIn || (p.atAnyLengthIfNewHomeRun && c.way === 'new home run'))
      ? [i]
      : [],
  );
};

const choicesOf = (
  ask: RoutingAsk,
  f: HomeRunFacts,
  list: readonly Candidate[],
  spots: readonly Spot[],
  types: Packer['types'],
): Choice[] => {
  const index = new Map(spots.map((s, i) => [s.key, i]));
  return list.map((c) => ({
    id: c.id,
    spot: c.spot === null ? null : index.get(c.spot)!,
    load: c.needsBox ? types.findIndex((t) => t.key === f.load.key) : null,
    mills: c.mills,
    penalties: penaltiesOf(ask, f.id, c),
  }));
};

/** What a question comes to before a manner of sharing is taken. */
export interface Setting extends Pick<Posed, 'ask' | 'facts' | 'pins' | 'packer' | 'fill' | 'boxPrice'> {
  /** Those that may be cut in. */
  readonly cut: readonly HomeRunFacts[];
  readonly network: Network;
  readonly may: PlaceCheck;
  readonly pricer: Pricer;
  /** Manners of sharing to try. */
  readonly shares: readonly Share[];
}

export const settingOf = (ask: RoutingAsk): Setting => {
  const { job, option, unit, boxes } = ask;
  const pricer = makePricer(unit);
  const pins = readPins(option);
  const facts = [...job.homeRuns].sort((a, b) => compareText(a.id, b.id)).flatMap((h) => factsOf(job, option, h) ?? []);
  const moved = facts.filter((f) => f.becomes !== null && f.becomes !== 'subpanel');
  const fill: FillOf = (contents) => boxFillIn3(job.code.edition, { ...contents, yokes: [], fittings: 0 });
  const boxPrice = {
    box: (kind: BoxKind) => pricer.of(`box:${kind.size}`),
    connector: (size: string) => pricer.of(`connector:${size}`),
  };
  const packer = packerFor(
    moved.map((f) => f.load),
    boxes,
    fill,
    boxPrice,
    job.code.edition,
  );
  const fits = (f: HomeRunFacts) => packer.pack(packer.types.map((t) => (t.key === f.load.key ? 1 : 0))) !== null;
  const cut = moved.filter((f) => barredFromCutIn(f) === null && fits(f));
  const shares = ask.grade === 'live' || facts.length < 2 ? [ALONE] : [ALONE, together(facts.length)];
  const network = networkFor(ask, pins, cut, shares);
  const may = makePlaceCheck(network, job.site, option);
  return { ask, facts, pins, packer, fill, boxPrice, cut, network, may, pricer, shares };
};

/** All ways of all home runs, priced for one manner of sharing, as one problem of choice. */
export const pose = (setting: Setting, share: Share): Posed => {
  const { ask, pins, facts, network, packer, fill, boxPrice, pricer } = setting;
  const { job, option } = ask;
  const terms: Terms = {
    job,
    option,
    practice: job.practice,
    pricer,
    racewayCounts: !no(job.code.amendments.racewayCountsIn6ft),
    network,
  };
  const roads = roadsIn(network, ask, pins, setting.cut, share, setting.may);
  const { routes, spurs } = roads;
  const sites = sitesWithPins(roads, pins);
  const cans = spliceCansOf(job, option, network);
  const limits = lengthsThatMatter(ask);
  const entries = panelEntries(network, option.enclosure).map((e) => e.node);
  const assumed: Assumed[] = [...network.assumed];
  const blockers = new Map<number, readonly Id[]>();
  const blockedBy = (node: number): readonly Id[] => {
    const known = blockers.get(node) ?? blockersOf(network, entries, node);
    blockers.set(node, known);
    return known;
  };

  /** Where a way leads but for the points it is pinned through, the pin is what bars it. */
  const barringOf =
    (f: HomeRunFacts, { through }: Pinned) =>
    (node: number) =>
      through && routes.to(node, f.newCable, f.type, 'new', 'cheap') ? [through.pin] : blockedBy(node);

  const spotAt = (at: Pt3): string | null => {
    const node = nodeAt(network, at);
    return node === undefined ? null : `box ${placeKey(network, node)}`;
  };

  const candidates = facts.map((f): Candidate[] => {
    const pinned = pins.of(f.id);
    if (f.becomes === null || f.becomes === 'subpanel')
      return applyPins(terms, pinned, spotAt, [staysOnOldWay(terms, f)], [], null);
    const own = roads.of(f.id);
    const old = oldWays(terms, own, f, pinned.through !== null);
    const boxable = setting.cut.includes(f) || barredFromCutIn(f) !== null;
    const ways = [
      ...old.candidates,
      ...(boxable ? cutInWays(terms, own, spurs, sites, f, limits(f), old) : []),
      ...spliceCanWays(terms, own, cans.offered.get(f.group.enclosure), f, limits(f)),
    ];
    const because =
      !boxable && isKnown(f.homeRun.cable.size)
        ? say.becauseLarge({ size: f.homeRun.cable.size })
        : old.because !== null && f.runAnew !== 'never'
          ? say.becauseThreeWire()
          : old.because;
    const fresh = newHomeRunWay(terms, own, f, because, ways.length === 0 ? barringOf(f, pinned) : null);
    const last = fresh ? [pinnedPointsNamed(fresh, pinned)] : [];
    const list = applyPins(terms, pinned, spotAt, [...ways, ...last], old.untold, because);
    return list.sort((a, b) => compareText(a.id, b.id));
  });

  const spots = spotsOf(candidates, pricer, cans);
  const problem: Problem = {
    runs: facts.map((f, r) => choicesOf(ask, f, candidates[r]!, spots, packer.types)),
    spots,
    penalties: ask.penalties.map((p) => p.mills),
    maxSpots: job.practice.maxSpliceSpots,
    packer,
  };
  for (const f of facts) if (!isKnown(f.tails)) assumed.push(tailAssumption(ask, f));
  return {
    ask,
    terms,
    facts,
    routes,
    routesOf: roads.of,
    pins,
    cans,
    sites: new Map(sites.map((s) => [`box ${s.key}`, s])),
    candidates,
    problem,
    packer,
    fill,
    boxPrice,
    assumed,
  };
};

const tailAssumption = (ask: RoutingAsk, f: HomeRunFacts): Assumed => {
  const path =
    f.homeRun.ownTails === null
      ? ['cableGroups', ask.job.cableGroups.indexOf(f.group), 'tails']
      : ['homeRuns', ask.job.homeRuns.indexOf(f.homeRun), 'ownTails'];
  return { path: toPointer(path), value: 0 };
};

/** The problem without what no cheapest answer needs, and the candidates its choices stand for. */
export const pruned = (posed: Posed): { readonly problem: Problem; readonly candidates: Candidate[][] } => {
  const problem = prune(posed.problem);
  const candidates = problem.runs.map((choices, r) => {
    const byId = new Map(posed.candidates[r]!.map((c) => [c.id, c]));
    return choices.map((c) => byId.get(c.id)!);
  });
  return { problem, candidates };
};
