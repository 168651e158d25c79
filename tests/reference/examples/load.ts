import { cookingDemand, lightingDemand } from '../../../src/calculations/loadParts';
import type { CalcInput } from '../../../src/calculations/types';
import { nextStandardSize } from '../../../src/standards/overcurrent';
import { also, asker, calc, code, type Row } from './asking';

const load = asker('load', {
  edition: 2017,
  method: 'optional',
  areaFt2: 0,
  smallAppliance: 0,
  laundry: 0,
  fixedVA: [],
  rangeVA: [],
  dryerVA: [],
  ovenVA: [],
  cooktopVA: [],
  wholeDwelling: true,
  newHvac: false,
  heatVA: 0,
  coolVA: 0,
  largestMotorVA: 0,
  evVA: 0,
  otherVA: 0,
  peakVA: null,
});
type Change = Partial<CalcInput['load']>;
const HOUSE: Change = { smallAppliance: 2, laundry: 1, dryerVA: [5000] };
const total = (change: Change): Row[] => [
  calc('total_va', load(change), 'va'),
  calc('amps', load(change), 'amps', 0.05),
];

const lc03: Change = { ...HOUSE, areaFt2: 1500, rangeVA: [12_000], fixedVA: [2500, 1200], fixedNoNeutralVA: 2500 };
const lc05: Change = { ...HOUSE, areaFt2: 2000, rangeVA: [12_000], fixedVA: [4500, 1200] };
const lc06: Change = { ...HOUSE, areaFt2: 2800, rangeVA: [14_000], fixedVA: [3000, 1500] };
const lc08: Change = { ...HOUSE, areaFt2: 2680, ovenVA: [9600], fixedVA: [2500, 1200, 600] };
const lc09: Change = {
  ...HOUSE,
  areaFt2: 2680,
  ovenVA: [9600],
  cooktopVA: [4500],
  fixedVA: [4500, 1200, 600, 2400, 9000],
};
const lc04: Change = { ...HOUSE, areaFt2: 1500, ovenVA: [4000, 4000], cooktopVA: [5100], fixedVA: [4500, 1200] };
const lc13: Change = {
  method: 'standard',
  areaFt2: 3800,
  smallAppliance: 3,
  laundry: 1,
  fixedVA: [28_000, 1200, 1200, 1500],
  dryerVA: [5000],
  rangeVA: [12_000],
  coolVA: 5088,
  largestMotorVA: 1500,
};
const general = (change: Change): Row[] => [
  calc('general_va', load(change), 'generalVA'),
  calc('general_demand_va', load(change), 'va'),
];
/** The standard rating a load asks for, of those over it. */
const service = (expect: string, change: Change): Row =>
  calc(expect, load(change), (a) => Number(nextStandardSize(Number(a.amps), 2017)));
/** What a change adds to the load. */
const adds = (expect: string, change: Change, more: Change): Row =>
  calc(expect, [load({ ...change, ...more }), load(change)], (a, b) => Number(a.va) - Number(b!.va));
const bare = (change: Change) => load({ method: 'standard', ...change });
const lc20: Change = { method: 'existing', otherVA: 27_600 };

