const shown = (n: number): string => String(Math.round(n * 1000) / 1000);

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
  beyondVolts: (v: { volts: number }) => `Expected at most ${v.volts} volts to ground.`,
  leftRight: () => 'Expected the far side not before the near side.',

  conductorsCount: (v: { awg: string; count: number }) => `${v.count} conductor(s) of ${v.awg} AWG, one allowance each`,
  groundsCount: (v: { awg: string; count: number; allowances: number }) =>
    `${v.count} EGC(s), the largest ${v.awg} AWG: ${shown(v.allowances)} allowance(s)`,
  clampsCount: (v: { awg: string }) => `clamps inside the box: one allowance of the largest conductor, ${v.awg} AWG`,
  fittingsCount: (v: { awg: string; count: number }) =>
    `${v.count} support fitting type(s): one allowance each of the largest conductor, ${v.awg} AWG`,
  yokesCount: (v: { awg: string; count: number }) => `${v.count} device yoke(s) on ${v.awg} AWG: two allowances each`,
  fillSum: () => 'volume needed',
  boxGiven: () => 'volume of the box',
  equalIsEnough: () => 'the box holds it when its volume is not less than the volume needed',

  areaOf: (v: { awg: string; insulation: string; count: number }) =>
    `${v.count} conductor(s) of ${v.awg} ${v.insulation}`,
  conductorShareStep: () => 'conductors as a share of the section',
  totalShareStep: () => 'conductors, splices and taps as a share of the section',

  shareMost: () => 'of which at most',

  straightPull: (v: { times: number; largest: number }) =>
    `straight pull: ${v.times} times the largest trade size, ${shown(v.largest)} in`,
  anglePull: (v: { times: number; largest: number }) =>
    `angle pull, U pull or splice: ${v.times} times the largest trade size, ${shown(v.largest)} in`,
  otherEntries: () => 'plus the other entries of the same row',
  sameConductorSpacing: (v: { times: number }) =>
    `between the two entries of the same conductor: ${v.times} times the larger trade size`,
  cableEntries: () => 'for a cable, the trade size of the raceway its conductors would need',
  least: () => 'not less than',

  bendNotSpecified: (v: { awg: string }) => `no bending space is set for ${v.awg}`,
  bendRow: (v: { awg: string; wires: number; wall: string }) =>
    `${v.awg}, ${v.wires} wire(s) on one terminal, ${v.wall === 'side' ? 'leaving through a wall beside or behind it' : 'leaving through the wall opposite the terminal'}`,

  largestHole: (v: { share: string }) => `largest hole: ${v.share} of the actual depth`,
  woodAtEdge: () => 'wood between hole and edge, at least',
  deepestNotch: () => 'deepest notch in the outer thirds of the span',
  deepestEndNotch: () => 'deepest notch at the end of the member',
  nailPlate: () => 'cable hole closer than this to the nail face: steel plate',
  holeGiven: () => 'hole',
  edgeGiven: () => 'wood at the nearer edge',
  noEdgeGiven: () => 'the most wood that hole can leave at both edges',
  notchGiven: () => 'notch, taken as in the outer thirds of the span and not at an end',

  diameterOf: (v: { name: string }) => `outside diameter of ${v.name}, the larger one if flat`,
  diameterGiven: () => 'outside diameter as given',
  diameterNotKnown: (v: { name: string }) => `no outside diameter is on file for ${v.name}: measure it`,
  timesDiameter: (v: { times: number }) => `${v.times} times the diameter, to the inside of the bend`,

  depthNeeded: (v: { volts: number }) => `clear depth in front at ${v.volts} V to ground`,
  depthByOpposite: () => 'the depth depends on what stands opposite: live parts or a grounded surface',
  depthFound: () => 'clear depth found',
  widthNeeded: () => 'clear width: the larger of 30 in and the equipment; need not be centered',
  widthFound: () => 'clear width found, from the first thing on the left to the first on the right',
  heightNeeded: () => 'headroom: the larger of 78 in and the top of the equipment',
  heightFound: () => 'headroom found',
  headroomException: () =>
    'existing dwelling and not over 200 A: less headroom is allowed by the words; confirm with the inspector for a new spot',
  handleNeeded: () => 'center of the highest breaker handle, at its highest, at most',
  handleFound: () => 'handle found',

  zoneFoot: () => "zone: the equipment's own width and depth",
  zoneTop: () => 'up to 6 ft above the equipment or the structural ceiling, whichever is lower',
  thingInZone: (v: { inside: boolean }) =>
    v.inside ? 'the thing reaches into the zone' : 'the thing stays out of the zone',
} as const;
