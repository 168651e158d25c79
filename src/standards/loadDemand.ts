import { type ByEdition, everyEdition, nec, type Source, type Standing } from './source';

/** Numbers of the dwelling load calculation: Article 220, in 2026 Article 120 (seen only in secondary statements). */

const article = (old: string, new2023: string, new2026: string, standing: Standing = 'confirmed') =>
  nec({ 2017: old, 2020: old, 2023: new2023, 2026: new2026 }, standing);

/** General lighting and receptacles, VA per square foot. */
export const UNIT_LOAD: ByEdition<number> = { 2017: 3, 2020: 3, 2023: 3, 2026: 2 };
export const UNIT_LOAD_RULE: ByEdition<Source> = nec({
  2017: '220.12',
  2020: '220.14(J)',
  2023: '220.41',
  2026: '120.41',
});
/** VA of each small-appliance and each laundry circuit. */
export const APPLIANCE_CIRCUIT_VA = 1500;
export const APPLIANCE_CIRCUIT_RULE = article('220.52', '220.52', '120.52');

export interface Step {
  /** Up to here, VA. */
  readonly to: number;
  readonly factor: number;
}
export const LIGHTING_DEMAND: readonly Step[] = [
  { to: 3000, factor: 1 },
  { to: 120_000, factor: 0.35 },
  { to: Number.POSITIVE_INFINITY, factor: 0.25 },
];
export const LIGHTING_DEMAND_RULE = article('220.42', '220.45', '120.45');

/** Appliances fastened in place: from so many on, this share. */
export const FIXED_DEMAND = { from: 4, factor: 0.75 } as const;
export const FIXED_RULE = article('220.53', '220.53', '120.53');

export const DRYER_LEAST_VA = 5000;
/** Share of the dryers' load by their number; beyond the last the table is not carried here. */
export const DRYER_DEMAND: readonly { readonly to: number; readonly factor: number }[] = [
  { to: 4, factor: 1 },
  { to: 5, factor: 0.85 },
  { to: 6, factor: 0.75 },
  { to: 7, factor: 0.65 },
  { to: 8, factor: 0.6 },
  { to: 9, factor: 0.55 },
  { to: 10, factor: 0.5 },
  { to: 11, factor: 0.47 },
];
export const DRYER_RULE = article('220.54', '220.54', '120.54');

/** Household cooking by number of appliances: A under 3.5 kW (share), B 3.5 to 8.75 kW (share), C to 12 kW (VA). */
export const COOKING: readonly { readonly a: number; readonly b: number; readonly c: number }[] = [
  { a: 0.8, b: 0.8, c: 8000 },
  { a: 0.75, b: 0.65, c: 11_000 },
  { a: 0.7, b: 0.55, c: 14_000 },
  { a: 0.66, b: 0.5, c: 17_000 },
  { a: 0.62, b: 0.45, c: 20_000 },
  { a: 0.59, b: 0.43, c: 21_000 },
  { a: 0.56, b: 0.4, c: 22_000 },
  { a: 0.53, b: 0.36, c: 23_000 },
  { a: 0.51, b: 0.35, c: 24_000 },
  { a: 0.49, b: 0.34, c: 25_000 },
];
/** Ratings, VA, where the columns begin and end, and what each kW (or larger part of one) above 12 kW adds to column C. */
export const COOKING_BANDS = { over: 1750, bFrom: 3500, bTo: 8750, cTo: 12_000, most: 27_000, perKw: 0.05 } as const;
export const COOKING_RULE = article('Table 220.55', 'Table 220.55', 'Table 120.55');

/** Electric vehicle supply: the least that counts, VA. */
export const EV_LEAST_VA: ByEdition<number> = { 2017: 0, 2020: 0, 2023: 7200, 2026: 7200 };
export const EV_RULE = article('220.14(A)', '220.57', '120.57', 'one source');

/** The load of a feeder: the sum of what it supplies, after the demand factors allowed. */
export const SUM_RULE = article('220.40', '220.40', '120.40', 'memory');

/** Heat and cooling do not run together: the larger. */
export const NONCOINCIDENT_RULE = article('220.60', '220.60', '120.60');
/** Cooling that is not the larger is compared at this share of itself. */
export const COOLING_COMPARED_AT: ByEdition<number> = { 2017: 1, 2020: 1, 2023: 1.25, 2026: 1.25 };
export const MOTOR_RULE = article('220.50', '220.50', '120.50', 'one source');
export const MOTOR_EXTRA = 0.25;

/** Neutral: cooking and dryers at this share; the part of the whole over `overAmps` at the same share. */
export const NEUTRAL = { factor: 0.7, overAmps: 200 } as const;
export const NEUTRAL_RULE = article('220.61', '220.61', '120.61');

/** Whole-dwelling methods: the first part at 100 %, the rest at 40 %. */
export const OPTIONAL_FIRST_VA: ByEdition<number> = { 2017: 10_000, 2020: 10_000, 2023: 10_000, 2026: 8000 };
export const OPTIONAL_REST = 0.4;
/** Share of heating in the optional method, by the number of separately controlled units: 220.82(C). */
export const OPTIONAL_HEAT = { fewUnits: 0.65, manyFrom: 4, manyUnits: 0.4 } as const;
/** Heat that runs together with a heat pump counts at this share beside it: 220.82(C)(4), as the annex example reads it. */
export const OPTIONAL_SUPPLEMENT = 0.65;
export const OPTIONAL_RULE = article('220.82', '220.82', '120.82');
export const EXISTING_FIRST_VA: ByEdition<number> = everyEdition(8000);
export const EXISTING_REST = 0.4;
export const EXISTING_RULE = article('220.83', '220.83', '120.83');
/** Heat or cooling that is already there and stays: in the pile with the rest, or at 100 % beside it. */
export const EXISTING_HVAC: ByEdition<'in the pile' | 'at 100 %'> = {
  2017: 'in the pile',
  2020: 'in the pile',
  2023: 'in the pile',
  2026: 'at 100 %',
};
/** Where electric vehicle supply stands in the whole-dwelling methods. */
export const WHOLE_DWELLING_EV: ByEdition<'in the pile' | 'at 100 %'> = {
  2017: 'in the pile',
  2020: 'in the pile',
  2023: 'in the pile',
  2026: 'at 100 %',
};
/** A recorded demand counts at this share. */
export const MEASURED_FACTOR = 1.25;
export const MEASURED_RULE = article('220.87', '220.87', '120.87');

/** Sections of each method of the load calculation. */
export const METHOD_SECTIONS = {
  standard: article('220.40–220.61', '220.40–220.61', '120.40–120.61'),
  optional: OPTIONAL_RULE,
  existing: EXISTING_RULE,
  measured: MEASURED_RULE,
} as const;

export const SYSTEM_VOLTS = 240;
