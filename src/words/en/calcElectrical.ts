/** Sentences of the electrical calculations: what each step is, and what an input was refused for. */
export const electricalWords = {
  // rows of cables
  rowAlone: 'nothing to adjust',
  rowShort: (v: { conductors: number }) => `${v.conductors} conductors together for 24 in or less: no adjustment`,
  rowSpaced: (v: { conductors: number }) => `${v.conductors} conductors, cables a width apart: no adjustment`,
  rowFew: (v: { conductors: number }) => `${v.conductors} current-carrying conductors: no adjustment`,
  rowWireway: (v: { conductors: number; most: number }) =>
    `${v.conductors} of ${v.most} conductors in a wireway: no adjustment`,
  rowArmored: (v: { conductors: number; most: number }) =>
    `${v.conductors} of ${v.most} conductors in armored cable without a jacket: no adjustment`,
  rowHolds: (v: { conductors: number; percent: number }) =>
    `${v.conductors} current-carrying conductors at ${v.percent} %: every breaker holds`,
  rowFails: (v: {
    conductors: number;
    percent: number;
    cable: string;
    amps: number | string;
    carries: number | string;
  }) =>
    `${v.conductors} current-carrying conductors at ${v.percent} %: ${v.cable} carries ${v.carries} A, its breaker is ${v.amps} A`,

  // ampacity
  base: (v: { column: number }) => `Ampacity of the conductor in the ${v.column} °C column`,
  ambient: 'Correction for the ambient temperature',
  counted: 'Adjustment for current-carrying conductors together',
  notTogether: 'Together for 24 in or less: no adjustment',
  corrected: 'Ampacity after correction and adjustment',
  methodLimit: (v: { column: number }) => `Not above the ${v.column} °C column of the wiring method`,
  terminalLimit: (v: { column: number }) => `Not above the ${v.column} °C column of the terminals`,
  terminalGuess: (v: { column: number; others: string }) =>
    `Terminal marking not known: ${v.column} °C taken (${v.others} possible)`,
  usable: 'Ampacity that may be used',
  breaker: 'Overcurrent device',

  // feeder
  startAt: (v: { column: number; cable: string }) => `${v.cable}: derating starts in the ${v.column} °C column`,
  needed: 'Load, its continuous part at 125 %',
  beforeFactors: 'Ampacity before factors, to carry that load',
  loadItself: 'The load itself, to be carried after factors',
  dwellingShare: 'Whole-dwelling feeder: 83 % of the rating will do',
  dwellingUnknown: 'Whether the feeder carries the whole dwelling is not known: the strict reading taken',
  standardSize: 'The ampacity is a standard rating: no rounding up',
  nextSize: 'Next standard rating above the ampacity',
  smallConductor: 'Cap of a small conductor',
  breakerMax: 'Largest device for these conductors',
  egcTable: (v: { metal: string }) => `Equipment grounding conductor, ${v.metal}, by the device`,
  egcRatio: 'Ungrounded conductors enlarged by, in circular mils',
  egcUpsized: (v: { metal: string }) => `Equipment grounding conductor, ${v.metal}, enlarged in proportion`,

  // voltage drop
  ohmGiven: 'Resistance entered, ohms per 1000 ft',
  ohmTable: 'Effective impedance at the power factor, ohms per 1000 ft',
  loop: 'There and back',
  drop: 'Voltage drop',
  dropShare: 'Share of the voltage (3 % a branch or feeder, 5 % together: recommended, not required)',

  // loads
  lighting: 'General lighting and receptacles',
  applianceCircuits: 'Small-appliance and laundry circuits',
  lightingDemand: 'The two after demand',
  fixed: 'Appliances fastened in place',
  fixedDemand: 'Four or more: three quarters',
  dryers: 'Dryers, 5000 VA or nameplate each, after demand',
  cooking: 'Cooking after demand',
  cookingNameplate: 'Cooking, nameplates',
  dryerNameplate: 'Dryers, nameplates',
  hvac: 'Heating or cooling, the larger',
  hvacCompared: 'Cooling compared at 125 %, larger than heating',
  optionalHvac: 'Cooling at 100 % or heating at 65 %, the larger',
  newHvac: 'Heating or cooling, the larger, at 100 %',
  motor: 'A quarter of the largest motor',
  ev: 'Electric vehicle supply',
  other: 'Other loads',
  pile: 'All general loads',
  pileDemand: (v: { first: number }) => `First ${v.first} VA at 100 %, the rest at 40 %`,
  peak: 'Recorded peak',
  peakDemand: 'Recorded peak at 125 %',
  newLoad: 'Load to be added',
  total: 'Load',
  totalAmps: 'Load at 240 V',
  neutral: 'Load on the neutral: cooking and dryers at 70 %, the part over 200 A at 70 %',
  neutralMeasured: 'Load on the neutral: not more than the whole',

  // raceway fill
  insideArea: 'Inside area of the raceway',
  conductorsArea: 'Area of the conductors',
  filled: 'Share filled',
  fillAllowed: (v: { count: number; nipple: boolean }) =>
    v.nipple
      ? 'Allowed in a nipple of 24 in or less'
      : `Allowed for ${v.count} ${v.count === 1 ? 'conductor' : 'conductors'}`,

  // arrangement
  spacesNeeded: 'Spaces taken',
  spacesGiven: 'Spaces in the panel',
  legLoad: (v: { leg: string }) => `Load on leg ${v.leg}`,
  difference: 'Difference between the legs',

  // refusals
  noSuchCalculation: (v: { found: string; known: string }) =>
    `There is no calculation "${v.found}". There are: ${v.known}.`,
  notInTable: (v: { what: string; table: string }) => `${v.what} is not in ${v.table}.`,
  notASize: (v: { found: string }) => `"${v.found}" is not a conductor size: '14' … '1', '1/0' … '4/0', '250' … .`,
  notACable: (v: { found: string; known: string }) => `"${v.found}" is not a cable kind known here: ${v.known}.`,
  notAnInsulation: (v: { found: string; known: string }) => `"${v.found}" is not an insulation known here: ${v.known}.`,
  tooHot: (v: { column: number; ambientF: number }) =>
    `The table has no factor for ${v.column} °C conductors in ${v.ambientF} °F.`,
  wholeDwellingOnly:
    'This method is for a service or feeder that carries the whole dwelling; take the standard method.',
  peakNeeded: 'The recorded demand, in VA, is needed for this method.',
  tooMany: (v: { what: string; most: number }) => `More than ${v.most} ${v.what}: beyond the table.`,
  tooLarge: (v: { what: string; most: number }) => `${v.what} over ${v.most} VA: beyond the table.`,
  noConductors: 'No conductor is given.',
  noPartner: (v: { partner: string }) =>
    `"${v.partner}" is not a single-pole circuit that names this one as its partner.`,
  twicePresent: (v: { id: string }) => `The id "${v.id}" is given twice.`,
} as const;
