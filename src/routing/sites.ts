import type { Option, Site } from '../job/schema';
import type { Pt3 } from '../units/types';
import type { CutInKind } from './cutInKinds';
import { labelWithin } from './frontier';
import { pointOf } from './network';
import { lengthWeights } from './prices';
import { skyline } from './skyline';
import { type BoxOn, makeSpotCheck } from './spots';
import { sweep } from './sweep';
import { panelEntries } from './terminals';
import { LAYER, type Network } from './types';

/** A place a splice box may hang. */
export interface BoxSite {
  readonly key: string;
  readonly node: number;
  readonly point: Pt3;
  readonly on: BoxOn;
}

const DIGITS = 7;
/** A node's place in the search frame as a text that sorts like its figures: a job that is moved keeps its order. */
export const placeKey = (network: Network, node: number): string =>
  [network.x[node]!, network.y[node]!, network.z[node]!]
    .map((n) => String(n + 10 ** (DIGITS - 1)).padStart(DIGITS, '0'))
    .join(' ');

export const boxOnAt = (network: Network, node: number): BoxOn =>
  network.layer[node] === LAYER.wall ? 'wall' : 'joist';

/** A box keeps this much cable between itself and the panel: its entries and the bend. Common practice, no source. */
const FROM_PANEL_IN = 8;

/** May a box hang at a node, or at a point on the surface a node lies on? */
export interface PlaceCheck {
  node(node: number): boolean;
  point(on: number, p: Pt3): boolean;
  /** Where between two points the answer may turn, as shares of the way. */
  turns(from: Pt3, to: Pt3): number[];
}
export const makePlaceCheck = (network: Network, site: Site, option: Option): PlaceCheck => {
  const { may, turns } = makeSpotCheck(site, option.moves);
  const known = new Int8Array(network.nodeCount);
  const point = (on: number, p: Pt3): boolean => {
    const face = network.face[on]!;
    return network.layer[on] !== LAYER.loose && may(p, boxOnAt(network, on), face < 0 ? null : network.faces[face]!.id);
  };
  const entries = panelEntries(network, option.enclosure);
  const away = sweep(network, lengthWeights(network), entries, FROM_PANEL_IN * 64).dist;
  const find = (node: number) => away[node]! >= FROM_PANEL_IN * 64 && point(node, pointOf(network, node));
  return {
    point,
    turns,
    node: (node) => {
      if (known[node] === 0) known[node] = find(node) ? 1 : -1;
      return known[node] === 1;
    },
  };
};

/** One column a kind of home run: its cheapest cut-in at each node; and one more for each length it is charged beyond. */
export const columnsOf = ({ spur, cheap, within, limits }: CutInKind): ((node: number) => number)[] => [
  (n) => spur.cost[n]! + cheap.cost[n]!,
  ...limits.map((limit) => (n: number) => {
    if (cheap.length[n]! <= limit) return spur.cost[n]! + cheap.cost[n]!;
    const label = within ? labelWithin(within, n, limit) : -1;
    return label >= 0 ? spur.cost[n]! + within!.cost[label]! : Number.POSITIVE_INFINITY;
  }),
];

/**
 * Places worth hanging a box at: of all places old cables get to, those where no other is at least as good for every
 * kind of home run. A box for several cables hangs at one of them too.
 */
export const boxSites = (network: Network, kinds: readonly CutInKind[], may: PlaceCheck): BoxSite[] => {
  const columns = kinds.flatMap(columnsOf);
  const nodes: number[] = [];
  for (let n = 0; n < network.nodeCount; n++)
    if (kinds.some((k) => k.spur.cost[n]! + k.cheap.cost[n]! < Number.POSITIVE_INFINITY)) nodes.push(n);
  nodes.sort(
    (a, b) => network.x[a]! - network.x[b]! || network.y[a]! - network.y[b]! || network.z[a]! - network.z[b]! || a - b,
  );
  const rows = nodes.map((n) => {
    const row = new Float64Array(columns.length);
    for (let k = 0; k < row.length; k++) row[k] = columns[k]!(n);
    return row;
  });
  return skyline(rows, (i) => may.node(nodes[i]!)).map((i): BoxSite => {
    const node = nodes[i]!;
    return { key: placeKey(network, node), node, point: pointOf(network, node), on: boxOnAt(network, node) };
  });
};
