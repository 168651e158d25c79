import type { Circuit, Enclosure, HomeRun, Job, Obstacle } from '../../src/job/schema';
import type { Pt, Pt3 } from '../../src/units/types';
import { type Random, random } from './random';

/** Whole jobs of every ordinary shape, from a seed: rooms, joists, things in the way, old work, two options. */

const JOIST_UNDERSIDE = 92;
const quarter = (r: Random, from: number, to: number) => r.int(from * 4, to * 4) / 4;

const CORNERS: Record<string, (w: number, d: number) => Pt[]> = {
  rectangle: (w, d) => [
    [0, 0],
    [0, d],
    [w, d],
    [w, 0],
  ],
  ell: (w, d) => [
    [0, 0],
    [0, d],
    [w * 0.5, d],
    [w * 0.5, d * 0.625],
    [w, d * 0.625],
    [w, 0],
  ],
  'cut corner': (w, d) => [
    [0, 0],
    [0, d],
    [w - 48, d],
    [w, d - 48],
    [w, 0],
  ],
};

const enclosure = (
  id: string,
  wall: string,
  left: number,
  bottom: number,
  size: [number, number, number],
  spaces: number,
): Enclosure => ({
  id,
  on: { wall, face: 'front', left, bottom },
  size: { width: size[0], depth: size[1], height: size[2] },
  mount: 'surface',
  upright: true,
  mainAt: 'top',
  mainAmps: null,
  role: 'feeder-fed',
  bonded: false,
  electrodeLandsHere: false,
  busAmps: 125,
  spaces,
  knockouts: 40,
  neutralTerminals: 24,
  groundTerminals: 24,
  lugs: 75,
  topHandle: size[2] - 8,
  doorHinge: 'left',
  weatherproof: false,
  finish: 'gray',
  trim: 'solid',
  attached: [],
});

const cable = (size: string, hots: 1 | 2, r: Random): HomeRun['cable'] => ({
  kind: 'NM',
  size,
  metal: 'Cu',
  hots,
  neutral: 'insulated',
  ground: true,
  insulation: r.chance(0.8) ? 90 : r.chance(0.5) ? 60 : 'unknown',
});

const obstacle = (id: string, r: Random, w: number, d: number): Obstacle => {
  const overhead = r.chance(0.5);
  const size = overhead
    ? { width: r.int(6, 60), depth: r.int(6, 24), height: r.int(4, 10) }
    : { width: r.int(10, 36), depth: r.int(10, 36), height: r.int(24, 72) };
  const corner: Pt = [r.int(30, Math.max(31, w - size.width - 30)), r.int(30, Math.max(31, d - size.depth - 30))];
  return {
    id,
    kind: overhead ? r.pick(['duct', 'drain', 'water pipe']) : r.pick(['washer', 'furnace', 'shelf', 'sink']),
    corner,
    turn: r.chance(0.2) ? r.int(1, 89) : 0,
    size,
    sizes: 'measured',
    bottom: overhead ? JOIST_UNDERSIDE - r.int(0, 6) : 0,
    blocksCable: true,
    blocksSpace: true,
    foreign: overhead,
    clearance: r.pick([0, 1, 2]),
    exists: { now: true, after: true },
    stored: false,
    moveCents: r.chance(0.5) ? r.int(20, 300) * 100 : null,
  };
};

