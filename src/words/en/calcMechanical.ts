const shown = (n: number): string => String(Math.round(n * 1000) / 1000);

const FRACTIONS: readonly (readonly [share: number, text: string])[] = [
  [1 / 6, 'one sixth'],
  [1 / 4, 'one quarter'],
];
const fraction = (share: number): string =>
  FRACTIONS.find(([of]) => Math.abs(of - share) < 1e-9)?.[1] ?? `${shown(100 * share)} %`;

interface Judged {
  readonly outcome: 'holds' | 'fails' | 'cannot be told';
}
const judged = ({ outcome }: Judged): string =>
  outcome === 'holds' ? 'enough' : outcome === 'fails' ? 'not enough' : 'cannot be told';

/** Sentences of the mechanical pocket calculations: steps of the working, and what was wrong with an input. */
export const calcMechanicalWords = {
  expectedNumber: (v: { min: number; max: number; above: number | null; whole: boolean }) =>
    `Expected ${v.whole ? 'a whole number' : 'a number'} ${
      v.above === null ? `from ${shown(v.min)}` : `above ${shown(v.above)}`
    } to ${shown(v.max)}.`,
  expectedYesNo: () => 'Expected true or false.',
  expectedOneOf: (v: { allowed: string }) => `Expected one of: ${v.allowed}.`,
  expectedObject: () => 'Expected an object.',
  expectedList: (v: { most: number }) => `Expected a list of at most ${v.most} entries.`,
  expectedSize: () => "Expected a conductor size as a text, like '12' or '1/0'.",
  notByVolume: (v: { awg: string }) =>
    `${v.awg} AWG is not counted by volume; conductors of 4 AWG and larger need a box sized by 314.28 (calculation pull-box).`,
  noConductorArea: (v: { awg: string; insulation: string }) =>
    `No cross-section is on file for ${v.awg} with ${v.insulation} insulation.`,
  expectedInsulation: () => "Expected an insulation as a text, like 'THHN'.",
  needRaceway: () => 'Expected the trade size of at least one raceway or cable entry.',
  noBendRow: (v: { awg: string; wires: number }) =>
    `The table has no figure for ${v.awg} with ${v.wires} wire(s) on one terminal.`,
  needCableOrDiameter: () => 'Expected the trade name of a cable, or its diameter.',
  notACable: (v: { name: string }) =>
    `"${v.name}" is not a cable name known here; write it like '12/2 w/G', '12/2 MC' or '2-2-2-4 Al SER', or give the diameter.`,
  leftRight: () => 'Expected the far side not before the near side.',

  conductorsCount: (v: { awg: string; count: number; each: number }) =>
    `Conductors: ${v.count} of ${v.awg} AWG × ${shown(v.each)} in³`,
  groundsCount: (v: { awg: string; count: number; allowances: number; each: number }) =>
    `Equipment grounds: ${v.count} together count ${shown(v.allowances)} × ${shown(v.each)} in³, by the largest, ${v.awg} AWG`,
  clampsCount: (v: { awg: string; each: number }) =>
    `Clamps inside, all together: 1 × ${shown(v.each)} in³, by the largest conductor, ${v.awg} AWG`,
  fittingsCount: (v: { awg: string; count: number; each: number }) =>
    `Support fittings: ${v.count} kind${v.count === 1 ? '' : 's'} × ${shown(v.each)} in³, by the largest conductor, ${v.awg} AWG`,
  yokesCount: (v: { awg: string; count: number; each: number }) =>
    `Devices: ${v.count} yoke${v.count === 1 ? '' : 's'} on ${v.awg} AWG, two each: ${2 * v.count} × ${shown(v.each)} in³`,
  fillSum: (v: { parts: readonly number[] }) =>
    v.parts.length > 1 ? `Volume needed: ${v.parts.map(shown).join(' + ')}` : 'Volume needed',
  boxGiven: (v: { fits: boolean }) =>
    v.fits
      ? 'Volume of the box: not less than needed, so it holds them'
      : 'Volume of the box: less than needed, so it does not hold them',

  areaOf: (v: { awg: string; insulation: string; count: number; each: number }) =>
    `Conductors: ${v.count} of ${v.awg} ${v.insulation} × ${v.each} in²`,
  conductorShareStep: (v: { in2: number; sectionIn2: number }) =>
    `Conductors as a share of the section: ${shown(v.in2)} ÷ ${shown(v.sectionIn2)} in²`,
  totalShareStep: (v: { in2: number; splicesIn2: number; sectionIn2: number }) =>
    `With splices and taps: (${shown(v.in2)} + ${shown(v.splicesIn2)}) ÷ ${shown(v.sectionIn2)} in²`,

  shareMost: () => 'Of it at most',

  straightPull: (v: { times: number; largest: number }) =>
    `Straight pull: ${v.times} × the largest trade size, ${v.times} × ${shown(v.largest)} in`,
  anglePull: (v: { times: number; largest: number }) =>
    `Angle pull, U pull or splice: ${v.times} × the largest trade size, ${v.times} × ${shown(v.largest)} in`,
  otherEntries: (v: { list: readonly number[] }) =>
    v.list.length > 0
      ? `The other entries of the same row: ${v.list.map(shown).join(' + ')}`
      : 'No other entry in the same row',
  sameConductorSpacing: (v: { times: number }) =>
    `Between the two entries of the same conductor: ${v.times} × the larger trade size`,
  cableEntries: () => 'A cable counts as the trade size of the raceway its conductors would need',
  least: () => 'Distance to the opposite wall, not less than',

  bendNotSpecified: (v: { awg: string }) => `No bending space is set for ${v.awg} AWG`,
  bendRow: (v: { awg: string; wires: number; wall: string }) =>
    `Table row of ${v.awg}, ${v.wires === 1 ? 'one wire' : `${v.wires} wires`} on the terminal, ${v.wall === 'side' ? 'leaving through a wall beside or behind it' : 'leaving through the wall opposite the terminal'}`,

  largestHole: (v: { share: string; depthIn: number }) =>
    `Largest hole: ${v.share} of the actual depth of ${shown(v.depthIn)} in`,
  woodAtEdge: () => 'Wood left between hole and edge, at least',
  deepestNotch: (v: { share: number; depthIn: number }) =>
    `Deepest notch in the outer thirds of the span: ${fraction(v.share)} of ${shown(v.depthIn)} in`,
  deepestEndNotch: (v: { share: number; depthIn: number }) =>
    `Deepest notch at the end of the member: ${fraction(v.share)} of ${shown(v.depthIn)} in`,
  nailPlate: () => 'A cable hole closer than this to the nail face takes a steel plate',
  holeGiven: () => 'Hole',
  edgeGiven: () => 'Wood at the nearer edge',
  noEdgeGiven: () => 'The most wood that hole can leave at both edges',
  notchGiven: () => 'Notch',
  notchInStud: () => 'A notch in a stud may be as deep as',
  notchAtEnd: () => 'At the end of the joist it may be as deep as',
  notchMiddle: () => 'In the middle third of the span no notch is allowed',
  notchPulled: (v: { from: number }) =>
    `On the side that is pulled, a joist of ${shown(v.from)} in nominal or thicker takes a notch only at its ends`,
  notchOuter: () => 'In an outer third of the span it may be as deep as',
  betweenLeast: () => 'Wood left to the next hole or notch, at least',
  betweenGiven: () => 'Wood to the next hole or notch',

  diameterOf: (v: { name: string }) => `Outside diameter of ${v.name}, the larger one if flat`,
  diameterGiven: () => 'Outside diameter as given',
  diameterNotKnown: (v: { name: string }) => `No outside diameter is on file for ${v.name}: measure it`,
  timesDiameter: (v: { times: number; diameter: number }) =>
    `Least radius to the inside of the bend: ${v.times} × ${shown(v.diameter)} in`,

  depthNeeded: (v: { volts: number }) => `Clear depth asked for in front, at ${v.volts} V to ground`,
  depthByOpposite: () => 'The depth depends on what stands opposite: live parts or a grounded surface',
  depthFound: (v: Judged) => `Clear depth found: ${judged(v)}`,
  widthNeeded: () => 'Clear width asked for: the larger of 30 in and the equipment; it need not be centered',
  widthFound: (v: Judged) =>
    `Clear width found, from the first thing on the left to the first on the right: ${judged(v)}`,
  before: (v: { side: 'left' | 'right' }) => `The first thing on the ${v.side} stands before the equipment itself, by`,
  heightNeeded: () => 'Headroom asked for: the larger of 78 in and the top of the equipment',
  heightFound: (v: Judged) => `Headroom found: ${judged(v)}`,
  headroomException: () =>
    'Existing dwelling and not over 200 A: less headroom is allowed by the words; confirm with the inspector for a new spot',
  handleNeeded: () => 'Center of the highest breaker handle, at its highest, at most',
  handleFound: (v: Judged) => `Handle found: ${v.outcome === 'holds' ? 'not higher' : 'higher'}`,

  zoneFoot: () => "Zone: the equipment's own width and depth",
  zoneTop: () => 'Its top: 6 ft above the equipment or the structural ceiling, whichever is lower',
  thingMeets: (v: { way: 'along' | 'out' | 'up'; zoneTo: number; meets: boolean }) =>
    `The thing ${{ along: 'along the wall', out: 'out from the wall', up: 'above the floor' }[v.way]}, beside 0 to ${shown(v.zoneTo)} in of the zone: ${v.meets ? 'they overlap' : 'clear of it'}`,
  thingInZone: () => 'It reaches into the zone: it overlaps all three ways',
} as const;
