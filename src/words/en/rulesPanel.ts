const wire = (size: string, metal: 'Cu' | 'Al'): string => `${size} AWG ${metal === 'Cu' ? 'copper' : 'aluminum'}`;

/** Sentences of the rules about the panel as equipment, the service and the feeder. */
export const panelWords = {
  roleLook: () =>
    'Open the cover: do the line conductors come straight from the meter, and is a bond screw or strap set?',
  roleUnknown: (v: { what: string }) =>
    `Whether ${v.what} is service equipment is not known, and everything about it depends on that.`,

  ocpdHolds: (v: { amps: number; bus: number }) => `A device of ${v.amps} A protects a bus of ${v.bus} A.`,
  ocpdFails: (v: { amps: number; bus: number }) =>
    `The device in front of it, ${v.amps} A, is larger than the bus, ${v.bus} A.`,
  ocpdUnknown: () => 'The bus rating, or the device in front of the panel, is not known.',
  ocpdNone: () => 'A service panel without a main breaker has nothing in front of it.',
  ocpdLook: () => 'Read the bus rating on the label and the rating of the feeder breaker.',
  ocpdRemedy: () => 'Take a panel with a larger bus, or with a main breaker not over its bus.',

  spacesHold: (v: { needed: number; has: number }) => `${v.needed} of ${v.has} breaker spaces are taken.`,
  spacesFail: (v: { needed: number; has: number }) =>
    `${v.needed} breaker spaces are needed and the panel has ${v.has}.`,
  spacesUnknown: () => 'How many breaker spaces the panel has is not known.',
  spacesLook: () => 'Read the number of spaces and the most circuits on the label.',
  biggerPanel: () => 'Take a panel with more room.',

  knockoutsHold: (v: { needed: number; has: number }) => `${v.needed} of ${v.has} knockouts are used.`,
  knockoutsFail: (v: { needed: number; has: number }) =>
    `${v.needed} cables enter and the panel has ${v.has} knockouts.`,
  knockoutsUnknown: () => 'How many knockouts the panel has is not known.',
  knockoutsLook: () => 'Count the knockouts by side and size, one cable to a connector.',

  neutralHold: (v: { needed: number; has: number }) => `${v.needed} neutrals land on ${v.has} terminals, one to each.`,
  neutralFail: (v: { needed: number; has: number }) =>
    `${v.needed} neutrals and ${v.has} terminals: no two under one screw.`,
  neutralUnknown: () => 'How many neutral terminals the panel has is not known.',
  neutralLook: () => 'Count the neutral terminals; a breaker with a neutral wire uses one too.',
  neutralRemedy: () => 'Take a panel with more neutral terminals, or its listed added bar.',

  bondHolds: (v: { service: boolean }) =>
    v.service
      ? 'Neutral and ground are bonded here, at the service.'
      : 'Neutral and ground stay apart here; grounds land on their own bar.',
  bondIn: () => 'A feeder-fed panel may not join neutral and ground: the bond screw or strap stays out.',
  bondOut: () => 'Service equipment needs its main bonding jumper.',
  bondUnknown: () => 'Whether the bond screw or strap is in, or the ground terminals, is not known.',
  bondBars: (v: { needed: number; has: number }) =>
    `${v.needed} grounds land and the panel has ${v.has} terminals for them: a ground bar is added.`,
  bondLook: () => 'Look for the green screw or the strap between neutral bar and cabinet; count ground terminals.',

  tempMarked: (v: { column: number; method: number }) =>
    `Terminals marked ${v.column} °C: conductors are taken from that column${
      v.column > v.method ? `, except NM cable, held to the ${v.method} °C column (334.80)` : ''
    }.`,
  tempUnknown: (v: { where: string }) => `The terminal marking at ${v.where} is not known.`,
  tempLook: (v: { where: string }) => `Read 60 or 75 °C on the label or lugs at ${v.where}.`,
  atPanel: () => 'the panel',
  atSource: () => 'the feeder source',

  orientHolds: () => 'The panel stands upright: handles up are on.',
  orientPairs: () => 'Upside down, with branch breakers that move sideways: allowed.',
  orientMain: () => 'Upside down with a main breaker: its handle may be down when on.',
  orientUnknown: () => 'Upside down, and whether it has a main breaker is not known.',
  orientLook: () => 'Check which way the main handle moves, and that the maker lets the cabinet be turned over.',

  spdDone: () => 'A surge protective device is there.',
  spdFeeder: () =>
    'A feeder-fed panel is replaced: a surge protective device comes with it, Type 1 or 2, with a nominal discharge current of at least 10 kA.',
  spdService: () => 'Service equipment is replaced: a surge protective device comes with it.',
  spdLocal: () => 'A local rule asks for no surge protective device here.',

  emdiscDone: () => 'The new disconnect outdoors is the emergency disconnect.',
  emdiscLocal: () => 'A local rule asks for no emergency disconnect outdoors here.',
  emdiscNone: () =>
    'Service equipment is replaced: an emergency disconnect outdoors comes with it, and the option has none.',
  emdiscIndoors: () => 'The new service disconnect is indoors; an emergency disconnect belongs outdoors.',
  emdiscAsk: () =>
    'Service equipment is replaced; this code year does not say whether that brings an emergency disconnect outdoors.',
  emdiscLook: () => 'Ask the building department and the utility.',
  emdiscRemedy: () => 'Set a service disconnect outdoors and feed the panel with four wires.',

  svcLocOutdoors: () => 'The service disconnect is outdoors.',
  svcLocStays: () => 'The service panel stays where the service enters.',
  svcLocMoved: () => 'A service panel moved along takes unprotected service conductors with it through the house.',
  svcLocIndoors: () => 'The service disconnect is indoors: it must be nearest to where the service enters.',
  svcLocNotOutdoors: () => 'The service disconnect must be outdoors in this code year.',
  svcLocLook: () => 'Measure the service conductors inside the house; many places set a limit.',

  toSubHolds: () =>
    'The new panel is a subpanel, where the old one was service equipment: new disconnect, four-wire feeder, bond out.',
  toSubNoDisconnect: () =>
    'The old panel is service equipment and the new one is feeder-fed, but the option has no new service disconnect.',
  toSubThreeWire: () => 'The panel becomes a subpanel and its feeder has no separate equipment grounding conductor.',
  toSubBonded: () => 'The panel becomes a subpanel and its bond is still in.',
  toSubUnknown: () => 'Whether the old panel is service equipment is not known.',

  svcGround: () =>
    'Service work: electrode conductor at or ahead of the new disconnect, bonding of water and gas, intersystem terminal.',
  svcGroundLook: () =>
    'Find where the electrode conductor lands, its size, and the jumper at the water meter; smaller than 6 AWG it belongs in raceway or armor (250.64(B), from memory).',
  barrier: () => 'Service equipment: barriers so that no live line terminal can be touched.',
  barrierDisconnect: () =>
    'The new service disconnect: barriers so that no live line terminal can be touched. The panel behind it is a subpanel and needs none.',
  barrierLook: () => 'Order the barrier kit with it.',

  hangAnswered: (v: { kind: string; answer: string }) => `${v.kind} on the old panel: ${v.answer}`,
  hangOpen: (v: { kinds: string }) =>
    `On the old panel, with no answer what becomes of it: ${v.kinds}. The price waits for it.`,
  hangLook: () => 'Say for each thing hung on the old panel who moves it, where it goes and what it costs.',
  sourceOpen: (v: { kinds: string }) =>
    `Power of its own at the old panel, with no answer: ${v.kinds}. The price waits for it.`,
  sourceHouse: () => 'Whether the house has another source of power is not known.',
  sourceHouseSome: () =>
    'The house has another source of power: how it connects to the new panel is not in the survey.',
  sourceLook: () => 'Look for solar, battery, generator inlet, transfer switch; every one can feed back.',

  twoAlHolds: (v: { breaker: number; most: number }) =>
    `2 AWG aluminum on ${v.breaker} A: not over the ${v.most} A it may have here.`,
  twoAlFails: (v: { breaker: number; carries: string }) => `2 AWG aluminum on ${v.breaker} A is too much. ${v.carries}`,
  twoAl: () => '2 AWG aluminum',
  feederCarries: (v: {
    cable: string;
    at: readonly { column: number; amps: number; most: number; wholeMost: number | null }[];
  }) => {
    const [best] = v.at;
    const alike = v.at.every((x) => x.amps === best?.amps && x.most === best.most && x.wholeMost === best.wholeMost);
    const marks = alike ? v.at.slice(0, 1) : v.at;
    const where = ({ column }: { column: number }) =>
      v.at.length === 1
        ? `with terminals of ${column} °C`
        : alike
          ? 'at either marking of its ends'
          : column === best?.column
            ? `with both ends marked ${column} °C`
            : `where either end is marked ${column} °C`;
    const whole = marks.flatMap((x) => (x.wholeMost === null ? [] : [`up to ${x.wholeMost} A ${where(x)}`]));
    return [
      `${v.cable} carries ${marks.map((x) => `${x.amps} A ${where(x)} (a breaker up to ${x.most} A)`).join(', ')}.`,
      ...(whole.length > 0 ? [`With the whole dwelling on this feeder the breaker may be ${whole.join(', ')}.`] : []),
    ].join(' ');
  },
  feederUntold: (v: { unread: readonly string[]; breaker: number | null }) =>
    `Not known: ${v.unread.join('; ')}. So ${v.breaker === null ? 'what may protect it' : `whether ${v.breaker} A may protect it`} cannot be told.`,
  unreadMarking: (v: { where: string }) => `the terminal marking at ${v.where}`,
  unreadWhole: () => 'whether the whole dwelling hangs on it',
  unreadJacket: () => 'its jacket, which is taken at its strictest',
  unreadBreaker: () => 'the breaker at its source',
  feederHolds: (v: { cable: string; breaker: number }) => `${v.cable} holds a breaker of ${v.breaker} A.`,
  feederFails: (v: { cable: string; breaker: number; most: number }) =>
    `${v.cable} may have ${v.most} A in front of it, not ${v.breaker} A.`,
  feederTooSmall: (v: { cable: string; breaker: number }) => `${v.cable} on ${v.breaker} A does not carry the load.`,
  feederUnknown: () => 'The feeder, its breaker or its terminals are not known well enough.',
  feederLook: () => 'Read the feeder jacket, the breaker at its source and the terminal marking at both ends.',
  feederSmallerBreaker: (v: { amps: number }) => `Put a breaker of ${v.amps} A at the source.`,
  feederSmallerByMarking: (v: { column: number; best: number; amps: number }) =>
    `Put a breaker of ${v.best} A at the source if both ends are marked ${v.column} °C, else ${v.amps} A; the price has ${v.amps} A.`,
  feederNoSmaller: (v: { amps: number; load: number }) =>
    `Replace the feeder: ${v.amps} A, the most it may have in front of it, is too small for a load of at least ${v.load} A.`,
  feederOnlyByMarking: (v: { column: number; best: number; amps: number; load: number }) =>
    `Put a breaker of ${v.best} A at the source if both ends are marked ${v.column} °C; else ${v.amps} A is too small for a load of at least ${v.load} A and the feeder is replaced.`,
  feederNew: () => 'Replace the feeder.',

  fourWireHolds: () => 'The feeder has two hots, an insulated neutral and an equipment grounding conductor.',
  fourWireFails: () =>
    'The feeder to a subpanel needs four wires: two hots, insulated neutral, equipment grounding conductor.',
  fourWireUnknown: () => 'How many wires the feeder has is not known.',
  fourWireLook: () =>
    'Count the feeder conductors at either end: is the neutral insulated, is there a separate ground?',

  egcHolds: (v: { has: string; least: string; metal: 'Cu' | 'Al' }) =>
    `Equipment grounding conductor ${wire(v.has, v.metal)}; at least ${wire(v.least, v.metal)}.`,
  egcFails: (v: { has: string; least: string; metal: 'Cu' | 'Al' }) =>
    `Equipment grounding conductor ${wire(v.has, v.metal)}; ${wire(v.least, v.metal)} is the least.`,
  egcRaceway: () => 'The metal raceway is the equipment grounding conductor.',
  egcUnknown: () => 'The size of the feeder’s equipment grounding conductor is not known.',
  egcLook: () => 'Read or measure the bare conductor of the feeder at the panel.',

  serHolds: () => 'Service-entrance cable of this size is not held to the 60 °C column in insulation.',
  serSmall: () => 'Service-entrance cable this small is held to the 60 °C column where it touches insulation.',
  serUnknown: () => 'Whether the service-entrance cable touches insulation, or its size, is not known.',
  serLook: () => 'Follow the feeder: does it run in insulated walls or ceilings?',

  loadHolds: (v: { amps: number; most: number }) => `Load ${v.amps} A on ${v.most} A.`,
  loadFails: (v: { amps: number; most: number }) =>
    `Load ${v.amps} A is more than the ${v.most} A in front of the panel.`,
  loadUnknown: () => 'The load cannot be told from what is known.',
  loadLook: () =>
    'Read the nameplates, measure the floor area on this panel, count small-appliance and laundry circuits.',
  loadRemedy: () => 'Take a larger feeder and breaker, or take load off the panel.',

  dir: () => 'Write a full directory: every circuit found by test, spares named, no names of people.',
  dirLook: () => 'Test every circuit; do not copy the old card.',
  torque: () => 'Tighten every terminal to its marked torque and record it.',
  torqueLook: () => 'Torque tool, values from the labels.',
  safe: () =>
    'Permit first. Dead before work, locked out, proven dead; line terminals of a service stay live until the utility opens it.',
  safeLook: () => 'Lockout, tester proven before and after, lead and asbestos checked before drilling.',
  openings: () => 'Close unused knockouts and breaker openings.',
  openingsLook: () => 'Seals and filler plates on the order.',
  sccr: () => 'Breakers and panel must bear the fault current at this place.',
  sccrLook: () => 'Ask the utility for the available fault current; compare with the marking.',
  breakerList: () => 'Only breakers listed or classified for this panel, not more poles than it is marked for.',
  breakerListLook: () => 'Read the panel label before ordering.',
  freeWire: () => 'Leave 6 in of free conductor from the sheath in every box.',
  freeWireLook: () => 'Measure before the cover goes on.',
  sheath: () => 'Bring the sheath 1/4 in past the connector in every box and panel.',
  sheathLook: () => 'Look at every entry before the cover goes on.',
  egcJoint: () => 'Join the equipment grounds of every splice, and bond metal boxes.',
  egcJointLook: () => 'Ground screw or clip in each metal box.',
  cableSec: () => 'Secure each cable to the cabinet, one to a connector unless its listing says more.',
  cableSecLook: () => 'Connectors counted by cable on the order.',
  fireStop: () => 'Seal holes through floors, plates and rim.',
  fireStopLook: () => 'Plan not more than two cables to a sealed hole, or show the factor.',
  damage: () => 'Protect the panel from physical damage.',
  damageLook: () => 'Look for doors, vehicles and appliances that can strike it.',
  access: () => 'The breakers must stay within reach of whoever lives here.',
  accessLook: () => 'No tool or ladder between the occupant and the panel; a key is allowed.',
} as const;
