import type { Job, Option } from '../../src/job/schema';
import type { CablePrices } from '../../src/routing/types';
import type { Pt, Pt3 } from '../../src/units/types';
import { type Random, random } from '../support/random';
import { randomJob } from '../support/randomJob';

/** Rooms made to be hard on routes: things that touch, mixed ceilings and walls, partitions, openings, sloped walls. */

export const UNDERSIDE = 96;
const Z_JOISTS = UNDERSIDE + 4.75;

const OUTLINES: Record<'rectangle' | 'ell' | 'cut', (w: number, d: number) => Pt[]> = {
  rectangle: (w, d) => [
    [0, 0],
    [0, d],
    [w, d],
    [w, 0],
  ],
  ell: (w, d) => [
    [0, 0],
    [0, d],
    [w / 2, d],
    [w / 2, d / 2 + 12],
    [w, d / 2 + 12],
    [w, 0],
  ],
  cut: (w, d) => [
    [0, 0],
    [0, d],
    [w - 60, d],
    [w, d - 60],
    [w, 0],
  ],
};

const box = (id: string, corner: Pt, width: number, depth: number, bottom: number, height: number, clearance = 0) => ({
  id,
  kind: 'thing',
  corner,
  turn: 0,
  size: { width, depth, height },
  sizes: 'measured' as const,
  bottom,
  blocksCable: true,
  blocksSpace: true,
  foreign: false,
  clearance,
  exists: { now: true, after: true },
  stored: false,
  moveCents: null,
});

const thingsIn = (r: Random, w: number, d: number, count: number) =>
  Array.from({ length: count }, (_, i) => {
    const overhead = r.chance(0.6);
    const [width, depth] = [r.int(4, 60), r.int(4, 60)];
    const corner: Pt = [r.int(0, w - width), r.int(0, d - depth)];
    const bottom = overhead ? UNDERSIDE - r.pick([1, 4, 8]) : 0;
    const height = overhead ? r.pick([4, 8, 20]) : r.pick([36, 70, 120]);
    const one = box(`t${i}`, corner, width, depth, bottom, height, r.pick([0, 0, 1]));
    // every other one has a neighbor that touches it
    return i % 2 === 0
      ? [one]
      : [one, box(`t${i}b`, [corner[0] + width, corner[1]], r.int(4, 20), depth, bottom, height, one.clearance)];
  }).flat();

export interface Room {
  readonly job: Job;
  readonly option: Option;
  readonly targets: readonly Pt3[];
}

