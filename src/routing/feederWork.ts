import { holeDiameter } from '../calculations/holes';
import type { FeederPlan, Leg, LegBy } from '../facts/result';
import type { UnitMills, Work } from '../facts/work';
import type { Cable } from '../standards/cable';
import { sleeveSize } from '../standards/sleeves';
import { supportRule } from '../standards/supports';
import type { In } from '../units/types';
import { distance3 } from './cutLength';
import { joistHoles } from './holes';
import type { Way3 } from './routes';
import type { Share } from './share';
import type { Network } from './types';

/** A feeder shares no hole, board or opened strip with branch cables: what it takes is its own. */
export const BY_ITSELF: Share = { hole: 1, board: 1, patch: 1, tile: 1 };

/** Wood left above and below a hole, 300.4(A)(1), inches; less takes a steel plate. */
const EDGE_IN = 1.25;
const SLEEVE = 'sleeve';

const sleeveItem = (cable: Cable): string => `${SLEEVE}:${sleeveSize(cable)}`;

/** What the search pays for a feeder's way: its own pulling and its own size of tubing. */
export const feederUnit =
  (unit: UnitMills, cable: Cable): UnitMills =>
  (item) =>
    unit(item === 'pull ft' ? 'feeder ft' : item === SLEEVE ? sleeveItem(cable) : item);

/** Items by the foot of a way of going. */
const ITEMS: readonly (readonly [by: LegBy, item: string])[] = [
  ['running board', 'running board'],
  ['opened drywall', 'patch'],
  ['above lay-in', 'lift tile'],
];

const feetOf = (legs: readonly Leg[], by: LegBy): number =>
  legs.reduce((sum: In, leg) => sum + (leg.by === by ? distance3(leg.from, leg.to) : 0), 0) / 12;

type Laid = Pick<FeederPlan, 'holes' | 'plates' | 'supports'> & { readonly work: readonly Work[] };
export const NOTHING_LAID: Laid = { holes: [], plates: 0, supports: 0, work: [] };

/**
 * Holes, plates, staples, boards, tubing and opened strips along a new feeder's way, counted from its legs. `outside`
 * the room nobody drew what it passes: it is only held, as far apart as its kind may be.
 */
export const feederWork = (network: Network, way: Way3, cable: Cable, outside: In): Laid => {
  const diameter = holeDiameter([cable]) ?? null;
  const depth = Math.min(...network.framing.map((r) => r.depth)) / 64;
  const holes = joistHoles(network, way.legs).map(({ at }) => ({ at, diameter }));
  const plates = depth / 2 - (diameter ?? 0) / 2 < EDGE_IN ? holes.length : 0;
  const { plateHoles, sleeve } = way.work;
  const supports = way.work.supports + Math.ceil(outside / supportRule(cable.kind).apartIn);
  const counted = [
    ['hole', holes.length + plateHoles],
    ['plate', plates],
    ['staple', supports],
    [sleeveItem(cable), sleeve / 12],
    ...ITEMS.map(([by, item]) => [item, feetOf(way.legs, by)] as const),
  ] as const;
  const work = counted
    .filter(([, quantity]) => quantity > 0)
    .map(([item, quantity]): Work => ({ item, quantity, homeRuns: [], rule: null, alternate: null }));
  return { holes, plates, supports, work };
};
