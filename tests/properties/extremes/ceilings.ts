import { barredBy, box, type Extreme, extreme, framing, hang, partition, type Raw, whole } from './extreme';

/** Ceilings, joists and things in the way. */

const left = [
  [0, 0],
  [0, 144],
  [108, 144],
  [108, 0],
];
const right = [
  [108, 0],
  [108, 144],
  [216, 144],
  [216, 0],
];
const state = (j: Raw, when: string[], more: Raw) => {
  for (const a of j.site.areas) for (const w of when) Object.assign(a.state[w], more);
};
export const CEILINGS: readonly Extreme[] = [
  ...[37, 45, 90, -90, 180, 359, 360, -360, 0.01].map((d) =>
    extreme(`joists at ${d}°`, (j) => (j.site.framing[0].direction = d)),
  ),
  extreme('two framings of different directions and undersides', (j) => {
    j.site.framing = [framing('a', left, 0, 84), framing('b', right, 90, 88)];
  }),
  extreme('two framings, one at 37° and lower', (j) => {
    j.site.framing = [framing('a', left, 37, 80), framing('b', null, 0, 84)];
  }),
  extreme('framings that lie over each other', (j) => {
    j.site.framing = [framing('a', left, 0, 84), framing('b', whole, 90, 84), framing('c', null, 37, 90)];
  }),
  extreme('framing over a corner of the room only', (j) => {
    j.site.framing = [
      framing(
        'a',
        [
          [0, 0],
          [0, 40],
          [40, 40],
          [40, 0],
        ],
        0,
        84,
      ),
    ];
  }),
  extreme('framing outside the room', (j) => {
    j.site.framing = [
      framing(
        'a',
        left.map(([x, y]) => [x! + 1000, y]),
        0,
        84,
      ),
    ];
  }),
  ...['I-joist', 'open-web truss', 'LVL', 'unknown'].map((kind) =>
    extreme(`joists: ${kind}`, (j) => (j.site.framing[0].kind = kind)),
  ),
  extreme('joists a quarter inch apart', (j) => (j.site.framing[0].spacing = 0.25)),
  extreme('joists 900 ft apart, the first far away', (j) =>
    Object.assign(j.site.framing[0], { spacing: 10_800, firstJoist: -11_000 }),
  ),
  extreme('joists a hair deep', (j) => (j.site.framing[0].depth = 1 / 64)),
  extreme('joists 30 ft deep', (j) => (j.site.framing[0].depth = 360)),
  extreme('an underside at the ankle', (j) => (j.site.framing[0].underside = 6)),
  extreme('an underside 200 ft up', (j) => (j.site.framing[0].underside = 2400)),
  extreme('drywall now', (j) => state(j, ['now'], { cover: 'drywall' })),
  extreme('drywall after', (j) => state(j, ['after'], { cover: 'drywall' })),
  extreme('drywall now and after', (j) => state(j, ['now', 'after'], { cover: 'drywall' })),
  extreme('lay-in now and after', (j) => state(j, ['now', 'after'], { cover: 'lay-in', ceiling: 78 })),
  extreme('lay-in tight under the joists', (j) => state(j, ['now', 'after'], { cover: 'lay-in', ceiling: 84 })),
  extreme('a lay-in ceiling above the joists', (j) => state(j, ['now', 'after'], { cover: 'lay-in', ceiling: 100 })),
  extreme('a ceiling at the knee', (j) => state(j, ['after'], { cover: 'lay-in', ceiling: 20 })),
  extreme('a platform higher than the ceiling', (j) => state(j, ['now', 'after'], { floorRise: 120 })),
  extreme('every use unknown and every cover', (j) => state(j, ['now', 'after'], { use: 'unknown', cover: 'unknown' })),
  ...['bath', 'clothes closet', 'stair', 'outdoors', 'garage', 'kitchen'].map((use) =>
    extreme(`a ${use} for a basement`, (j) => state(j, ['now', 'after'], { use })),
  ),
  extreme('areas that lie over each other', (j) => {
    j.site.areas = [
      j.site.areas[0],
      { ...j.site.areas[0], id: 'again' },
      { ...j.site.areas[0], id: 'b', outline: left },
    ];
  }),
  extreme('an area outside the room', (j) => {
    j.site.areas[0].outline = left.map(([x, y]) => [x! + 1000, y! + 1000]);
  }),
  ...['panned return', 'blocked', 'insulated'].map((s) =>
    extreme(`every bay: ${s}`, (j) => (j.site.bays = [{ id: 'bay', outline: whole, state: s }])),
  ),
  extreme('a door as wide and high as its wall', (j) => {
    j.site.openings = [
      { ...j.site.openings[0], on: { wall: 'east', face: 'front', left: 0, bottom: 0 }, width: 144, height: 84 },
    ];
  }),
  extreme('a window in the air', (j) => (j.site.openings[1].on.bottom = 500)),
  extreme('a partition in the middle of nothing', (j) => {
    j.site.partitions = [partition('p', [1000, 1000], [1100, 1100])];
  }),
  extreme('partitions like a comb', (j) => {
    j.site.partitions = Array.from({ length: 9 }, (_, i) => partition(`p${i}`, [20 + i * 20, 0], [20 + i * 20, 100]));
  }),
  extreme('a partition right through, up to the joists', (j) => {
    j.site.partitions = [partition('p', [150, 0], [150, 144])];
  }),
  extreme('partitions that cross', (j) => {
    j.site.partitions = [partition('p', [20, 20], [200, 120]), partition('q', [20, 120], [200, 20])];
  }),
  extreme('a thing over the old panel', (j) => j.site.obstacles.push(box('cover', [95, 130], [30, 14, 84]))),
  extreme(
    'a thing that fills the room',
    (j) => j.site.obstacles.push(box('fill', [-10, -10], [300, 300, 200], -10)),
    barredBy('fill', 9),
  ),
  extreme('a thing that fills the room above the head', (j) =>
    j.site.obstacles.push(box('lid', [0, 0], [216, 144, 60], 72)),
  ),
  extreme('a thing outside the room', (j) => j.site.obstacles.push(box('out', [900, 900], [30, 30, 30]))),
  extreme('a thing half in the wall', (j) => j.site.obstacles.push(box('half', [200, 60], [40, 20, 100]))),
  extreme('no clearances', (j) => {
    for (const o of j.site.obstacles) o.clearance = 0;
  }),
  extreme(
    'clearances of ten feet',
    (j) => {
      for (const o of j.site.obstacles) o.clearance = 120;
    },
    barredBy('trunk', 9),
  ),
  extreme('things side by side, touching', (j) => {
    for (let i = 0; i < 8; i++)
      j.site.obstacles.push(box(`t${i}`, [60 + i * 10, 20], [10, 10, 90], 0, { clearance: 0 }));
  }),
  extreme('a thing of a hair', (j) => j.site.obstacles.push(box('hair', [120, 100], [1 / 64, 1 / 64, 1 / 64], 80))),
  extreme('things turned every way', (j) => {
    for (let i = 0; i < 8; i++)
      j.site.obstacles.push(box(`t${i}`, [20 + i * 20, 60], [16, 4, 90], 0, { turn: i * 51 - 180 }));
  }),
  extreme(
    'a thing in front of the new panel that may be moved',
    (j) => {
      j.site.obstacles.push(box('chest', [180, 60], [36, 30, 80], 0, { moveCents: 5000 }));
    },
    barredBy('chest', 9),
  ),
  extreme('two hundred things', (j) => {
    for (let i = 0; i < 200; i++)
      j.site.obstacles.push(
        box(`t${i}`, [4 + (i % 20) * 10, 8 + Math.floor(i / 20) * 12], [5, 5, 6 + (i % 7)], (i * 37) % 86, {
          turn: (i * 13) % 90,
        }),
      );
  }),
  extreme('a move of a thing that cannot be moved, and one onto the panel', (j) => {
    for (const o of j.options)
      o.moves = [
        { obstacle: 'furnace', to: 'away' },
        { obstacle: 'trunk', to: [100, 126] },
        { obstacle: 'washer', to: [5000, 5000] },
      ];
  }),
  extreme('sleeves through nothing and to nowhere', (j) => {
    j.site.sleeves = [
      { id: 's', from: [-500, 0, 0], to: [500, 0, 400], diameter: 0.25, metal: true },
      { id: 't', from: [150, 72, 60], to: [150, 72, 90], diameter: 300, metal: false },
    ];
  }),
  extreme(
    'a thing between everything and the far wall',
    (j) => {
      hang(j, 'west', 10);
      j.site.obstacles.push(box('wall', [30, -10], [10, 200, 200], -20));
    },
    barredBy('wall'),
  ),
];