export const loadExamples: Readonly<Record<string, readonly Row[]>> = {
  'LC-03': [
    ...general(lc03),
    adds('heat_va', lc03, { heatVA: 9000, heatUnits: 5 }),
    ...total({ ...lc03, heatVA: 9000, heatUnits: 5 }),
    // not under 100 A, 230.79(C)
    calc('min_service_a', load({ ...lc03, heatVA: 9000, heatUnits: 5 }), (a) =>
      Math.max(100, Number(nextStandardSize(Number(a.amps), 2017))),
    ),
    calc('neutral_va', load(lc03), 'neutralVA'),
  ],
  'LC-04': [
    ...general(lc04),
    adds('cooling_va', lc04, { coolVA: 6 * 7 * 240 }),
    ...total({ ...lc04, heatVA: 1500, coolVA: 10_080 }),
    code('neutral_cooking_demand_va', 'table of cooking', () => Number(cookingDemand([4000, 4000, 5100])), 5.001),
  ],
  'LC-05': [
    calc('general_demand_va', load(lc05), 'va'),
    adds('hvac_va', lc05, { heatVA: 24 * 240, supplementVA: 15_000 }),
    ...total({ ...lc05, heatVA: 24 * 240, supplementVA: 15_000 }),
    service('service_a', { ...lc05, heatVA: 24 * 240, supplementVA: 15_000 }),
  ],
  'LC-06': [
    ...general(lc06),
    adds('hvac_va', lc06, { heatVA: 15_000, coolVA: 29 * 240 }),
    ...total({ ...lc06, heatVA: 15_000, coolVA: 29 * 240 }),
  ],
  'LC-08': [
    ...general(lc08),
    // 40 % is right with four or more units, controlled apart
    adds('heat_demand_va', lc08, { heatVA: 25_000, heatUnits: 4 }),
    ...total({ ...lc08, heatVA: 25_000, heatUnits: 4 }),
  ],
  'LC-09': [...general(lc09), adds('heat_demand_va', lc09, { heatVA: 25_000 }), ...total({ ...lc09, heatVA: 25_000 })],
  'LC-13': [
    calc('lighting_demand_va', bare({ areaFt2: 3800, smallAppliance: 3, laundry: 1 }), 'va'),
    calc('fixed_demand_va', bare({ fixedVA: [28_000, 1200, 1200, 1500] }), 'va'),
    calc('dryer_va', bare({ dryerVA: [5000] }), 'va'),
    calc('dryer_neutral_va', bare({ dryerVA: [5000] }), 'neutralVA', 1e-9),
    calc('range_va', bare({ rangeVA: [12_000] }), 'va'),
    calc('range_neutral_va', bare({ rangeVA: [12_000] }), 'neutralVA', 1e-9),
    calc('motor_25pct_va', bare({ largestMotorVA: 1500 }), 'va'),
    calc('hvac_va', bare({ coolVA: 5088 }), 'va'),
    ...total(lc13), // the source drops the air handler: 49,636 VA
  ],
  'LC-16': [calc('demand_kw', bare({ rangeVA: Array<number>(10).fill(14_000) }), (a) => Number(a.va) / 1000, 1e-9)],
  'LC-17': [calc('demand_kw', bare({ rangeVA: [14_000] }), (a) => Number(a.va) / 1000, 1e-9)],
  'LC-18': [
    calc('demand_va', bare({ areaFt2: 11_000 / 3 }), 'va', 1e-6),
    code({ what: 'demand_va of 11,000 VA as they stand', is: 5800 }, 'steps of the lighting demand', () =>
      lightingDemand(11_000),
    ),
  ],
  'LC-19': [
    calc('demand_va', bare({ fixedVA: [800, 800, 800, 800] }), 'va'),
    calc('factor', bare({ fixedVA: [800, 800, 800, 800] }), (a) => Number(a.va) / 3200),
  ],
  'LC-20': [
    calc('code_text_a', load({ ...lc20, evVA: 19_200 }), 'amps', 1e-6),
    // readings of inspectors: both chargers beside the rest at 125 %; only one of them running
    calc('ahj_variant_one_ev_a', load({ ...lc20, evVA: 0 }), (a) => (Number(a.va) + 1.25 * 9600) / 240, 1e-6),
    calc('ahj_variant_ev_at_125pct_a', load({ ...lc20, evVA: 0 }), (a) => (Number(a.va) + 1.25 * 19_200) / 240, 1e-6),
    also('2026: chargers beside the rest, at 100 %', 146, load({ ...lc20, edition: 2026, evVA: 19_200 }), 'amps', 1e-6),
  ],
};
export const loadSkipped: Readonly<Record<string, string>> = {
  'LC-14':
    'a two-family dwelling by 220.85: one house with one panel is planned here, and the calculation has no count of dwellings',
  'LC-15':
    'twenty-four and thirty ranges: the published table of cooking (file 11) ends at ten appliances, and beyond a table nothing is made up',
};
