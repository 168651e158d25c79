import type { UnitMills } from '../facts/work';
import type { Cable } from '../standards/cable';
import { cableItem } from '../standards/cableNames';
import { type CablePrices, COST_PER_MILL, EDGE, EDGE_CLASSES, type EdgeClass, type Network } from './types';

/** 334.30: staples not over 4-1/2 ft apart. */
const FT_PER_STAPLE = 4.5;
/** Two-wire cables that share a bored row (310.15(C)(1) keeps four of them at full rating): the search charges a share of the hole. */
const CABLES_PER_HOLE = 4;
/** Standing in for what the price book lacks, whole mills, so that no way is free by omission; the price itself says what is missing. Common practice, no source. */
const OTHERWISE: Readonly<Record<string, number>> = {
  'pull ft': 1_000,
  staple: 150,
  hole: 4_500,
  'running board': 4_000,
  sleeve: 6_000,
  patch: 15_000,
  'lift tile': 1_500,
};
const CABLE_OTHERWISE = 1_000;

/** Sizes of ungrounded conductors from small to large; kcmil sizes are larger still. */
const SIZES = ['18', '16', '14', '12', '10', '8', '6', '4', '3', '2', '1', '1/0', '2/0', '3/0', '4/0'];
const atLeast = (size: string, least: string): boolean => {
  const rank = SIZES.indexOf(size);
  return rank < 0 ? Number(size) >= 250 : rank >= SIZES.indexOf(least);
};

/**
 * May a cable be fastened straight across the undersides of joists in an unfinished basement? Nonmetallic cable not
 * smaller than two 6 AWG or three 8 AWG (334.15(C); inside, service-entrance cable follows the same part, 338.10(B)(4));
 * armored and metal-clad cable where it is held at every joist (320.15, 330.15). What is not known may not.
 */
export const mayCrossUndersides = (cable: Cable): boolean => {
  if (cable.kind === 'AC' || cable.kind === 'MC') return true;
  if (cable.kind !== 'NM' && cable.kind !== 'NM without ground' && cable.kind !== 'SE-R' && cable.kind !== 'SE-U')
    return false;
  if (cable.size === 'unknown' || cable.hots === 'unknown' || cable.neutral === 'unknown') return false;
  const insulated = cable.hots + (cable.neutral === 'insulated' ? 1 : 0);
  return atLeast(cable.size, insulated >= 3 ? '8' : '6');
};

/** What a foot of one cable costs on each kind of way, from the job's unit prices. */
export const cablePrices = (cable: Cable, unit: UnitMills): CablePrices => {
  const price = (item: string) => Math.max(0, unit(item) ?? OTHERWISE[item] ?? CABLE_OTHERWISE);
  return {
    perFt: price(cableItem(cable)) + price('pull ft') + price('staple') / FT_PER_STAPLE,
    hole: price('hole') / CABLES_PER_HOLE,
    boardPerFt: price('running board'),
    sleevePerFt: price('sleeve'),
    patchPerFt: price('patch'),
    tilePerFt: price('lift tile'),
    underside: mayCrossUndersides(cable),
  };
};

/** Search rate: 1/128 mill per 1/64 in, whole. */
const rate = (millsPerFt: number): number => Math.max(1, Math.round((millsPerFt * COST_PER_MILL) / (12 * 64)));

