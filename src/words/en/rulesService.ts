/** Sentences of the rules about service conductors, the service disconnect, its electrode, taps and the feeder's neutral. */
export const serviceWords = {
  condHolds: (v: { cable: string; amps: number }) =>
    `Service-entrance conductors ${v.cable} hold a main of ${v.amps} A for the whole dwelling.`,
  condFails: (v: { cable: string; amps: number; most: number }) =>
    v.most > 0
      ? `Service-entrance conductors ${v.cable} may have ${v.most} A behind them, not ${v.amps} A.`
      : `Service-entrance conductors ${v.cable} are too small for a main of ${v.amps} A.`,
  condUnknown: (v: { amps: number | null }) =>
    v.amps === null
      ? 'The main that the service-entrance conductors end in is not known.'
      : `Whether the service-entrance conductors hold a main of ${v.amps} A cannot be told: size, metal, jacket or terminal marking is not known.`,
  condUnread: (v: { amps: number; jacket: boolean }) =>
    `They carry the whole dwelling. Whether a main of ${v.amps} A may stand behind them waits for the marking of the terminals${v.jacket ? ' and of the jacket, taken at its strictest here' : ''}.`,
  condUnrecorded: () => 'The service-entrance conductors in front of the new disconnect are not in the survey.',
  condLook: (v: { open: readonly string[] }) =>
    `Read ${v.open.length > 0 ? v.open.join(', ') : 'size and metal'} of the service-entrance conductors at the meter or in the panel, dead only after the utility opens the service.`,
  condSize: () => 'the size',
  condMetal: () => 'the metal',
  condJacket: () => 'the marking on the jacket',
  condTerminals: () => 'the marking of the terminals (60 or 75 °C)',
  condUnder: (v: { least: number; section: string }) =>
    `A service disconnect under ${v.least} A is not allowed in a one-family dwelling: ${v.section}, from memory.`,
  condMarked: () => 'Buy a disconnect with terminals marked 75 °C.',
  condSmaller: (v: { amps: number }) => `Put in a main of ${v.amps} A.`,
  condNew: () => 'Replace the service-entrance conductors: utility and permit come with it.',

  sixOne: (v: { amps: number }) => `One main of ${v.amps} A disconnects the service.`,
  sixFails: () =>
    'A service panel without one main is several disconnects in one enclosure, which this code year no longer allows.',
  sixCount: () => 'A service panel without one main: not more than six hands’ movements may disconnect the service.',
  sixUnknown: () => 'Whether one main disconnects the service is not known.',
  sixLook: () => 'Count the handles that disconnect everything, and look for barriers between them.',
  sixRemedy: () => 'Take a panel with one main breaker.',

  backfed: () => 'A main breaker plugged on like a branch breaker and fed backward is held down by a fastener.',
  backfedLook: () => 'Look whether the main is bolted in place or plugged on; order its hold-down kit.',

  electrodeMoves: (v: { size: string }) =>
    `The electrode conductor ends in the old service panel: it goes on to the new disconnect in ${v.size} AWG copper or larger, unspliced or joined by irreversible means only.`,
  electrodeByHand: () => 'Measure the way to the new disconnect and price the longer electrode conductor by hand.',
  electrodeUnknown: () =>
    'Whether the electrode conductor ends in the old service panel, or how large it must be, is not known.',

  tapAsk: (v: { feet: number; amps: number; ahead: number }) =>
    `The feeder carries ${v.amps} A behind ${v.ahead} A. As a tap of not more than ${v.feet} ft, ending in the panel’s own main, it may be allowed; the price has a smaller breaker at the source.`,
  tapLook: () =>
    'Measure the whole feeder; is it in a raceway, does it end in one main not larger than it carries, is nothing joined to it?',

  neutralFull: () => 'The neutral of the feeder is as large as its hots.',
  neutralUnknown: () =>
    'The size of the feeder’s neutral is not known: it must carry the largest unbalanced load and be no smaller than the equipment grounding conductor.',
  neutralLook: () => 'Read or measure the neutral of the feeder at the panel.',
} as const;