export const routeRoom = (seed: number, shape?: keyof typeof OUTLINES): Room => {
  const r = random(seed * 7919 + 13);
  const base = randomJob(seed);
  const kind = shape ?? r.pick(['rectangle', 'ell', 'cut'] as const);
  const [w, d] = [r.int(16, 34) * 12, r.int(14, 26) * 12];
  const corners = OUTLINES[kind](w, d);
  const alongX = r.chance(0.5);
  const face = () => {
    const build = r.pick(['poured', 'block', 'open studs', 'plywood board', 'finished studs', 'unknown'] as const);
    return { now: { build, insulated: false }, after: { build, insulated: false } };
  };
  const area = (id: string, outline: Pt[]) => {
    const state = (cover: 'open joists' | 'drywall' | 'lay-in') => ({
      use: 'unfinished storage' as const,
      cover,
      ceiling: UNDERSIDE,
      floorRise: 0,
    });
    const now = r.pick(['open joists', 'open joists', 'lay-in', 'drywall'] as const);
    return { id, outline, state: { now: state(now), after: state(r.pick([now, now, 'drywall'] as const)) } };
  };
  const split = r.int(5, Math.floor(w / 12) - 4) * 12;
  const halves: Pt[][] = [
    [
      [0, 0],
      [0, d],
      [split, d],
      [split, 0],
    ],
    [
      [split, 0],
      [split, d],
      [w, d],
      [w, 0],
    ],
  ];
  const partition = (id: string, from: Pt, to: Pt) => ({
    id,
    from,
    to,
    thickness: 4.5,
    height: r.pick([UNDERSIDE, 'unknown', 84] as const),
    exists: { now: true, after: true },
    front: face(),
    back: face(),
    studSpacing: 16,
  });
  const across = r.int(6, Math.floor(d / 24)) * 12;
  const bay = 8 + 16 * r.int(2, 6);
  const job: Job = {
    ...base,
    site: {
      outline: corners.map((at, i) => ({ id: `w${i}`, at, face: face(), studSpacing: 16, thickness: 8 })),
      partitions: r.chance(0.6) ? [partition('p0', [0, across], [r.int(6, Math.floor(w / 24)) * 12, across])] : [],
      openings: [
        {
          id: 'door',
          kind: 'door',
          exists: { now: true, after: true },
          on: { wall: `w${corners.length - 1}`, face: 'front', left: 60, bottom: 0 },
          width: 32,
          height: 80,
          sizes: 'measured' as const,
          hinge: 'left',
          swings: 'front',
        },
      ],
      areas: halves.map((outline, i) => area(`a${i}`, outline)),
      framing: [
        {
          id: 'f',
          outline: null,
          direction: alongX ? 0 : 90,
          firstJoist: 8,
          spacing: r.pick([16, 16, 24, 19.1875]),
          depth: 9.5,
          kind: r.pick(['sawn', 'I-joist', 'open-web truss'] as const),
          underside: UNDERSIDE,
        },
      ],
      bays: r.chance(0.3)
        ? [
            {
              id: 'bay',
              outline: alongX
                ? [
                    [24, bay],
                    [24, bay + 16],
                    [w - 24, bay + 16],
                    [w - 24, bay],
                  ]
                : [
                    [bay, 24],
                    [bay, d / 2],
                    [bay + 16, d / 2],
                    [bay + 16, 24],
                  ],
              state: r.pick(['panned return', 'blocked'] as const),
            },
          ]
        : [],
      obstacles: thingsIn(r, w, d, r.int(1, 7)),
      sleeves: [],
    },
  };
  const targets = Array.from({ length: 8 }, (_, i): Pt3 => {
    const [x, y] = [r.int(8, w * 4 - 8) / 4, r.int(8, d * 4 - 8) / 4];
    return i % 4 === 3 ? [x, y, UNDERSIDE] : i % 4 === 2 ? [0, y, r.int(20, 90)] : [x, y, Z_JOISTS];
  });
  const left = r.int(8, d - 24);
  const option: Option = {
    ...base.options[1]!,
    enclosure: { ...base.options[1]!.enclosure, on: { wall: 'w0', face: 'front', left, bottom: 40 } },
  };
  return { job, option, targets };
};

/** The same room with a thing turned, a partition across a corner, or its joists at an angle. */
export const askew = (room: Room, seed: number): Room => {
  const { site } = room.job;
  const obstacles = site.obstacles.map((o, i) => (i === 0 ? { ...o, turn: 17 + (seed % 60) } : o));
  const wall = site.outline[0]!;
  const diagonal = {
    id: 'diagonal',
    from: [60, 48] as Pt,
    to: [60 + 48, 48 + 24 + (seed % 30)] as Pt,
    thickness: 4.5,
    height: UNDERSIDE,
    exists: { now: true, after: true },
    front: wall.face,
    back: wall.face,
    studSpacing: 16,
  };
  const framing = site.framing.map((f) => (seed % 3 === 0 ? { ...f, direction: 35 } : f));
  return {
    ...room,
    job: { ...room.job, site: { ...site, obstacles, framing, bays: [], partitions: [...site.partitions, diagonal] } },
  };
};

/** Prices that are no multiples of each other. */
export const PRICES: CablePrices = {
  perFt: 1_313,
  hole: 1_127,
  boardPerFt: 2_431,
  sleevePerFt: 3_907,
  patchPerFt: 14_111,
  tilePerFt: 977,
  underside: false,
};
