/** Made once: making a format takes longer than a whole calculation. */
const FORMAT = new Intl.NumberFormat('en-US', { maximumFractionDigits: 4 });
const n = (value: number): string => FORMAT.format(value);
const metalWord = (metal: string): string => (metal === 'Cu' ? 'copper' : 'aluminum');

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
  base: (v: { column: number; awg: string; metal: string }) =>
    `Table ampacity of ${v.awg} ${metalWord(v.metal)} in the ${v.column} °C column`,
  ambient: (v: { ambientF: number; column: number }) =>
    `Correction of ${v.column} °C insulation for ${n(v.ambientF)} °F around it`,
  counted: (v: { conductors: number }) =>
    v.conductors > 3
      ? `Adjustment for ${v.conductors} current-carrying conductors together`
      : `${v.conductors} current-carrying conductor${v.conductors === 1 ? '' : 's'}: up to three need no adjustment`,
  notTogether: 'Together for 24 in or less: no adjustment',
  corrected: (v: { base: number; ambient: number; count: number }) =>
    `Corrected and adjusted: ${n(v.base)} A × ${n(v.ambient)} × ${n(v.count)}`,
  methodLimit: (v: { column: number }) => `The wiring method holds it to the ${v.column} °C column`,
  terminalLimit: (v: { column: number }) => `Terminals of ${v.column} °C hold it to the ${v.column} °C column`,
  terminalGuess: (v: { column: number; others: string }) =>
    `Marking of the terminals not known: the ${v.column} °C column taken, ${v.others} °C possible`,
  usable: (v: { list: readonly number[] }) => `Ampacity that may be used: the least of ${v.list.map(n).join(', ')}`,
  breaker: (v: { holds: boolean; open: boolean }) =>
    v.holds
      ? 'Overcurrent device: not over that ampacity'
      : v.open
        ? 'Overcurrent device: over that ampacity unless the terminals are marked higher'
        : 'Overcurrent device: over that ampacity',

  // feeder
  startAt: (v: { column: number; cable: string }) => `${v.cable}: ${v.column} °C insulation, derating may start there`,
  needed: (v: { continuous: number; other: number }) =>
    `Load, its continuous part at 125 %: 1.25 × ${n(v.continuous)} + ${n(v.other)}`,
  beforeFactors: (v: { holds: boolean }) =>
    v.holds
      ? 'Ampacity before factors: carries that load'
      : 'Ampacity before factors: less than that load, and rounding up is for devices only',
  loadItself: (v: { continuous: number; other: number; holds: boolean }) =>
    `The load itself, ${n(v.continuous)} + ${n(v.other)}: ${v.holds ? 'carried' : 'not carried'} after all factors`,
  dwellingShare: (v: { breaker: number; least: number; amps: number }) =>
    `The whole dwelling hangs on it: 83 % of ${n(v.breaker)} A is ${n(v.least)} A, beside ${n(v.amps)} A`,
  dwellingOutside: (v: { breaker: number }) =>
    `The whole dwelling hangs on it, but the 83 % rule is for 100 to 400 A, and the device is ${n(v.breaker)} A`,
  dwellingNot: 'Only part of the dwelling hangs on it: no 83 % rule',
  dwellingUnknown: 'Whether the whole dwelling hangs on it is not known: without the 83 % rule',
  dwellingWord: (whole: boolean | 'unknown') => (whole === 'unknown' ? 'not known' : whole ? 'yes' : 'no'),
  standardSize: (v: { amps: number; standard: boolean }) =>
    v.standard
      ? `${n(v.amps)} A is a standard rating: no rounding up`
      : `Largest standard rating not over ${n(v.amps)} A`,
  nextSize: (v: { amps: number }) => `${n(v.amps)} A is no standard rating: the next one up is allowed`,
  smallConductor: 'Cap of a small conductor',
  breakerMax: 'Largest device for these conductors',
  device: (v: { holds: boolean; open: boolean }) =>
    v.holds
      ? 'The device in front of them: holds'
      : v.open
        ? 'The device in front of them: hangs on what is not known'
        : 'The device in front of them: does not hold',
  egcTable: (v: { metal: string; amps: number }) =>
    `Equipment grounding conductor, ${v.metal}, for a device of ${n(v.amps)} A`,
  egcRatio: (v: { now: number; before: number }) =>
    `The hots were enlarged: ${n(v.now)} ÷ ${n(v.before)} circular mils`,
  egcUpsized: (v: { metal: string; mils: number; ratio: number }) =>
    `Equipment grounding conductor, ${v.metal}, enlarged alike: ${n(v.mils)} × ${n(v.ratio)} circular mils`,
  neutralCarries: (v: { amps: number; column: number }) =>
    `Smallest neutral for ${n(v.amps)} A in the ${v.column} °C column`,
  neutralNotBelow: (v: { egc: string }) => `Neutral, not smaller than the equipment grounding conductor, ${v.egc}`,

  // taps
  tapShare: (v: { feet: number; reach: number; part: number; ahead: number }) =>
    `Tap of ${n(v.feet)} ft, not over ${v.reach}: at least 1/${v.part} of the ${n(v.ahead)} A device ahead`,
  tapTooLong: (v: { feet: number; reach: number }) =>
    `Tap of ${n(v.feet)} ft: over ${v.reach} ft these rules allow none`,
  tapLoad: 'A tap carries its load',
  tapEnd: (v: { holds: boolean }) =>
    `The device a tap ends in: ${v.holds ? 'not over' : 'over'} its ampacity; no rounding up for taps`,

  // voltage drop
  ohmGiven: 'Resistance entered, ohms per 1000 ft',
  ohmTable: (v: { r: number; x: number; cos: number; sin: number }) =>
    v.sin === 0
      ? `Resistance to alternating current at 75 °C: ${v.r}`
      : `Impedance at the power factor: ${v.r} × ${n(v.cos)} + ${v.x} × ${n(v.sin)}`,
  loop: (v: { feet: number }) => `There and back: 2 × ${n(v.feet)} ft`,
  drop: (v: { ohms: number; loop: number; amps: number }) =>
    `Voltage drop: ${n(v.ohms)} Ω ÷ 1000 ft × ${n(v.loop)} ft × ${n(v.amps)} A`,
  dropShare: (v: { dropped: number; volts: number }) =>
    `Share: ${n(v.dropped)} of ${n(v.volts)} V (recommended, not required: 3 % a branch or feeder, 5 % both)`,
  left: 'Voltage left at the load',

  // raceway fill
  insideArea: (v: { raceway: string; size: string }) => `Inside area of ${v.raceway}, trade size ${v.size}`,
  conductorArea: (v: { awg: string; insulation: string; count: number; each: number }) =>
    `Conductors: ${v.count} of ${v.awg} ${v.insulation} × ${n(v.each)} in²`,
  filled: (v: { in2: number; inside: number }) => `Share filled: ${n(v.in2)} ÷ ${n(v.inside)} in²`,
  fillAllowed: (v: { count: number; nipple: boolean }) =>
    v.nipple
      ? 'Allowed in a nipple of 24 in or less'
      : `Allowed for ${v.count} ${v.count === 1 ? 'conductor' : 'conductors'}`,

  // arrangement
  spacesNeeded: 'Spaces taken',
  spacesGiven: 'Spaces in the panel',
  legLoad: (v: {
    leg: string;
    parts: readonly { readonly id: string; readonly va: number; readonly half: boolean }[];
  }) => `Leg ${v.leg}: ${v.parts.map((p) => `${p.id} ${n(p.va)}${p.half ? ' (half)' : ''}`).join(' + ') || 'nothing'}`,
  difference: (v: { exact: boolean }) =>
    v.exact ? 'Difference: no other way makes it smaller' : 'Difference, loads rounded to keep the search small',

  // refusals
  noSuchCalculation: (v: { found: string; known: string }) =>
    `There is no calculation "${v.found}". There are: ${v.known}.`,
  notInTable: (v: { what: string; table: string }) => `${v.what} is not in ${v.table}.`,
  notASize: (v: { found: string }) => `"${v.found}" is not a conductor size: '14' … '1', '1/0' … '4/0', '250' … .`,
  notACable: (v: { found: string; known: string }) => `"${v.found}" is not a cable kind known here: ${v.known}.`,
  notAnInsulation: (v: { found: string; known: string }) => `"${v.found}" is not an insulation known here: ${v.known}.`,
  tooHot: (v: { column: number; ambientF: number }) =>
    `The table has no factor for ${v.column} °C conductors in ${v.ambientF} °F.`,
  noConductors: 'No conductor is given.',
  noPartner: (v: { partner: string }) =>
    `"${v.partner}" is not a single-pole circuit that names this one as its partner.`,
  twicePresent: (v: { id: string }) => `The id "${v.id}" is given twice.`,
} as const;
