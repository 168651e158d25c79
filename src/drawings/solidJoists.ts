import type { Framing, Site } from '../job/schema';
import { type In, isKnown, knownOr, type Pt, type Pt3 } from '../units/types';
import { stroke } from './items';
import { drawJoists } from './joists';
import { at, drawnOut, edge, joined, type Shape } from './solidShapes';
import type { Edge, Solid, When } from './solids';
import { UNDERSIDE_IN } from './solidWalls';

/** Common lumber and manufactured joists, in: breadth of flange or member, flange height, web. Common sizes, no source. */
const SAWN_IN = 1.5;
const LVL_IN = 1.75;
const FLANGE_IN = 2.5;
const FLANGE_HIGH_IN = 1.5;
const WEB_IN = 0.375;
const CHORD_IN = 3.5;
const DEPTH_IN = 9.25;
/** From above only the ends of joists are solid, this long. Our own line. */
const STUB_IN = 9;

const box = (breadth: In, low: In, high: In): Pt[] => [
  [-breadth / 2, low],
  [breadth / 2, low],
  [breadth / 2, high],
  [-breadth / 2, high],
];
/** The sections a joist is made of, across and up. */
const sections = (kind: Framing['kind'], low: In, high: In): readonly Pt[][] => {
  switch (kind) {
    case 'I-joist':
      return [
        box(WEB_IN, low + FLANGE_HIGH_IN, high - FLANGE_HIGH_IN),
        box(FLANGE_IN, low, low + FLANGE_HIGH_IN),
        box(FLANGE_IN, high - FLANGE_HIGH_IN, high),
      ];
    case 'open-web truss':
      return [box(CHORD_IN, low, low + FLANGE_HIGH_IN), box(CHORD_IN, high - FLANGE_HIGH_IN, high)];
    case 'LVL':
      return [box(LVL_IN, low, high)];
    default:
      return [box(SAWN_IN, low, high)];
  }
};
/** The zigzag between the chords of a truss. */
const webs = (from: Pt, to: Pt, low: In, high: In, when: When): Edge[] => {
  const count = Math.max(2, Math.round(Math.hypot(to[0] - from[0], to[1] - from[1]) / (high - low) / 1.4));
  const on = (k: number): Pt3 => {
    const t = k / count;
    return at([from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t], k % 2 === 0 ? low : high);
  };
  return Array.from({ length: count }, (_, k) => edge(on(k), on(k + 1), stroke('object', 'ink-3'), when));
};

const oneJoist = (framing: Framing, from: Pt, to: Pt): Shape => {
  const low = knownOr(framing.underside, UNDERSIDE_IN);
  const high = low + knownOr(framing.depth, DEPTH_IN);
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const u: Pt = [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
  const below: When = { at: at(from, low), toward: [0, 0, -1], but: null };
  const dash = isKnown(framing.kind) ? null : 'future';
  const look = { surface: 'wood', stroke: stroke('hair', 'ink-3', dash) } as const;
  const whole = sections(framing.kind, low, high);
  const stub = Math.min(STUB_IN, long / 2);
  const stubs = (
    [
      [from, [from[0] + u[0] * stub, from[1] + u[1] * stub], u],
      [[to[0] - u[0] * stub, to[1] - u[1] * stub], to, [-u[0], -u[1]]],
    ] as const
  ).map(([a, b, into]) => {
    const when: When = { at: at(into === u ? from : to, low), toward: [into[0], into[1], 0], but: null };
    return joined(whole.map((section) => drawnOut(section, a, b, { ...look, when })));
  });
  return joined([
    ...whole.map((section) => drawnOut(section, from, to, { ...look, when: below })),
    ...stubs,
    {
      faces: [],
      edges: [
        edge(at(from, low), at(to, low), stroke('hair', 'hair', dash)),
        ...(framing.kind === 'open-web truss' ? webs(from, to, low, high, below) : []),
      ],
    },
  ]);
};

/** Joists as far as they were measured: solid when looked at from below, from above only their ends and a fine line. */
export const solidJoists = (site: Site): Solid[] => {
  const lines = drawJoists(site);
  return site.framing.flatMap((framing): Solid[] => {
    const own = lines.filter((line) => line.id === framing.id);
    if (own.length === 0) return [];
    return [
      {
        id: framing.id,
        kind: 'joists',
        ...joined(own.map(({ points }) => oneJoist(framing, points[0]!, points[1]!))),
        body: null,
      },
    ];
  });
};