/** Rates by edge class; `studs` marks the classes that also bore studs by length. */
const ratesOf = (p: CablePrices): { readonly perLength: readonly number[]; readonly bores: readonly boolean[] } => {
  const unknownWall = Math.max(p.sleevePerFt, p.patchPerFt);
  const extra: Readonly<Record<EdgeClass, number>> = {
    [EDGE.joistSide]: 0,
    [EDGE.throughJoists]: 0,
    [EDGE.joistSideOverTile]: p.tilePerFt,
    [EDGE.throughJoistsOverTile]: p.tilePerFt,
    [EDGE.closedAlong]: p.patchPerFt,
    [EDGE.closedAcross]: p.patchPerFt,
    [EDGE.under]: p.underside ? 0 : p.boardPerFt,
    [EDGE.overTile]: p.tilePerFt,
    [EDGE.board]: 0,
    [EDGE.studUp]: 0,
    [EDGE.studAcross]: 0,
    [EDGE.sleeve]: p.sleevePerFt,
    [EDGE.closedWallUp]: p.patchPerFt,
    [EDGE.closedWallAcross]: p.patchPerFt,
    [EDGE.unknownWallUp]: unknownWall,
    [EDGE.unknownWallAcross]: unknownWall,
    [EDGE.oldSleeve]: 0,
    [EDGE.corner]: 0,
  };
  const perLength = Array.from({ length: EDGE_CLASSES }, (_, cls) => rate(p.perFt + extra[cls as EdgeClass]));
  const boring: EdgeClass[] = [EDGE.studAcross, EDGE.closedWallAcross, EDGE.unknownWallAcross];
  return { perLength, bores: perLength.map((_, cls) => boring.includes(cls as EdgeClass)) };
};

type EdgeCost = (n: number, e: number) => number;
const costsByPrices = new WeakMap<Network, WeakMap<CablePrices, EdgeCost>>();

/** Cost of edge `e` of node `n` for one cable type, whole 1/128 mill, at least 1. Linear in length, so that cutting an edge changes nothing. */
export const edgeCost = (network: Network, prices: CablePrices): EdgeCost => {
  const known = costsByPrices.get(network) ?? new WeakMap<CablePrices, EdgeCost>();
  costsByPrices.set(network, known);
  const cost = known.get(prices) ?? readEdgeCost(network, prices);
  known.set(prices, cost);
  return cost;
};
const readEdgeCost = (network: Network, prices: CablePrices): EdgeCost => {
  const { perLength, bores } = ratesOf(prices);
  const halfHole = Math.round((prices.hole * COST_PER_MILL) / 2);
  const studRate = network.faces.map((f) =>
    f.studs64 > 0 ? Math.round((prices.hole * COST_PER_MILL) / f.studs64) : 0,
  );
  const { cls, face, len, halves } = network;
  const byClass = Float64Array.from(perLength);
  const boring = Uint8Array.from(bores, Number);
  return (n, e) => {
    const c = cls[e]!;
    let perLen = byClass[c]!;
    if (boring[c] === 1 && face[n]! >= 0) perLen += studRate[face[n]!]!;
    return Math.max(1, len[e]! * perLen + halves[e]! * halfHole);
  };
};

const SLEEVES: ReadonlySet<number> = new Set([EDGE.sleeve, EDGE.unknownWallUp, EDGE.unknownWallAcross]);
/** What a cable costs for itself alone along each class of edge, 1/128 mill per 1/64 in: the rest is shared with others there. */
export const ownRates = (p: CablePrices): number[] => {
  const { perLength } = ratesOf(p);
  const sleeved = p.sleevePerFt > p.patchPerFt;
  return perLength.map((r, cls) =>
    SLEEVES.has(cls) && (sleeved || cls === EDGE.sleeve) ? r : Math.min(r, rate(p.perFt)),
  );
};

/** Cost of every edge for one cable type. Not to be written to. */
export const weigh = (network: Network, prices: CablePrices): Float64Array => {
  const cost = edgeCost(network, prices);
  const { nodeCount, off } = network;
  const weights = new Float64Array(network.to.length);
  for (let n = 0; n < nodeCount; n++) for (let e = off[n]!; e < off[n + 1]!; e++) weights[e] = cost(n, e);
  return weights;
};

/** Search cost of the cable itself, whole 1/128 mill per 1/64 in: what it costs where nothing else is needed. */
export const cableRate = (prices: CablePrices): number => rate(prices.perFt);

const lengthsByNetwork = new WeakMap<Network, Float64Array>();

/** Length of every edge, 1/64 in, at least 1. One array a network: not to be written to. */
export const lengthWeights = (network: Network): Float64Array => {
  const known = lengthsByNetwork.get(network);
  if (known) return known;
  const lengths = new Float64Array(network.len);
  for (let e = 0; e < lengths.length; e++) if (lengths[e]! < 1) lengths[e] = 1;
  lengthsByNetwork.set(network, lengths);
  return lengths;
};
