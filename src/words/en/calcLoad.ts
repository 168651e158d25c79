/** Made once: making a format takes longer than a whole calculation. */
const FORMAT = new Intl.NumberFormat('en-US', { maximumFractionDigits: 2 });
const n = (value: number): string => FORMAT.format(value);
const percent = (share: number): string => `${n(100 * share)} %`;
const sum = (list: readonly number[]): string => list.map(n).join(' + ');

/** Steps of the load calculation, each with its arithmetic, and what it refuses. */
export const loadCalcWords = {
  lighting: (v: { areaFt2: number; each: number }) =>
    `General lighting and receptacles: ${n(v.areaFt2)} ft² × ${n(v.each)} VA`,
  applianceCircuits: (v: { small: number; laundry: number; each: number }) =>
    `Small-appliance and laundry circuits: (${v.small} + ${v.laundry}) × ${n(v.each)} VA`,
  lightingDemand: (v: { va: number; steps: readonly { readonly va: number; readonly factor: number }[] }) =>
    `The two together, ${n(v.va)} VA, after demand: ${v.steps.map((s) => `${n(s.va)} at ${percent(s.factor)}`).join(', ')}`,
  fixed: (v: { list: readonly number[] }) => `Appliances fastened in place: ${sum(v.list)}`,
  fixedDemand: (v: { count: number; share: number }) =>
    v.share < 1
      ? `${v.count} of them: four or more at ${percent(v.share)}`
      : 'Fewer than four of them: no demand factor',
  dryers: (v: { list: readonly number[]; least: number }) =>
    `Dryers, ${n(v.least)} VA or the nameplate each, after demand: nameplates ${sum(v.list)}`,
  cooking: (v: { list: readonly number[] }) => `Cooking after the table's demand: nameplates ${sum(v.list)}`,
  cookingNameplate: (v: { list: readonly number[] }) => `Cooking, at nameplates: ${sum(v.list)}`,
  dryerNameplate: (v: { list: readonly number[] }) => `Dryers, at nameplates: ${sum(v.list)}`,
  hvac: (v: { heatVA: number; coolVA: number }) =>
    `Heating ${n(v.heatVA)} or cooling ${n(v.coolVA)}, not both at once: the larger`,
  hvacCompared: (v: { heatVA: number; coolVA: number; share: number }) =>
    `Heating ${n(v.heatVA)} or cooling ${n(v.coolVA)} at ${percent(v.share)}: the larger`,
  supplement: 'Heat that runs together with the heat pump, at 100 %',
  optionalHvac: (v: { heatVA: number; coolVA: number; share: number; units: number }) =>
    `Cooling ${n(v.coolVA)} at 100 %, or heating ${n(v.heatVA)} at ${percent(v.share)} (${v.units < 4 ? 'fewer than four' : 'four or more'} units controlled apart): the larger`,
  optionalPump: (v: { pumpVA: number; supplementVA: number; share: number }) =>
    `Heat pump ${n(v.pumpVA)} at 100 % with its supplement ${n(v.supplementVA)} at ${percent(v.share)}`,
  newHvac: (v: { heatVA: number; coolVA: number }) =>
    `Heating ${n(v.heatVA)} or cooling ${n(v.coolVA)}, the larger, at 100 %`,
  motor: (v: { va: number }) => `The largest motor, ${n(v.va)} VA, a quarter more`,
  ev: (v: { va: number; least: number }) =>
    v.least > v.va
      ? `Electric vehicle supply: ${n(v.va)} VA, not less than ${n(v.least)}`
      : `Electric vehicle supply: ${n(v.va)} VA`,
  other: 'Other loads',
  pile: 'All of these together',
  pileDemand: (v: { first: number; va: number }) =>
    `First ${n(v.first)} VA at 100 %, the other ${n(Math.max(0, v.va - v.first))} at 40 %`,
  peak: 'Recorded peak',
  peakDemand: (v: { va: number }) => `Recorded peak at 125 %: 1.25 × ${n(v.va)}`,
  newLoad: 'Load to be added',
  total: (v: { parts: readonly number[] }) => `Load: ${sum(v.parts)}`,
  totalAmps: (v: { va: number; volts: number }) => `Current: ${n(v.va)} VA ÷ ${v.volts} V`,
  neutral: (v: { lineToNeutralVA: number; cookingAndDryersVA: number; over: boolean }) =>
    `Load on the neutral: ${n(v.lineToNeutralVA)}, with cooking and dryers ${n(v.cookingAndDryersVA)} at 70 %${v.over ? ', the part over 200 A at 70 %' : ''}`,
  neutralMeasured: 'Load on the neutral: not more than the whole',

  wholeDwellingOnly:
    'This method counts on everything in a dwelling never running at once, and so is only for a service or feeder that carries the whole dwelling. For a panel with part of the house take the standard method, or a recorded demand.',
  peakNeeded: 'The recorded demand, in VA, is needed for this method.',
  notInTable: (v: { what: string; table: string }) => `${v.what}: beyond ${v.table}, which is not stretched.`,
  cookingList: (v: { list: readonly number[] }) => `Cooking of ${sum(v.list)} VA`,
  dryerCount: (v: { count: number }) => `${v.count} dryers`,
} as const;
