import { type Extreme, extreme, must, type Raw, relocated } from './extreme';

/** Cables as no surveyor would draw them, and pins as no contractor would set them. */

const groups = (change: (g: Raw) => void) => (j: Raw) => {
  for (const g of j.cableGroups) change(g);
};
const cables = (more: Raw) => (j: Raw) => {
  for (const h of j.homeRuns) Object.assign(h.cable, more);
};
const pins = (list: Raw[]) => (j: Raw) => {
  for (const o of j.options) o.pins = list.map((p, i) => ({ id: `p${i}`, ...p }));
};
const runOf = (
  plan: { runs: readonly { homeRun: string; why: string; way: string; blockedBy: readonly string[] }[] },
  id: string,
) => plan.runs.find((r) => r.homeRun === id)!;

export const CABLES: readonly Extreme[] = [
  extreme(
    'runs that leave the room and come back',
    groups((g) => g.path.splice(2, 0, [g.path[1][0], 400, 87.625], [-300, 400, 87.625])),
  ),
  extreme(
    'runs that never were in the room',
    groups(
      (g) =>
        (g.path = [
          [900, 900, 50],
          [1000, 900, 50],
        ]),
    ),
  ),
  extreme(
    'runs far below the floor',
    groups((g) => (g.path = g.path.map(([x, y, z]: number[]) => [x, y, z! - 500]))),
  ),
  extreme(
    'runs that come out of the walls',
    groups((g) => {
      g.path = [
        [107, 147, 70],
        [107, 147, 87.625],
        [107, 140, 87.625],
        [-4, 140, 87.625],
        [-4, 140, 60],
      ];
      g.pivot = 40;
    }),
  ),
  extreme(
    'runs through the furnace',
    groups(
      (g) =>
        (g.path = [
          [107, 144, 70],
          [30, 50, 30],
          [30, 50, 91],
        ]),
    ),
  ),
  extreme(
    'runs that turn back on themselves',
    groups((g) => (g.path = [...g.path, ...[...g.path].reverse()])),
  ),
  extreme(
    'runs of two hundred corners',
    groups((g) => {
      g.path = Array.from({ length: 200 }, (_, i) => [100 - (i % 2), 140 - i / 2, 87.625]);
    }),
  ),
  extreme(
    'runs straight up and no more',
    groups(
      (g) =>
        (g.path = [
          [107, 144, 70],
          [107, 144, 70.25],
        ]),
    ),
  ),
  extreme(
    'corners of a run in one place',
    groups((g) => (g.path = g.path.flatMap((p: Raw) => [p, p, p]))),
  ),
  extreme(
    'nothing within reach',
    groups((g) => (g.reachable = [])),
  ),
  extreme(
    'within reach beyond the end',
    groups((g) => (g.reachable = [[50, 9000]])),
  ),
  extreme(
    'within reach only beyond the end',
    groups((g) => (g.reachable = [[8000, 9000]])),
  ),
  extreme(
    'within reach at single places',
    groups(
      (g) =>
        (g.reachable = [
          [0, 0],
          [60, 60],
          [60, 60],
        ]),
    ),
  ),
  extreme(
    'stretches within reach that lie over each other',
    groups(
      (g) =>
        (g.reachable = [
          [0, 90],
          [30, 60],
          [10, 100],
        ]),
    ),
  ),
  extreme(
    'a pivot beyond the end',
    groups((g) => (g.pivot = 9000)),
  ),
  extreme(
    'a pivot at the can',
    groups((g) => (g.pivot = 0)),
  ),
  extreme(
    'tails of no length',
    groups((g) => (g.tails = { hot: 0, neutral: 0, ground: 0 })),
  ),
  extreme(
    'tails of a thousand feet',
    groups((g) => (g.tails = { hot: 12000, neutral: 12000, ground: 12000 })),
  ),
  ...['top', 'bottom', 'left', 'right', 'back'].map((entry) =>
    extreme(
      `entries at the ${entry}`,
      groups((g) => (g.entry = entry)),
    ),
  ),
  extreme('whole lengths of nothing', (j) => {
    for (const h of j.homeRuns) h.wholeLength = 0;
  }),
  extreme('whole lengths of a thousand feet', (j) => {
    for (const h of j.homeRuns) h.wholeLength = 12000;
  }),
  ...['NM without ground', 'AC', 'MC', 'SE-R', 'SE-U', 'UF', 'knob-and-tube', 'conductors in raceway', 'unknown'].map(
    (kind) => extreme(`every cable: ${kind}`, cables({ kind })),
  ),
  ...['18', '8', '2', '4/0', '2000', '500', 'twelve', '-1', '0'].map((size) =>
    extreme(`every cable of size ${size}`, cables({ size })),
  ),
  extreme('aluminum 14', cables({ metal: 'Al', size: '14' })),
  extreme('no neutral, no ground', cables({ neutral: 'none', ground: false })),
  extreme('bare neutrals', cables({ neutral: 'bare', ground: false })),
  extreme('a feeder of size 4000', (j) => (j.feeder.cable.size = '4000')),
  extreme('a feeder of lamp cord', (j) => Object.assign(j.feeder.cable, { size: '18', metal: 'Cu' })),
  extreme('a feeder of knob-and-tube', (j) => (j.feeder.cable.kind = 'knob-and-tube')),
  extreme(
    'a feeder run that crosses the county',
    (j) =>
      (j.feeder.path = [
        [12000, 12000, 12000],
        [-12000, -12000, -12000],
      ]),
  ),
  extreme('conditions no one listed', (j) => {
    for (const h of j.homeRuns) h.condition = ['', 'brittle', 'gnawed by mice', '🐁'];
  }),
  extreme('sixty-six circuits', (j) => {
    const c = j.circuits.find((x: Raw) => x.partner === null && x.poles === 1);
    const h = j.homeRuns[1];
    for (let i = 0; j.circuits.length < 66; i++) {
      j.circuits.push({ ...c, id: `c-x${i}`, number: `${100 + i}` });
      j.homeRuns.push({ ...h, id: `h-x${i}`, group: i % 2 ? 'g-bay' : 'g-cross', circuits: [`c-x${i}`] });
    }
  }),
  extreme('uses that contradict, uses listed twice', (j) => {
    for (const c of j.circuits) c.serves = ['bedroom', 'bedroom', 'outdoors', 'unfinished storage', 'bath'];
  }),
  extreme('uses listed as none', (j) => {
    for (const c of j.circuits) c.serves = [];
  }),
  extreme('two poles at 120 V, one pole at 240 V', (j) => {
    for (const c of j.circuits) Object.assign(c, c.poles === 1 ? { volts: 240 } : { volts: 120 });
  }),
  extreme('partners of two poles, of unlike ratings', (j) => {
    for (const [i, c] of j.circuits.entries())
      if (c.partner) Object.assign(c, { poles: 2, volts: 240, amps: 15 + i * 10 });
  }),
];

