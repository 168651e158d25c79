import type { BoxKind } from '../facts/routing';
import { boxSize } from '../standards/boxSize';
import type { Mills } from '../units/money';
import { compareText } from '../units/order';
import type { Id, In, Pt3 } from '../units/types';
import { routingWords as say } from '../words/en/routing';
import { apart, clearOnWall, type Layout, layoutsAt } from './bank';
import type { Candidate } from './candidate';
import type { Assignment, Problem } from './choice';
import { type Hung, hungAt } from './hung';
import { buildNetwork, nodeAt } from './network';
import { mostCables } from './packing';
import { type Posed, penaltiesOf, type Setting } from './problem';
import { lengthsThatMatter, roadsIn } from './roads';
import { type BoxSite, boxOnAt, makePlaceCheck, type PlaceCheck, placeKey } from './sites';
import type { Network } from './types';
import { cutInWays } from './waysNew';
import { oldWays } from './waysOld';

/** A box whose size cannot be read takes this much room. Common practice, no source. */
const SOME_WIDTH_IN: In = 12;
const widthOf = (h: Hung): In => boxSize(h.packed.kind.size)?.width ?? SOME_WIDTH_IN;

/** Whole mills: sums that differ by less are the same. */
const SAME_MILLS = 0.5;
const NOISE = 1e-9;

export interface Widened {
  readonly posed: Posed;
  readonly chosen: readonly Candidate[];
  readonly hung: readonly Hung[];
  /** What it comes to beyond the choice with every spot for a point; never less than 0. */
  readonly mills: Mills;
}

/** A bank of boxes, the ways it might hang, and what its boxes cost with their entries. */
interface Bank {
  readonly spot: number;
  readonly boxes: readonly Hung[];
  readonly layouts: readonly Layout[];
  readonly mills: Mills;
}

/** All cables of a bank in one large box instead: the cheapest that holds them, or null. */
const inOneBox = (posed: Posed, boxes: readonly Hung[]): Hung | null => {
  const homeRuns = boxes.flatMap((h) => h.homeRuns).sort(compareText);
  const fits = posed.ask.boxes.flatMap((kind) => {
    const fillIn3 = fillOf(posed, kind, homeRuns);
    return fillIn3 === null ? [] : [{ kind, fillIn3 }];
  });
  const cost = (kind: BoxKind) => boxMills(posed, kind, homeRuns);
  const packed = fits.sort((a, b) => cost(a.kind) - cost(b.kind) || compareText(a.kind.size, b.kind.size))[0];
  return packed ? { ...boxes[0]!, packed, homeRuns } : null;
};

const banksOf = (posed: Posed, hung: readonly Hung[]): Bank[][] => {
  const { network } = posed.routes;
  const { job, option } = posed.ask;
  const spots = [...new Set(hung.map((h) => h.spot))];
  return spots.flatMap((spot): Bank[][] => {
    const boxes = hung.filter((h) => h.spot === spot);
    if (boxes.length < 2) return [];
    const { node, point } = boxes[0]!.site;
    const face = network.face[node]! < 0 ? null : network.faces[network.face[node]!]!.id;
    const widths = boxes.map(widthOf);
    const layouts = layoutsAt(network, node, point, widths).filter((layout) =>
      layout.every((at, i) => at === point || clearOnWall(job, option, face, { at, width: widths[i]! })),
    );
    const mills = (list: readonly Hung[]) => list.reduce((n, h) => n + boxMills(posed, h.packed.kind, h.homeRuns), 0);
    const one = inOneBox(posed, boxes);
    return [
      [
        { spot, boxes, layouts, mills: mills(boxes) },
        ...(one ? [{ spot, boxes: [one], layouts: [[point]], mills: mills([one]) }] : []),
      ],
    ];
  });
};

/** May the whole of a box hang there, from end to end of the bank's line? */
const mayHang = (network: Network, may: PlaceCheck, spot: Pt3, at: Pt3, width: In): BoxSite | null => {
  const node = nodeAt(network, at);
  if (node === undefined || !may.node(node)) return null;
  const off = at.map((x, k) => x - spot[k]!);
  const long = Math.hypot(...off);
  const end = (s: number) => at.map((x, k) => x + (off[k]! / long) * s) as unknown as Pt3;
  if (![-width / 2, width / 2].every((s) => may.point(node, end(s)))) return null;
  return { key: placeKey(network, node), node, point: at, on: boxOnAt(network, node) };
};

/**
 * Boxes of one spot cannot hang in one place: they are hung side by side, and each cable is led and measured to its own
 * box, the cables that may least be longer to the nearest ones. Where no line has room for them they stay at the spot.
 */
