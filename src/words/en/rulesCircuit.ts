/** Sentences of the rules about circuits. Lengths arrive as feet and inches, sections as they are printed. */
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
  afciRemedy: (v: { withSwitch: boolean; shared: boolean }) =>
    `${v.shared ? 'Two-pole AFCI breaker listed for a shared neutral' : 'AFCI breaker'}, or an outlet branch-circuit AFCI at the first ${v.withSwitch ? 'receptacle or switch' : 'receptacle'} of the circuit.`,
} as const;
