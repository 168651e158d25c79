import type { PriceBook } from '../job/schema';
import { compareText } from '../units/order';
import { cableMaterials } from './bookCables';
import { bookTasks } from './bookHours';
import { partMaterials } from './bookParts';

/** What a job with `priceBook: 'default'` is priced with. Allowances of this book count as invented. */
export const DEFAULT_BOOK_ID = 'default';

const sorted = <T extends { readonly id: string }>(list: readonly T[]): readonly T[] =>
  [...list].sort((a, b) => compareText(a.id, b.id));

/** Invented dollars: low, likely, high. */
const ALLOWANCES: Readonly<Record<string, readonly [low: number, likely: number, high: number]>> = {
  permit: [120, 160, 260],
  'utility pull': [0, 150, 450],
  're-inspection': [60, 90, 150],
  disposal: [20, 40, 80],
  'second trip': [60, 90, 140],
  generator: [90, 140, 240],
  'lead-safe set-up': [90, 160, 320],
  'access hatch': [60, 95, 160],
  paint: [60, 120, 260],
  warranty: [40, 90, 200],
  plumber: [180, 260, 420],
  'sheet-metal worker': [200, 320, 520],
  'drywall and paint trade': [220, 360, 600],
  'utility service upgrade': [0, 400, 1200],
  'splice spot': [45, 45, 45],
};

/** Invented working days for what a counter seldom has on its shelf. */
const LEAD: Readonly<Record<string, number>> = {
  'panel:54': 5,
  'panel:60': 5,
  'panel:66': 7,
  'breaker:2p 15 AFCI': 5,
  'breaker:2p 20 AFCI': 5,
  'breaker:2p 15 AFCI+GFCI': 7,
  'breaker:2p 20 AFCI+GFCI': 7,
  'breaker:2p 175': 5,
  'connected:1p': 10,
  'connected:2p': 10,
  hub: 10,
  'trim:clear': 14,
};

/**
 * The default price book: complete, invented, to be replaced by the contractor's own. A labor-hour at cost: a wage of
 * $29.98 (US Bureau of Labor Statistics, electricians, median, May 2024), on top of it 0.433 for benefits and taxes (the
 * same bureau, construction, June 2022) and 0.3015 for hours paid but not sold (invented): $52.00. Overhead 21.6 % of sales for a
 * small contractor (a trade journal, 2002) is about 0.3 of direct cost at a tenth profit.
 */
export const defaultBook: PriceBook = {
  id: DEFAULT_BOOK_ID,
  dated: '2026-01-01',
  materials: sorted([...cableMaterials, ...partMaterials]),
  tasks: sorted(bookTasks),
  dollarsPerCrewHour: 52,
  overheadRate: 0.3,
  profit: { as: 'margin', rate: 0.1 },
  tax: { rate: 0.06, on: ['material'] },
  wage: { dollarsPerHour: 29.98, burden: 0.7345 },
  minimumDollars: 350,
  roundToDollars: 0,
  lead: sorted(Object.entries(LEAD).map(([id, days]) => ({ id, days }))),
  allowances: sorted(Object.entries(ALLOWANCES).map(([id, [low, likely, high]]) => ({ id, low, likely, high }))),
};