export const randomJob = (seed: number): Job => {
  const r = random(seed);
  const w = r.int(18, 40) * 12;
  const d = r.int(14, 28) * 12;
  const corners = CORNERS[r.pick(['rectangle', 'rectangle', 'ell', 'cut corner'])]!(w, d).map(
    ([x, y]) => [Math.round(x), Math.round(y)] as Pt,
  );
  const face = { build: r.pick(['poured', 'block', 'open studs', 'plywood board'] as const), insulated: false };
  const alongX = r.chance(0.5);
  const use = r.pick(['unfinished storage', 'mechanical', 'laundry'] as const);
  const state = {
    use,
    cover: r.pick(['open joists', 'open joists', 'lay-in'] as const),
    ceiling: JOIST_UNDERSIDE,
    floorRise: 0,
  };
  const oldLeft = quarter(r, 24, 60);
  const old = enclosure('old', 'w0', oldLeft, 44, [14.5, 4, 24], 16);

  const groups = Array.from({ length: r.int(1, 3) }, (_, g) => {
    // up the wall from the can's top, into the joists, out into the room, then along it
    const y = oldLeft + 3 + g * 4;
    const z = JOIST_UNDERSIDE + 3;
    const out = quarter(r, 40, w * 0.45);
    const up: Pt3[] = [
      [0, y, 68],
      [0, y, z],
      [out, y, z],
      [out, Math.min(y + quarter(r, 12, 60), d * 0.6 - 6), z],
    ];
    const long = up
      .slice(1)
      .reduce((n, p, i) => n + Math.abs(p[0] - up[i]![0]) + Math.abs(p[1] - up[i]![1]) + Math.abs(p[2] - up[i]![2]), 0);
    return {
      id: `g${g}`,
      enclosure: 'old',
      path: up,
      reachable: [[0, Math.floor(long)]] as [number, number][],
      pivot: r.chance(0.85) ? quarter(r, 20, Math.min(long, 90)) : ('unknown' as const),
      drawsBack: r.chance(0.7) ? true : r.pick([false, 'unknown'] as const),
      entry: 'top' as const,
      tails: r.chance(0.85)
        ? { hot: quarter(r, 8, 30), neutral: quarter(r, 8, 30), ground: quarter(r, 8, 30) }
        : ('unknown' as const),
    };
  });

  const circuits: Circuit[] = [];
  const homeRuns: HomeRun[] = [];
  const circuit = (more: Partial<Circuit>): string => {
    const id = `c${String(circuits.length).padStart(2, '0')}`;
    circuits.push({
      id,
      number: String(circuits.length + 1),
      label: `Circuit ${circuits.length + 1}`,
      poles: 1,
      volts: 120,
      amps: r.pick([15, 20]),
      partner: null,
      serves: r.chance(0.8)
        ? [r.pick(['bedroom', 'kitchen', 'living', 'unfinished storage', 'bath', 'laundry'] as const)]
        : 'unknown',
      va: r.chance(0.3) ? r.int(200, 1800) : 'unknown',
      continuous: false,
      protection: r.pick(['none', 'none', 'GFCI', 'unknown'] as const),
      addsOutlet: false,
      hardWired: false,
      flags: [],
      ...more,
    });
    return id;
  };
  const homeRun = (circuitIds: string[], c: HomeRun['cable']) =>
    homeRuns.push({
      id: `h${String(homeRuns.length).padStart(2, '0')}`,
      group: r.pick(groups).id,
      circuits: circuitIds,
      cable: c,
      ownPath: null,
      ownPivot: null,
      ownTails: null,
      wholeLength: r.chance(0.7) ? r.int(20, 90) * 12 : 'unknown',
      traced: r.chance(0.8),
      condition: [],
    });
  const many = r.int(3, 9);
  for (let i = 0; i < many; i++) {
    const amps = r.pick([15, 20] as const);
    homeRun([circuit({ amps })], cable(amps === 15 ? '14' : '12', 1, r));
  }
  const two = circuit({ amps: 20 });
  homeRun([two], cable('12', 1, r));
  homeRun([two], cable('12', 1, r));
  const left = circuit({ amps: 15 });
  const right = circuit({ amps: 15, partner: left });
  circuits[circuits.length - 2] = { ...circuits[circuits.length - 2]!, partner: right };
  homeRun([left, right], cable('14', 2, r));
  if (r.chance(0.6))
    homeRun([circuit({ poles: 2, volts: 240, amps: 30, serves: ['laundry'] })], {
      ...cable('10', 2, r),
      neutral: 'insulated',
    });

  // another wall long enough, or the same one further along
  const walls = corners.map((p, i) => ({
    id: `w${i}`,
    long: Math.hypot(corners[(i + 1) % corners.length]![0] - p[0], corners[(i + 1) % corners.length]![1] - p[1]),
  }));
  const wall = r.pick(walls.filter((x) => x.long > 40));
  const fresh = enclosure('new', wall.id, quarter(r, 2, Math.floor(wall.long - 18)), 36, [14.5, 4, 36], 40);
  const option = (id: string, kind: 'in place' | 'relocate', e: Enclosure) => ({
    id,
    title: id,
    kind,
    enclosure: e,
    pins: [],
    moves: [],
    serviceDisconnect: null,
    replaces: [
      {
        enclosure: 'old',
        becomes:
          kind === 'in place' ? ('removed' as const) : r.pick(['removed', 'splice can', 'program chooses'] as const),
      },
    ],
  });
  return {
    format: 'backboard-job',
    schema: 1,
    id: `random-${seed}`,
    title: `Random room ${seed}`,
    changedOn: '2026-01-01',
    survey: { grade: 'full', by: 'test', on: '2026-01-01' },
    code: {
      edition: r.pick([2017, 2020, 2023, 2026, 'unknown'] as const),
      place: 'Sample City',
      amendments: {},
      saidBy: {},
    },
    house: {
      yearBuilt: 1965,
      floorAreaFt2: 1800,
      panelAreaFt2: r.chance(0.5) ? 900 : 'unknown',
      occupied: true,
      panelLit: true,
      smallApplianceCircuits: 2,
      laundryCircuits: 1,
      loads: [],
      otherSource: false,
    },
    site: {
      outline: corners.map((at, i) => ({
        id: `w${i}`,
        at,
        face: { now: face, after: face },
        studSpacing: 16,
        thickness: 8,
      })),
      partitions: [],
      openings: [],
      areas: [{ id: 'room', outline: corners, state: { now: state, after: state } }],
      framing: [
        {
          id: 'f',
          outline: null,
          direction: r.chance(0.9) ? (alongX ? 0 : 90) : 'unknown',
          firstJoist: 8,
          spacing: 16,
          depth: 9.25,
          kind: r.pick(['sawn', 'sawn', 'I-joist', 'unknown'] as const),
          underside: JOIST_UNDERSIDE,
        },
      ],
      bays: [],
      obstacles: Array.from({ length: r.int(0, 6) }, (_, i) => obstacle(`o${i}`, r, w, d)),
      sleeves: [],
    },
    enclosures: [old],
    feeder: {
      from: { panel: 'main', lugs: 75, breakerAmps: 90, spaceFree: true },
      entersAt: [w / 2, 0, JOIST_UNDERSIDE + 3],
      outside: 120,
      path: [
        [w / 2, 0, JOIST_UNDERSIDE + 3],
        [0, oldLeft + 7, JOIST_UNDERSIDE + 3],
        [0, oldLeft + 7, 68],
      ],
      cable: { kind: 'SE-R', size: '2', metal: 'Al', hots: 2, neutral: 'insulated', ground: true, insulation: 75 },
      raceway: 'none',
      wires: 4,
      wholeDwelling: false,
    },
    cableGroups: groups,
    homeRuns,
    circuits,
    options: [
      option('in-place', 'in place', enclosure('new-in-place', 'w0', oldLeft, 40, [14.5, 4, 34], 30)),
      option('move', 'relocate', fresh),
    ],
    practice: {
      slackShare: 0.05,
      slackMinimum: 6,
      freeInBox: 12,
      tailInPanel: 42,
      tailOfFeeder: 48,
      cutStep: 6,
      shortestPiece: 36,
      bundling: 'strict',
      nextSizeInRows: false,
      tenPercentException: false,
      spareSpaces: 6,
      maxSpliceSpots: 3,
      spliceSpotCents: 4500,
    },
    priceBook: 'default',
    terms: { quote: 'range', people: 2, cutOver: 'all at once', startsAt: 8, endsAt: 17 },
    stock: [],
    alternates: [],
    answers: [],
    photos: [],
    people: { contractor: {}, customer: {} },
    issued: [],
    notes: '',
  };
};