export const widened = (
  setting: Setting,
  posed: Posed,
  problem: Problem,
  found: Assignment,
  chosen: readonly Candidate[],
): Widened | null => {
  const hung = hungAt(posed, problem, found.picks);
  const banks = banksOf(posed, hung);
  if (banks.length === 0) return null;
  const { ask, pins, cut } = setting;
  const { job, option } = ask;
  const before = posed.routes.network;
  const points = banks.flat().flatMap((b) => b.layouts.flat());
  const network = buildNetwork(job, option, {
    ...before.made.extra,
    points: [...before.made.extra.points, ...points],
  });
  const may = makePlaceCheck(network, job.site, option);
  const roads = roadsIn(network, ask, pins, cut, posed.routes.share, may);
  const terms = { ...posed.terms, network };
  const limits = lengthsThatMatter(ask);
  const known = new Map<string, readonly Candidate[]>();
  /** Ways of a home run into a box at a place. */
  const waysTo = (id: Id, site: BoxSite): readonly Candidate[] => {
    const key = `${id} ${site.key}`;
    const r = posed.facts.findIndex((f) => f.id === id);
    const f = posed.facts[r]!;
    const own = roads.of(id);
    const made =
      known.get(key) ??
      cutInWays(terms, own, roads.spurs, [site], f, limits(f), oldWays(terms, own, f, pins.of(id).through !== null));
    known.set(key, made);
    return made;
  };
  const best = (id: Id, site: BoxSite): Led | null => {
    let answer: Led | null = null;
    for (const way of waysTo(id, site)) {
      const penalties = penaltiesOf(ask, id, way);
      const mills = way.mills + costOfPenalties(problem, penalties);
      if (!answer || mills < answer.mills) answer = { way, penalties, mills };
    }
    return answer;
  };

  const inBanks = new Set(banks.map((manners) => manners[0]!.spot));
  const placed = hung.filter((h) => !inBanks.has(h.spot));
  const next = [...chosen];
  for (const manners of banks) {
    const inBank = new Set(manners[0]!.boxes.flatMap((h) => h.homeRuns));
    const elsewhere = posed.facts.flatMap((f, r) => (inBank.has(f.id) ? [] : penaltiesOf(ask, f.id, next[r]!)));
    let least: (Dealt & { readonly sum: number }) | null = null;
    for (const bank of manners)
      for (const layout of bank.layouts) {
        const sites = sitesOf(network, may, bank, layout);
        if (!sites) continue;
        const room = sites.map(({ point }, i) => ({ at: point, width: widthOf(bank.boxes[i]!) }));
        const clear = placed.every((b) => room.every((a) => apart(a, { at: b.site.point, width: widthOf(b) })));
        if (bank.boxes.length > 1 && !clear) continue;
        const given = dealt(posed, bank.boxes, sites, best);
        if (!given) continue;
        const led = [...given.ways.values()];
        const hit = new Set([...elsewhere, ...led.flatMap((l) => l.penalties)]);
        const sum = bank.mills + led.reduce((n, l) => n + l.way.mills, costOfPenalties(problem, [...hit]));
        if (!least || sum < least.sum - SAME_MILLS) least = { ...given, sum };
      }
    placed.push(...(least ? least.hung : manners[0]!.boxes));
    posed.facts.forEach((f, r) => {
      const led = least?.ways.get(f.id);
      if (led) next[r] = { ...led.way, why: whyOf(chosen[r]!, led.way) };
    });
  }
  const sum = (list: readonly Candidate[], boxes: readonly Hung[]) =>
    costOfPenalties(problem, [...new Set(posed.facts.flatMap((f, r) => penaltiesOf(ask, f.id, list[r]!)))]) +
    list.reduce((n, c) => n + c.mills, 0) +
    boxes.reduce((n, h) => n + boxMills(posed, h.packed.kind, h.homeRuns), 0);
  return {
    posed: { ...posed, routes: roads.routes, terms },
    chosen: next,
    hung: placed,
    mills: Math.max(0, sum(next, placed) - sum(chosen, hung)),
  };
};

/** The places of a layout in the network, or null where a box may not hang at one of them. A bank is on a wall where one of its boxes is. */
const sitesOf = (network: Network, may: PlaceCheck, bank: Bank, layout: Layout): BoxSite[] | null => {
  const { site } = bank.boxes[0]!;
  const sites = layout.map((at, i): BoxSite | null => {
    if (at !== site.point) return mayHang(network, may, site.point, at, widthOf(bank.boxes[i]!));
    const node = nodeAt(network, at);
    return node === undefined ? null : { ...site, node, key: placeKey(network, node) };
  });
  if (!sites.every((s) => s !== null)) return null;
  return sites.some((s) => s.on === 'wall') ? sites.map((s) => ({ ...s, on: 'wall' })) : sites;
};

