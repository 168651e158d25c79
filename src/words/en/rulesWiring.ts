/** Sentences about cables along framing and side by side, large conductors in boxes, and bending room in the panel. */
export const wiringWords = {
  parHolds: (v: { edge: string }) => `Along the joists the cable keeps ${v.edge} from their nail edges.`,
  parFails: (v: { edge: string }) =>
    `Along a joist the cable lies ${v.edge} from its nail edge: set it back, or cover it with steel plates.`,
  parUnknown: () => 'How far the cable lies from the nail edge of the joist is not known: the joist was not measured.',
  parLook: () => 'Measure joist depth and underside; staple in the middle of the joist.',
  parRemedy: () => 'Staple the cable nearer the middle of the joist, or cover it with steel plates.',

  dropHolds: () => 'On walls the cable comes down in a sleeve, on a board or inside the wall.',
  dropBare: () => 'The cable comes down a wall bare, below the joists.',
  dropUnknown: () =>
    'Whether the cable comes down bare below the joists is not known: their underside was not measured.',
  dropRemedy: () => 'Put a sleeve, a board or the wall around it.',

  plates: (v: { cables: number; most: number }) =>
    `${v.cables === 1 ? 'One cable goes' : `${v.cables} cables go`} down inside walls, through their top plates: bore 1-1/4 in clear of both edges or cover with steel, at most ${v.most} cables to a hole, and seal every hole; seal holes through floors and rim too.`,

  bigAsk: (v: { cables: string; times: number; straight: number }) =>
    `Conductors of 4 AWG or larger in this box (${v.cables}): from the entry to the opposite wall at least ${v.times} times the raceway size that would hold them, and the other entries of that row; ${v.straight} times straight through.`,
  bigUnknown: () => 'Whether conductors of 4 AWG or larger are in this box is not known.',
  bigLook: () => 'Read the cable size; size the pull box by its largest entry.',

  bend: (v: { size: string; inches: number; service: boolean }) =>
    `${v.service ? 'Service' : 'Feeder'} conductors of ${v.size} AWG: at least ${v.inches} in from their terminals to the wall they come in by.`,
  bendUnknown: (v: { service: boolean }) =>
    `The size of the ${v.service ? 'service' : 'feeder'} conductors is not known, and so the room to bend them in the panel.`,
  bendLook: () => 'Measure from the lugs to the end wall of the cabinet that is bought.',

  beside: (v: { rows: number; stretch: string }) =>
    `${v.rows === 1 ? 'Another row lies' : `${v.rows} other rows lie`} along the same ${v.stretch}: keep the rows a cable’s width apart all the way, or they count as one bundle.`,
  shortStretch: (v: { limit: string }) =>
    `${v.limit}. The stretch is not over 10 ft and not over a tenth of any of these circuits, so it may be left out.`,
  shortUnknown: (v: { limit: string | null }) =>
    `${v.limit === null ? '' : `${v.limit}. `}Whether the stretch is short enough to be left out depends on the whole lengths of these circuits, which are not known.`,
  shortLook: () => 'Measure or count the whole length of each circuit, to its last outlet.',
  tenHolds: () => 'The stretch is short against the whole circuit: its adjustment may be left out.',
  tenLonger: () => 'The stretch is too long, or sealed, to be left out: its adjustment stands.',
} as const;