export const PINS: readonly Extreme[] = [
  ...[
    'stays',
    'reuse',
    'cut-in',
    'splice can',
    'splice in new panel',
    'through raceway',
    'new home run',
    'stays on old panel',
  ].map((way) =>
    extreme(`a cable pinned to: ${way}`, pins([{ pin: 'way', homeRun: 'h-03', way }]), ({ plans }) =>
      plans.flatMap((p) => {
        const run = runOf(p, 'h-03');
        const told = run.blockedBy.includes('p0') && run.why.includes(way);
        return must(run.way === way && (run.blockedBy.length === 0 || told), `${p.option}: ${run.way} ${run.why}`);
      }),
    ),
  ),
  extreme(
    'a cable pinned to two ways',
    pins([
      { pin: 'way', homeRun: 'h-03', way: 'new home run' },
      { pin: 'way', homeRun: 'h-03', way: 'reuse' },
    ]),
    ({ plans }) =>
      plans.flatMap((p) => {
        const run = runOf(p, 'h-03');
        return must(
          run.blockedBy.includes('p1') && run.blockedBy.includes('p0'),
          `${p.option}: ${run.way}, ${run.why} [${run.blockedBy}]`,
        );
      }),
  ),
  extreme(
    'a cable pinned to two splice spots',
    pins([
      { pin: 'splice at', homeRuns: ['h-03'], at: [90, 140, 87.625] },
      { pin: 'splice at', homeRuns: ['h-03'], at: [50, 140, 87.625] },
    ]),
    ({ plans }) =>
      plans.flatMap((p) => {
        const run = runOf(p, 'h-03');
        return must(run.blockedBy.length === 2, `${p.option}: ${run.way}, ${run.why} [${run.blockedBy}]`);
      }),
  ),
  extreme(
    'a cable pinned to stay and to be spliced elsewhere',
    pins([
      { pin: 'way', homeRun: 'h-03', way: 'reuse' },
      { pin: 'splice at', homeRuns: ['h-03'], at: [60, 140, 87.625] },
    ]),
    ({ plans }) =>
      plans.flatMap((p) => must(runOf(p, 'h-03').blockedBy.length > 0, `${p.option}: ${runOf(p, 'h-03').why}`)),
  ),
  extreme('all spliced at one place', (j) => {
    pins([{ pin: 'splice at', homeRuns: j.homeRuns.map((h: Raw) => h.id), at: [100, 140, 87.625] }])(j);
  }),
  extreme(
    'spliced outside the room',
    pins([{ pin: 'splice at', homeRuns: ['h-03'], at: [1000, 1000, 50] }]),
    ({ plans }) => plans.flatMap((p) => must(runOf(p, 'h-03').blockedBy.includes('p0'), `${p.option} is not blocked`)),
  ),
  extreme('spliced by no cable', pins([{ pin: 'splice at', homeRuns: [], at: [100, 140, 87.625] }])),
  extreme(
    'through points in the room',
    pins([
      {
        pin: 'through',
        homeRun: 'h-03',
        points: [
          [100, 100, 88],
          [150, 90, 88],
        ],
      },
    ]),
    ({ plans }) =>
      plans.flatMap((p) => {
        const run = p.runs.find((r) => r.homeRun === 'h-03')!;
        const at = [
          [100, 100, 88],
          [150, 90, 88],
        ].map((q) => run.legs.findIndex((l) => Math.hypot(...q.map((x, k) => x - l.to[k]!)) < 1));
        return must(
          at[0]! >= 0 && at[1]! > at[0]!,
          `${p.option}: ${run.way} does not pass the points in order (${at})`,
        );
      }),
  ),
  extreme('through no points', pins([{ pin: 'through', homeRun: 'h-03', points: [] }])),
  ...[
    [900, 60, 88],
    [30, 50, 30],
    [100, 78, 80],
  ].map((point) =>
    extreme(
      `through a point where no cable comes: ${point}`,
      pins([{ pin: 'through', homeRun: 'h-03', points: [point] }]),
      ({ plans }) =>
        plans.flatMap((p) => must(runOf(p, 'h-03').blockedBy.join() === 'p0', `${p.option} is not blocked`)),
    ),
  ),
  extreme(
    'through two ways at once',
    pins([
      { pin: 'through', homeRun: 'h-03', points: [[100, 100, 88]] },
      { pin: 'through', homeRun: 'h-03', points: [[20, 20, 88]] },
    ]),
    ({ plans }) => plans.flatMap((p) => must(runOf(p, 'h-03').blockedBy.join() === 'p0,p1', `${p.option}`)),
  ),
  extreme(
    'pinned to stay and through points',
    pins([
      { pin: 'way', homeRun: 'h-03', way: 'stays' },
      { pin: 'through', homeRun: 'h-03', points: [[100, 100, 88]] },
    ]),
    ({ plans }) => plans.flatMap((p) => must(runOf(p, 'h-03').blockedBy.join() === 'p0,p1', `${p.option}`)),
  ),
  extreme(
    'through points, left on the old panel',
    (j) => {
      pins([{ pin: 'through', homeRun: 'h-03', points: [[100, 100, 88]] }])(j);
      for (const o of j.options) o.replaces = [];
    },
    ({ plans }) => plans.flatMap((p) => must(runOf(p, 'h-03').blockedBy.join() === 'p0', `${p.option}`)),
  ),
  extreme(
    'kept out of the whole room',
    pins([
      {
        pin: 'keep out',
        outline: [
          [-9, -9],
          [-9, 200],
          [300, 200],
          [300, -9],
        ],
        fromZ: -9,
        toZ: 400,
      },
    ]),
    ({ plan }) =>
      must(
        plan('relocate').runs.every(
          (r) => r.blockedBy.length > 0 || r.legs.every((l) => l.cable === 'old' || l.by.startsWith('inside')),
        ),
        'cable in the keep-out',
      ),
  ),
  extreme(
    'kept out above and below nothing',
    pins([
      {
        pin: 'keep out',
        outline: [
          [0, 0],
          [0, 20],
          [20, 20],
        ],
        fromZ: 60,
        toZ: 10,
      },
    ]),
  ),
  extreme('a row of one, a row of none, a row of all', (j) => {
    const all = j.homeRuns.map((h: Raw) => h.id);
    pins([
      { pin: 'row', homeRuns: ['h-03'] },
      { pin: 'row', homeRuns: [] },
      { pin: 'row', homeRuns: all },
    ])(j);
  }),
  extreme(
    'every kind of pin for one cable',
    pins([
      { pin: 'way', homeRun: 'h-03', way: 'cut-in' },
      { pin: 'through', homeRun: 'h-03', points: [[100, 100, 88]] },
      { pin: 'splice at', homeRuns: ['h-03'], at: [80, 140, 87.625] },
      {
        pin: 'keep out',
        outline: [
          [60, 60],
          [60, 80],
          [80, 80],
          [80, 60],
        ],
        fromZ: 0,
        toZ: 200,
      },
      { pin: 'row', homeRuns: ['h-03', 'h-01-02'] },
    ]),
  ),
  extreme('pins of an option whose panel hangs nowhere good', (j) => {
    relocated(j).enclosure.on.bottom = 300;
    pins([{ pin: 'way', homeRun: 'h-03', way: 'cut-in' }])(j);
  }),
];
