const percent = (share: number): string => `${Math.round(share * 100)} %`;

/** Sentences of the rules about cables, splices, boxes and framing. */
export const cableWords = {
  nmAllowed: () => 'New cable is nonmetallic-sheathed, indoors and dry, in a one-family house.',
  nmBarred: () => 'Nonmetallic cable is not allowed here: new cable is metal-clad, and priced so.',
  undersideHolds: (v: { cable: string }) => `${v.cable} may run across the undersides of the joists.`,
  undersideFails: (v: { cable: string }) =>
    `${v.cable} is too small to run across the undersides of the joists without holes or a board.`,
  undersideUnknown: () => 'What kind and size of cable runs across the undersides of the joists is not known.',
  undersideLook: () => 'Read the jacket.',
  undersideRemedy: () => 'Bore holes or put up a running board.',
  armored: () => 'Armored cable across the undersides of joists: held at every joist.',
  armoredLook: () => 'A support at each joist.',

  holeHolds: (v: { edge: string }) => `Holes leave ${v.edge} of wood to the edge.`,
  holePlates: (v: { edge: string }) => `Holes leave ${v.edge} of wood to the edge: steel plates cover them.`,
  joistUnknown: () => 'The depth, kind or underside of the joists is not known.',
  joistLook: () => 'Measure joist depth and underside; note the kind and the maker.',
  joistHolds: (v: { hole: string }) => `Holes up to ${v.hole} in sawn joists, clear of the edges and of each other.`,
  joistTooBig: (v: { hole: string }) => `A hole of ${v.hole} is more than a third of the joist.`,
  joistEdge: (v: { edge: string }) => `A hole leaves only ${v.edge} of joist at its edge.`,
  joistSpread: (v: { hole: string }) =>
    `Holes up to ${v.hole}, several rows through one joist: their holes are spread along it.`,
  joistSpreadLook: (v: { stretch: string }) =>
    `Lay the holes out over ${v.stretch} of joist, 2 in of wood between them.`,
  joistFeeder: () => 'The feeder goes through joists, and how thick it is, is not known.',
  joistFeederLook: () => 'Measure the feeder cable before a bit is chosen.',
  joistMaker: () => 'Engineered joists: only the maker’s chart says where a hole may be.',
  joistMakerLook: () => 'Get the hole chart of the joist maker.',
  joistRemedy: () => 'Spread the cables over more and smaller holes.',

  supportHolds: (v: { count: number }) => (v.count === 1 ? 'One support.' : `${v.count} supports.`),
  supportFails: (v: { count: number; least: number }) =>
    `${v.count === 1 ? 'One support' : `${v.count} supports`}; ${v.least === 1 ? 'one is' : `${v.least} are`} the least for this length.`,
  supportRemedy: () => 'Put up the missing staples or straps.',

  bundleHolds: (v: { limit: string }) => `${v.limit}.`,
  bundleFails: (v: { limit: string }) => `${v.limit}.`,
  bundleUnknown: (v: { limit: string }) => `${v.limit}. Something about these cables or their breakers is not known.`,
  bundleLook: () => 'Read the jackets (NM-B or not) and the breaker ratings.',
  bundleRemedy: () => 'Put fewer cables together.',

  printMarked: () => 'The jacket is marked for 90 °C insulation.',
  printOld: () => 'Not marked for 90 °C insulation: adjusted from its own column.',
  printUnknown: () => 'The jacket print is not known: taken as 60 °C insulation.',
  printLook: () => 'Read the jacket: NM-B or not.',

  knob: () => 'Knob-and-tube wiring: never reused or cut into. The price waits for a visit.',
  knobUnknown: () => 'What kind of cable this is is not known; it may be knob-and-tube.',
  knobLook: () => 'Follow it back to a box where it ends.',

  bendHolds: () => 'The cable can be drawn back and bent.',
  bendFails: (v: { condition: string }) => `The cable is ${v.condition}: it is not drawn back or bent.`,
  bendRemedy: () => 'Run a new cable for it.',

  ductHolds: () => 'The cable only crosses a joist bay used as a return duct.',
  ductFails: () => 'The cable runs along inside a joist bay used as a return duct.',
  ductBox: () => 'A splice box lies in a joist bay used as a return duct.',
  ductRemedy: () => 'Take another bay.',

  alSplice: () => 'Aluminum is joined to copper: listed Al-Cu connectors only.',
  alLand: () => 'Aluminum lands in the new panel: the breaker and bars must be marked for it.',
  alUnknown: () => 'Whether the conductors are aluminum is not known.',
  alLook: () => 'Look at the bare ends; read the marking on breaker and bars.',

  boxHolds: (v: { fill: number; volume: number }) => `${v.fill} of ${v.volume} cu in.`,
  boxFails: (v: { fill: number; volume: number }) => `${v.fill} cu in. of conductors in a box of ${v.volume}.`,
  boxUnknown: () => 'The size of a conductor in this box is not known, or is too large to be counted by volume.',
  boxLook: () => 'Read the cable size; 4 AWG and larger wants a pull box.',
  boxRemedy: () => 'Take a larger box.',

  reachHolds: () => 'The box can be opened after the finishing.',
  reachBuried: () => 'The box would be closed in by the finishing.',
  reachUnknown: () => 'Whether the box can be opened after the finishing is not known.',
  reachLook: () => 'Ask what ceiling and wall will be there.',
  reachRemedy: () => 'Move the box to where ceiling or wall stays open, or plan an access panel.',

  cabinetHolds: (v: { share: number }) =>
    `Conductors and splices take ${percent(v.share)} of the cabinet at its tightest.`,
  cabinetFails: (v: { share: number }) =>
    `Conductors and splices take ${percent(v.share)} of the cabinet at its tightest: too full.`,
  cabinetUnknown: () => 'The wiring space, or a conductor size, is not known.',
  cabinetLook: () => 'Measure the gutter at its tightest.',

  canAccepted: () => 'The inspector accepts an old cabinet kept for splices.',
  canRefused: () => 'The inspector does not accept an old cabinet kept for splices.',
  canAsk: () => 'An old cabinet is kept for splices: ask whether the inspector accepts it.',
  canLook: () =>
    'Full cover, openings closed, bonded, reachable; a warning label naming the nearest disconnect for conductors that feed through (312.8(A)(3), 312.11 in 2026; label by 110.21(B); from memory); then ask.',
} as const;
