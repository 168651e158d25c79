const PART = { jacket: 'jacket', hot: 'hot', neutral: 'neutral', ground: 'ground' } as const;
type Part = keyof typeof PART;

/** Why a home run goes the way it does. Lengths arrive as feet and inches. */
export const routingWords = {
  stays: () => 'It already enters where the new panel stands, and everything reaches its terminal.',
  reuse: (v: { spare: string; thin: boolean }) =>
    `Drawn back to its pivot it reaches: jacket, hot, neutral and ground, the shortest with ${v.spare} to spare.${v.thin ? ' That is little: tape it before counting on it.' : ''}`,
  reuseUntold: (v: { because: string }) => `Drawn back, though ${v.because}.`,
  spliceInPanel: (v: { part: Part; short: string | null }) =>
    `The jacket reaches the new panel, but the ${PART[v.part]} ${v.short === null ? 'may not reach' : `is ${v.short} short`}: joined inside the panel.`,
  cutIn: (v: { length: string }) => `Cut in and spliced upstream; ${v.length} of new cable outside boxes and panel.`,
  cutInShort: (v: { part: Part; short: string; length: string }) =>
    `The ${PART[v.part]} is ${v.short} short, so it is cut in and spliced upstream; ${v.length} of new cable.`,
  spliceCan: (v: { can: string; length: string }) =>
    `Spliced in ${v.can}, kept for splices only; ${v.length} of new cable.`,
  newHomeRun: () => 'A new home run costs less than joining the old cable.',
  newHomeRunOnly: (v: { because: string }) => `A new home run: ${v.because}.`,
  staysOnOld: (v: { can: string }) => `Stays where it is in ${v.can}, which this option keeps.`,
  pinned: (v: { way: string }) => `Pinned by you: ${v.way}.`,
  pinImpossible: (v: { way: string; because: string }) => `Pinned to ${v.way}, but ${v.because}.`,
  pinsClash: (v: { pins: string }) => `The pins ${v.pins} cannot all hold for this cable: take one away.`,
  pinnedButStays: () => 'Pinned through points, but this option leaves it on the old panel.',
  throughUnreached: (v: { pin: string }) => `No clear way leads through the points of the pin ${v.pin}.`,
  blocked: (v: { by: string }) => `No clear way to the new panel: ${v.by}.`,

  feederKept: () =>
    'The feeder stays: where it comes in it reaches the lugs of the new panel as it does those of the old.',
  feederMoved: () => 'A new feeder, whole from its source: the old one ends at the old panel and is not lengthened.',
  feederShort: () =>
    'A new feeder, whole from its source: where the old one comes in it does not reach the lugs of the new panel.',
  feederFromDisconnect: () => 'A new feeder, from the new service disconnect.',
  feederNotDrawn: () =>
    'Whether the feeder can stay cannot be told: it is not drawn. It is planned as a new one, of a length nobody knows.',

  becauseShort: (v: { part: Part; short: string }) => `the ${PART[v.part]} is ${v.short} short`,
  becausePivotUnknown: () => 'its pivot is not known, so whether it reaches cannot be told',
  becauseTailsUnknown: () => 'its free conductor in the old panel is not known, so whether it reaches cannot be told',
  becauseNotDrawnBack: () => 'it cannot be drawn back',
  becauseDrawBackUnknown: () => 'whether it can be drawn back is not known',
  becauseCondition: (v: { condition: string }) => `it is ${v.condition}`,
  becauseKnobAndTube: () => 'knob-and-tube wiring is not reused and not cut in',
  becauseRaceway: () => 'its conductors lie in a raceway',
  becauseThreeWire: () =>
    'it is a three-wire range or dryer cable, which only stays as it is: lengthened or moved it becomes four wires',
  becauseNoSpot: () => 'no box that stays reachable can be set where its cable comes off the run',
  becauseLarge: (v: { size: string }) => `${v.size} AWG conductors need a pull box sized for them`,
  becauseNotOffered: () => 'that way is not offered here',
  becauseNoPath: () => 'no clear path leads to the new panel',
} as const;
