import { Shape } from './shape';

/**
 * What stands in a basement, at ordinary sizes, as plain as it can be and still be known: no maker's shape, no mark.
 * Sizes are common ones, no source; the 3-D view stretches a model to the size that was measured.
 */
export interface Kind {
  readonly name: string;
  /** Inches. */
  readonly size: { readonly width: number; readonly depth: number; readonly height: number };
  readonly build: () => Shape;
}
const kind = (name: string, width: number, depth: number, height: number, build: (s: Shape) => Shape): Kind => ({
  name,
  size: { width, depth, height },
  build: () => build(new Shape()),
});
const FEET = [
  [2, 2],
  [1, 2],
  [1, 1],
  [2, 1],
] as const;

const washer = kind('washer', 27, 28, 39, (s) =>
  s
    .box([0, 1, 1], [27, 28, 36])
    .box([1.5, 3, 0], [25.5, 26, 1], 'detail')
    .box([0, 22, 36], [27, 28, 39])
    .disk('flat', 'y', [13.5, 0.9, 18], 9.2, -1)
    .circle('outline', 'y', [13.5, 0.8, 18], 9.2)
    .disk('dark', 'y', [13.5, 0.6, 18], 6.6, -1)
    .circle('detail', 'y', [13.5, 0.5, 18], 6.6)
    .frame('detail', [2, 30.5], [9.5, 34], 1)
    .frame('detail', [12, 30.5], [25, 34], 1)
    .box([22.2, 0, 16.4], [23.4, 1, 19.6], 'detail'),
);

const dryer = kind('dryer', 27, 28, 39, (s) =>
  s
    .box([0, 0.8, 1], [27, 28, 36])
    .box([1.5, 3, 0], [25.5, 26, 1], 'detail')
    .box([0, 22, 36], [27, 28, 39])
    .frame('outline', [4.5, 9], [22.5, 27], 0.8)
    .frame('detail', [6.5, 11], [20.5, 25], 0.8)
    .box([5.2, 0, 16], [6.2, 0.8, 20], 'detail')
    .frame('detail', [2, 30.5], [25, 34], 0.8)
    .frame('detail', [7, 3], [20, 5.5], 0.8),
);

const furnace = kind('furnace', 24, 30, 60, (s) => {
  s.box([0, 0, 0], [24, 30, 46]).box([2, 4, 46], [22, 26, 60]);
  s.frame('detail', [1.5, 2], [22.5, 22], 0).frame('detail', [1.5, 24], [22.5, 44], 0);
  for (let z = 36; z <= 42; z += 1.5) s.line('detail', [4, -0.05, z], [20, -0.05, z]);
  return s.frame('detail', [9.5, 12], [14.5, 13], 0).line('detail', [2, 4, 52], [22, 4, 52], [22, 26, 52]);
});

const boiler = kind('boiler', 24, 28, 44, (s) =>
  s
    .box([0, 2, 2], [24, 28, 38])
    .box([2, 4, 0], [22, 26, 2], 'detail')
    .frame('detail', [2, 4], [22, 18], 2)
    .pane([9, 22], [15, 28], 2)
    .cylinder('z', [6, 20, 38], 1, 6, 'detail')
    .cylinder('z', [18, 20, 38], 1, 6, 'detail')
    .cylinder('y', [12, 0, 11], 2.6, 2, 'detail'),
);

const waterHeater = kind('water-heater', 22, 22, 60, (s) => {
  for (const [x, y] of [
    [5, 5],
    [17, 5],
    [11, 18],
  ] as const)
    s.cylinder('z', [x, y, 0], 0.8, 2, 'detail');
  return s
    .turnedAbout(
      'z',
      [11, 11, 2],
      [
        [11, 0],
        [11, 51],
        [9.5, 53.2],
        [0, 54.2],
      ],
      'outline',
    )
    .circle('detail', 'z', [11, 11, 53], 11.02)
    .circle('detail', 'z', [11, 11, 7], 11.02)
    .cylinder('z', [7, 11, 55], 0.7, 5, 'detail')
    .cylinder('z', [15, 11, 55], 0.7, 5, 'detail')
    .pane([8, 8.5], [14, 13], 0.2);
});

const tank = kind('tank', 48, 26, 44, (s) => {
  for (const x of [8, 38]) for (const y of [4, 20]) s.box([x, y, 0], [x + 2, y + 2, 12], 'detail');
  return s
    .turnedAbout(
      'x',
      [0, 13, 26],
      [
        [0, 0],
        [9, 0.8],
        [12.5, 3.5],
        [13, 6],
        [13, 42],
        [12.5, 44.5],
        [9, 47.2],
        [0, 48],
      ],
      'outline',
    )
    .circle('detail', 'x', [6, 13, 26], 13.02)
    .circle('detail', 'x', [42, 13, 26], 13.02)
    .cylinder('z', [14, 13, 38], 1, 6, 'detail')
    .cylinder('z', [34, 13, 38], 1, 6, 'detail');
});

const sump = kind('sump', 18, 18, 6, (s) =>
  s
    .cylinder('z', [9, 9, 0], 9, 1)
    .circle('detail', 'z', [9, 9, 1], 7.6)
    .cylinder('z', [9, 12, 1], 0.9, 5, 'detail')
    .line('detail', [5, 5, 1], [9, 5, 1]),
);

