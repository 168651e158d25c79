/** What the two sides say where practice is split, by rule. Shown with a finding until somebody answers. */
export const splitWords = {
  lead: 'Practice is split.',
  'AFCI-EXT':
    'By the text a branch circuit begins after its breaker, so a panel job alone extends nothing, and only an extension of more than 6 ft counts; some inspectors take any wiring that is cut, drawn back or replaced as modified and ask for arc-fault protection.',
  'AFCI-EXT-17':
    'The 2017 text does not say whether conductor inside cabinets and boxes counts in the 6 ft; the later texts leave it out.',
  'AFCI-AREA':
    'A laundry corner of an unfinished basement is a laundry area to some inspectors, and makes the whole basement one to a few.',
  'SPD-FDR':
    'The words fit a subpanel in a one-family house; commentary explains the rule with apartments, and some inspectors do not ask for it.',
  EMDISC: 'The 2020 text does not speak of replaced service equipment; many departments ask for the disconnect.',
  'WS-HEIGHT':
    'The exception says existing dwelling, which a new spot in it is; some inspectors hold it to an existing panel location.',
  DEDICATED:
    'The joists are usually taken as the structural ceiling, so a pipe up between them is outside the zone; some inspectors count up to the subfloor.',
  HANDLE: '79 in is the text; the old field figure of 78 in is still in use.',
  DAMP: 'Whether a masonry basement wall is damp is left to the inspector; a plywood backboard is local custom, not the code.',
  CLOSET:
    'New equipment is generally held to today’s place; some departments allow a panel to be replaced like for like.',
  BATH: 'New equipment is generally held to today’s place; some departments allow a panel to be replaced like for like.',
  STAIRS:
    'New equipment is generally held to today’s place; some departments allow a panel to be replaced like for like.',
  'OLD-CAN': 'An emptied panel is a cabinet to some and must be a listed box to others.',
  'OLD-3WIRE': 'Some states have their own relief for old three-wire circuits, some have struck the one in the text.',
  'DRYER-RANGE':
    'The relief for old three-wire circuits is for existing ones; whether a lengthened one still is, is read both ways.',
  'SVC-GROUND':
    'A larger or changed service brings the grounding electrodes up to date; some inspectors ask for it on every replaced service panel.',
  'BREAKER-LIST':
    'Breakers classified for another maker’s panel are accepted by some inspectors where the panel is named on them.',
  'FREE-WIRE': 'The 6 in are spoken of for outlets, junctions and switches; whether they hold in a cabinet is argued.',
  UNGROUNDED:
    'The text lists where the ground of an extension may connect; some inspectors accept a GFCI device in its place.',
  'NM-BUNDLE':
    'The text knows no shortest length for cables in one sealed hole; some inspectors count only what runs together over 24 in.',
  'NM-SUP': 'Whether the 18 in cap on the cable from connector to first staple began with 2020 or 2023 is not settled.',
  'FDR-2AL':
    'Some take the smaller size of 310.12 for a feeder of part of the dwelling, because the service itself may be that small. This program never passes it.',
  LOAD: 'Whether existing heating and cooling goes into 220.83(A) at 40 % or in full is read both ways; 2026 settled it.',
} as const;
