/** Sentences of the rules about circuits. Lengths arrive as feet and inches. */
export const circuitWords = {
  afciVolts: 'Voltage between the conductors of the load',
  afciRating: 'Rating of the circuit',
  afciRooms: 'Rooms the circuit serves',
  afciAmendment: 'Local rule on arc-fault protection when a panel is replaced',
  afciOutlet: 'Outlet or device added',
  afciNewHomeRun: 'New home run: it replaces wiring, which no length excuses',
  afciShortened: 'Wiring only cut shorter: a modification by the word, seldom asked for',
  afciOutside: 'Length of the extension outside cabinets and boxes',
  afciTails: 'The same with the conductors inside cabinets and boxes',
  afciLimit: 'Longest extension that is excused',
  afciResult: 'Arc-fault protection required',
  afciEditions: 'Code year not known: answers of all four',
  afciRemedy: (v: { withSwitch: boolean; shared: boolean; gfci: boolean; hardWired: boolean }) => {
    const breaker = v.gfci ? 'Dual-function breaker, AFCI and GFCI' : 'AFCI breaker';
    const chosen = v.shared
      ? `Two-pole ${v.gfci ? 'dual-function breaker, AFCI and GFCI,' : breaker} listed for a shared neutral`
      : breaker;
    if (v.hardWired) return `${chosen}.`;
    const first = `an outlet branch-circuit AFCI at the first ${v.withSwitch ? 'receptacle or switch' : 'receptacle'} of the circuit, if it has a receptacle`;
    return v.gfci
      ? `${chosen}; or ${v.shared ? 'a two-pole AFCI breaker' : 'an AFCI breaker'} or ${first}, with GFCI receptacles where GFCI protection is needed.`
      : `${chosen}, or ${first}.`;
  },

  afciRequired: (v: { label: string; length: string; adds: boolean; newHomeRun: boolean }) =>
    v.adds
      ? `${v.label}: an outlet or device is added, so arc-fault protection comes with it.`
      : v.newHomeRun
        ? `${v.label}: its wiring is replaced over ${v.length}, so arc-fault protection comes with it.`
        : `${v.label}: extended by ${v.length}, over the length that is excused; arc-fault protection comes with it.`,
  afciExempt: (v: { label: string; length: string }) =>
    `${v.label}: extended by ${v.length}, not over the length that is excused.`,
  afciNear: (v: { label: string; length: string }) =>
    `${v.label}: extended by ${v.length}, close to the length that is excused.`,
  afciTape: () => 'Tape the new cable from box wall to panel wall before anything is closed.',
  afciAsk: (v: { label: string; length: string; work: 'shortened' | 'new home run' | 'extended' }) =>
    v.work === 'shortened'
      ? `${v.label}: its cable is only drawn back and cut shorter; whether that brings arc-fault protection is for the inspector. Ask before the price is fixed.`
      : v.work === 'new home run'
        ? `${v.label}: its home run is replaced over ${v.length}, not more than the length that excuses an extension; whether that excuses it is for the inspector. Ask before the price is fixed.`
        : `${v.label}: extended by ${v.length}, within the length that is excused only if conductor inside cabinets and boxes is left out; that is for the inspector. Ask before the price is fixed.`,
  afciAskLook: () =>
    'Ask the inspector: the question sheet has this question, and an answer there settles it for every circuit.',
  afciTogether: (v: { label: string; lengths: readonly string[]; all: string }) =>
    `${v.label}: ${v.lengths.length} of its home runs are extended, by ${v.lengths.join(' and ')}; each is within the length that is excused, together they are ${v.all}.`,
  afciTogetherLook: () =>
    'Verify in field: tape every extension, and ask the inspector whether they are counted one by one or together.',
  afciUntold: (v: { label: string }) =>
    `${v.label}: whether arc-fault protection comes with this work waits for what the circuit is and serves.`,
  afciUntoldLook: () => 'Read the breaker rating and trace every outlet and switch of the circuit.',
  afci17: (v: { label: string; outside: string; all: string }) =>
    `${v.label}: ${v.outside} outside, ${v.all} with the conductors inside cabinets and boxes; this code year does not say which counts.`,
  afci17Holds: (v: { label: string; all: string }) =>
    `${v.label}: ${v.all} with everything counted, excused on either reading.`,
  afci17Look: () => 'Ask the inspector whether conductors inside cabinets and boxes count.',
  areaKnown: (v: { label: string; rooms: string }) =>
    `${v.label} serves ${v.rooms}: in the list of rooms, so the work on its wiring is judged under AFCI-EXT.`,
  areaUnknown: (v: { label: string }) => `${v.label}: the rooms it serves are not all known or not named in the list.`,
  areaLook: () => 'Switch the circuit off and find every outlet, light and switch that goes dead.',
  local: (v: { label: string }) =>
    `${v.label}: a local rule asks for no arc-fault protection when a panel is replaced; it may be added by choice.`,

  carryOver: (v: { label: string; protection: string }) =>
    `${v.label} has ${v.protection} today; the new panel provides it again.`,
  carryUnknown: (v: { label: string }) =>
    `${v.label}: whether its breaker protects against arc or ground faults is not known.`,
  carryLook: () => 'Look for a test button on the breaker and for protected receptacles downstream.',

  mwbcHolds: (v: { labels: string }) =>
    `${v.labels} share a neutral: opposite legs, and a simultaneous disconnect (a listed handle tie or a common-trip breaker).`,
  mwbcSameLeg: (v: { labels: string }) =>
    `${v.labels} share a neutral and stand on the same leg: the neutral would carry both.`,
  mwbcApart: (v: { labels: string }) => `${v.labels} share a neutral and do not stand together in the new panel.`,
  mwbcMove: () =>
    'Give the two circuits neighboring spaces on opposite legs, with a simultaneous disconnect (a listed handle tie or a common-trip breaker).',
  mwbcLook: () => 'Meter hot to hot: about 240 V.',
  mwbcUnknown: (v: { labels: string }) => `${v.labels}: whether the cable shares one neutral is not known.`,

  groupBorrowed: (v: { label: string }) =>
    `${v.label}: its current returns in the neutral of another circuit, so that neutral can be live with its own breaker off. Find both circuits, open and lock out both breakers, and test before any neutral is parted. Then give this circuit a neutral of its own, or run hot and neutral together in one cable or raceway. A handle tie or a common trip alone leaves the current going out one way and back another.`,

  threeWireNew: (v: { label: string }) => `${v.label}: the old three-wire circuit becomes a new one of four wires.`,
  threeWireService: (v: { label: string }) => `${v.label}: three wires, from service equipment: may stay as it is.`,
  threeWireInsulated: (v: { label: string }) => `${v.label}: three wires with an insulated neutral: may stay as it is.`,
  threeWireBare: (v: { label: string }) =>
    `${v.label}: the bare neutral of a three-wire circuit may not come from a subpanel.`,
  threeWireCover: (v: { label: string }) =>
    `${v.label}: the bare neutral may come from a subpanel only covered inside it, under conditions.`,
  threeWireCoverLook: () =>
    'Check that the circuit is existing, unbroken, and its bare neutral can be covered in the panel.',
  threeWireUnknown: (v: { label: string }) => `${v.label}: how many wires it has, or what its panel is, is not known.`,
  threeWireLook: () =>
    'Open the panel: is the neutral insulated, and is there a separate equipment grounding conductor?',
  threeWireRemedy: () => 'Run a new four-wire home run with its receptacle and cord.',

  rangeExtended: (v: { label: string }) =>
    `${v.label}: a three-wire range or dryer circuit is lengthened; relief is for existing circuits only, so it needs four wires.`,
  rangeNew: (v: { label: string; gfci: boolean }) =>
    `${v.label}: new four-wire run, so a four-wire receptacle and cord${v.gfci ? ', with GFCI protection' : ''}.`,
  rangeUnknown: (v: { label: string }) => `${v.label}: whether it is a three-wire range or dryer circuit is not known.`,

  ungrounded: (v: { cable: string }) =>
    `No equipment grounding conductor in ${v.cable}, which is lengthened; inspectors differ on what its ground may connect to. Run an equipment ground in the new piece, bond the splice box to it, and test the old end for a ground.`,
  ungroundedLook: () => 'Open the first box: is there any grounding path? Label outlets that stay without one.',
  ungroundedUnknown: (v: { cable: string }) =>
    `Whether there is an equipment grounding conductor in ${v.cable}, which is lengthened, is not known. The new piece has one: bond the splice box to it, and test the old end for a ground.`,

  gfciNewLook: () => 'Note the room and the distance to any sink of the added outlet.',
} as const;