const sink = kind('sink', 24, 22, 34, (s) => {
  for (const [i, j] of FEET)
    s.box([i === 1 ? 1 : 21.5, j === 1 ? 1 : 18.5, 0], [i === 1 ? 2.5 : 23, j === 1 ? 2.5 : 20, 16], 'detail');
  return s
    .box([1, 1, 15], [23, 20, 31])
    .box([0, 0, 31], [24, 22, 32])
    .polygon('dark', [
      [2, 2, 32.05],
      [22, 2, 32.05],
      [22, 18, 32.05],
      [2, 18, 32.05],
    ])
    .ring('detail', [
      [2, 2, 32.1],
      [22, 2, 32.1],
      [22, 18, 32.1],
      [2, 18, 32.1],
    ])
    .cylinder('z', [12, 20, 32], 0.6, 2, 'detail')
    .cylinder('y', [12, 13, 33.4], 0.5, 7, 'detail');
});

const freezer = kind('freezer', 60, 28, 36, (s) =>
  s
    .box([0.5, 1, 1], [59.5, 28, 32])
    .box([2, 3, 0], [58, 26, 1], 'detail')
    .box([0, 0.6, 32], [60, 28, 36])
    .box([26, 0, 33], [34, 0.6, 34.4], 'detail')
    .frame('detail', [48, 3], [57, 8], 1),
);

const shelf = kind('shelf', 48, 16, 72, (s) => {
  for (const x of [0, 46.5]) for (const y of [0, 14.5]) s.box([x, y, 0], [x + 1.5, y + 1.5, 72], 'detail');
  for (const z of [4, 26, 48, 70]) s.box([0, 0, z], [48, 16, z + 1.2]);
  return s;
});

const workbench = kind('workbench', 60, 24, 36, (s) => {
  for (const x of [2, 54.5]) for (const y of [2, 18.5]) s.box([x, y, 0], [x + 3.5, y + 3.5, 34.5], 'detail');
  return s
    .box([3.5, 3, 8], [56.5, 21, 9.2], 'detail')
    .box([0, 0, 34.5], [60, 24, 36])
    .box([5.5, 2.6, 30], [54.5, 4, 34.5], 'detail');
});

const goods = kind('goods', 36, 24, 36, (s) => {
  const carton = (x0: number, y0: number, z0: number, x1: number, y1: number, z1: number) => {
    s.box([x0, y0, z0], [x1, y1, z1]);
    const y = (y0 + y1) / 2;
    s.line('detail', [x0, y, z1 + 0.02], [x1, y, z1 + 0.02]).line('detail', [x0, y, z1], [x0, y, z1 - 3]);
    s.line('detail', [x1, y, z1], [x1, y, z1 - 3]);
  };
  carton(0, 0, 0, 19, 23, 16);
  carton(19.5, 1, 0, 36, 24, 14);
  carton(1, 2, 16, 18, 22, 28);
  carton(20, 3, 14, 35, 22, 24);
  carton(3, 4, 28, 16, 20, 36);
  return s;
});

const radiator = kind('radiator', 36, 9, 26, (s) => {
  for (let x = 0; x < 36; x += 4) s.box([x + 0.4, 0.8, 3], [x + 3.6, 8.2, 26]);
  for (const x of [1, 33]) for (const y of [1.4, 6]) s.box([x, y, 0], [x + 2, y + 1.6, 3], 'detail');
  return s
    .box([0, 3.2, 5], [36, 5.8, 7], 'detail')
    .box([0, 0, 20], [36, 0.8, 21], 'detail')
    .box([0, 8.2, 20], [36, 9, 21], 'detail');
});

const STEPS = 12;
const stair = kind('stair', 132, 36, 96, (s) => {
  const [run, rise] = [132 / STEPS, 96 / STEPS];
  for (let k = 0; k < STEPS; k++) {
    const [x, z] = [k * run, (k + 1) * rise];
    s.box([x, 1.5, z - 1.2], [x + run, 34.5, z], 'detail');
    s.polygon('flat', [
      [x, 34.5, z - rise],
      [x, 34.5, z - 1.2],
      [x, 1.5, z - 1.2],
      [x, 1.5, z - rise],
    ]);
  }
  // a stringer either side, as deep as a nominal 2×10
  for (const y of [0, 34.5]) {
    const side = (at: number): (readonly [number, number, number])[] => [
      [0, at, 0],
      [12, at, 0],
      [132, at, 88],
      [132, at, 96],
      [121, at, 96],
      [0, at, 8],
    ];
    const [front, back] = [side(y), side(y + 1.5)];
    s.polygon('flat', front)
      .polygon('flat', [...back].reverse())
      .ring('outline', front)
      .ring('outline', back);
    front.forEach((a, i) => {
      const k = (i + 1) % front.length;
      s.polygon('flat', [front[k]!, a, back[i]!, back[k]!]).line('outline', a, back[i]!);
    });
  }
  return s;
});

const panel = kind('panel', 14.5, 4, 32, (s) =>
  s
    .box([0, 0, 0], [14.5, 4, 32])
    .frame('detail', [1.5, 1.6], [13, 30.4], 0)
    .frame('detail', [12, 15], [12.6, 17], -0.05),
);

const spliceBox = kind('splice-box', 6, 4, 6, (s) =>
  s
    .box([0, 0, 0], [6, 4, 6])
    .frame('detail', [0.5, 0.5], [5.5, 5.5], 0)
    .circle('detail', 'y', [1.2, -0.05, 4.8], 0.22)
    .circle('detail', 'y', [4.8, -0.05, 1.2], 0.22),
);

export const KINDS: readonly Kind[] = [
  boiler,
  dryer,
  freezer,
  furnace,
  goods,
  panel,
  radiator,
  shelf,
  sink,
  spliceBox,
  stair,
  sump,
  tank,
  washer,
  waterHeater,
  workbench,
];