/** Boxes set beside each other on the first line that has room for them, nothing led or measured anew: while a hand drags. */
export const spread = (posed: Posed, hung: readonly Hung[]): Hung[] => {
  const manners = banksOf(posed, hung).map(([bank]) => bank!);
  return hung.map((h) => {
    const bank = manners.find((b) => b.spot === h.spot);
    const at = bank?.layouts[0]?.[bank.boxes.indexOf(h)];
    return at ? { ...h, site: { ...h.site, point: at } } : h;
  });
};

/** Volume that cables take in a kind of box, or null where it does not hold them. */
const fillOf = (posed: Posed, kind: BoxKind, homeRuns: readonly Id[]): number | null => {
  if (homeRuns.length > mostCables(kind)) return null;
  const loads = posed.facts.filter((f) => homeRuns.includes(f.id)).map((f) => f.load);
  const contents = { conductors: loads.flatMap((l) => l.conductors), grounds: loads.flatMap((l) => l.grounds) };
  const fill = posed.fill({ ...contents, clamps: kind.clamps });
  return fill !== null && fill <= kind.volumeIn3 + NOISE ? fill : null;
};
const boxMills = ({ facts, boxPrice }: Posed, kind: BoxKind, homeRuns: readonly Id[]): Mills =>
  facts
    .filter((f) => !kind.clamps && homeRuns.includes(f.id))
    .flatMap((f) => f.load.connectors)
    .reduce((n, size) => n + boxPrice.connector(size), boxPrice.box(kind));

/** What a pin says of a way stands before it, whatever its length. */
const whyOf = (before: Candidate, after: Candidate): string => {
  const pinned = `${say.pinned({ way: after.way })} `;
  return before.why.startsWith(pinned) ? pinned + after.why : after.why;
};

/** A cable led to a box, with the AFCI penalties that brings. */
interface Led {
  readonly way: Candidate;
  readonly penalties: readonly number[];
  readonly mills: Mills;
}
const costOfPenalties = (problem: Problem, penalties: readonly number[]): Mills =>
  penalties.reduce((n, p) => n + problem.penalties[p]!, 0);

interface Dealt {
  readonly hung: readonly Hung[];
  readonly ways: ReadonlyMap<Id, Led>;
}
/** Stands for a cable that does not get to its box while cables are exchanged: far above any price. */
const OUT_OF_REACH: Mills = 1e12;

/**
 * Cables given to the boxes of a bank: exchanged two by two while that costs less and every box still holds its own.
 * Null where some cable does not get to its box.
 */
const dealt = (
  posed: Posed,
  boxes: readonly Hung[],
  sites: readonly BoxSite[],
  best: (id: Id, site: BoxSite) => Led | null,
): Dealt | null => {
  const loadOf = new Map(posed.facts.map((f) => [f.id, f.load.key]));
  const inside = boxes.map((b) => [...b.homeRuns]);
  const cost = (id: Id, box: number) => best(id, sites[box]!)?.mills ?? OUT_OF_REACH;
  const holds = (box: number) => fillOf(posed, boxes[box]!.packed.kind, inside[box]!) !== null;
  const exchange = (a: number, i: number, b: number, j: number): boolean => {
    const [p, q] = [inside[a]![i]!, inside[b]![j]!];
    if (!(cost(p, b) + cost(q, a) < cost(p, a) + cost(q, b) - SAME_MILLS)) return false;
    inside[a]![i] = q;
    inside[b]![j] = p;
    if (loadOf.get(p) === loadOf.get(q) || (holds(a) && holds(b))) return true;
    inside[a]![i] = p;
    inside[b]![j] = q;
    return false;
  };
  const places = inside.flatMap((list, box) => list.map((_, i) => [box, i] as const));
  for (let better = true; better; ) {
    better = false;
    for (const [a, i] of places) for (const [b, j] of places) if (a < b) better = exchange(a, i, b, j) || better;
  }
  const ways = new Map<Id, Led>();
  for (const [box, i] of places) {
    const led = best(inside[box]![i]!, sites[box]!);
    if (!led) return null;
    ways.set(inside[box]![i]!, led);
  }
  const hung = boxes.map((h, b): Hung => {
    const homeRuns = inside[b]!.sort(compareText);
    const fillIn3 = fillOf(posed, h.packed.kind, homeRuns) ?? h.packed.fillIn3;
    return { ...h, site: sites[b]!, packed: { ...h.packed, fillIn3 }, homeRuns };
  });
  return { ways, hung };
};
