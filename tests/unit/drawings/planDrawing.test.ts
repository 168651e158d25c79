import { expect, test } from 'vitest';
import type { Drawn } from '../../../src/drawings/items';
import type { Paper } from '../../../src/drawings/paper';
import { planDrawing } from '../../../src/drawings/planDrawing';
import { type Placed, settle } from '../../../src/drawings/settle';
import type { Plan } from '../../../src/facts/result';
import type { Job } from '../../../src/job/schema';
import { planOption } from '../../../src/plan/planOption';
import { demo, optionOf } from './support';

const WHOLE = { homeRun: null, small: false } as const;
const plans = new Map<string, Plan>();
const planOf = (job: Job, id: string): Plan => {
  const key = `${job.id} ${id}`;
  const plan = plans.get(key) ?? planOption(job, optionOf(job, id), 'live').plan;
  plans.set(key, plan);
  return plan;
};

const paperFor = (width: number, height: number, extent: ReturnType<typeof planDrawing>['extent']): Paper => {
  const margin = 60;
  const scale = Math.min(
    (width - 2 * margin) / (extent.maxX - extent.minX),
    (height - 2 * margin) / (extent.maxY - extent.minY),
  );
  return {
    width,
    height,
    scale,
    to: ([x, y]) => [margin + (x - extent.minX) * scale, margin + (extent.maxY - y) * scale],
  };
};
const numbersIn = (item: Drawn): number[] =>
  JSON.stringify(item)
    .match(/-?\d+(\.\d+)?(e-?\d+)?/g)!
    .map(Number);

test.each([
  ['washer', 'in-place'],
  ['washer', 'relocate-b'],
  ['small-house', 'relocate-a'],
  ['l-shaped', 'relocate-b'],
] as const)(
  '%s, %s: one panel of the true size at its offset, every box and mark once, nothing at infinity',
  (name, id) => {
    const job = demo(name);
    const option = optionOf(job, id);
    const plan = planOf(job, id);
    const { items } = planDrawing(job, option, plan, WHOLE);
    expect(JSON.stringify(items)).not.toMatch(/null,null|NaN|Infinity/);
    for (const item of items) for (const n of numbersIn(item)) expect(Math.abs(n)).toBeLessThan(20_000);

    const panel = items.find((i) => i.item === 'line' && i.id === option.enclosure.id && i.fill === 'new');
    const [a, b, c] = panel?.item === 'line' ? panel.points : [];
    const { width, depth } = option.enclosure.size;
    expect(Math.hypot(b![0] - a![0], b![1] - a![1])).toBeCloseTo(width, 9);
    expect(Math.hypot(c![0] - b![0], c![1] - b![1])).toBeCloseTo(depth, 9);

    const offset = items.find((i) => i.item === 'dimension' && i.id === `${option.enclosure.id} offset`);
    const long =
      offset?.item === 'dimension' ? Math.hypot(offset.to[0] - offset.from[0], offset.to[1] - offset.from[1]) : 0;
    expect(long).toBeCloseTo(option.enclosure.on.left, 9);

    const boxes = plan.boxes.filter((box) => box.on !== 'splice can' && box.on !== 'new panel').map((box) => box.id);
    expect(items.filter((i) => i.item === 'sign' && i.sign === 'splice box').map((i) => i.id)).toEqual(boxes);
    const marks = items.flatMap((i) => (i.item === 'mark' ? [i.number] : []));
    expect(new Set(marks).size).toBe(marks.length);
  },
);

test('the routes drawn are the legs of the plan: every leg in plan lies on a trunk that names its home run', () => {
  const job = demo('washer');
  const plan = planOf(job, 'relocate-b');
  const { items } = planDrawing(job, optionOf(job, 'relocate-b'), plan, WHOLE);
  const trunks = items.flatMap((i) => (i.item === 'line' && i.layer === 'new routes' && i.id !== 'feeder' ? [i] : []));
  const on = (x: number, y: number, cable: string): boolean =>
    trunks.some(({ id, points }) => {
      const [p, q] = points as [readonly [number, number], readonly [number, number]];
      const l = Math.hypot(q[0] - p[0], q[1] - p[1]);
      const t = ((x - p[0]) * (q[0] - p[0]) + (y - p[1]) * (q[1] - p[1])) / l;
      const far = Math.abs((x - p[0]) * (q[1] - p[1]) - (y - p[1]) * (q[0] - p[0])) / l;
      return id.split(' ').includes(cable) && far < 0.05 && t > -0.05 && t < l + 0.05;
    });
  let looked = 0;
  for (const run of plan.runs)
    for (const { from, to, by } of run.legs) {
      if (by === 'inside box' || by === 'inside panel' || Math.hypot(to[0] - from[0], to[1] - from[1]) < 0.05) continue;
      looked++;
      expect(on((from[0] + to[0]) / 2, (from[1] + to[1]) / 2, run.homeRun)).toBe(true);
    }
  expect(looked).toBeGreaterThan(20);
});

test('without a plan the room, the old work and the new panel are drawn, and no route or finding', () => {
  const job = demo('washer');
  const { items } = planDrawing(job, optionOf(job, 'relocate-a'), null, WHOLE);
  expect(items.some((i) => i.layer === 'new routes' || i.item === 'mark' || i.layer === 'space')).toBe(false);
  expect(items.some((i) => i.layer === 'old work')).toBe(true);
});

test('what an option moves stands at its new place and leaves a dashed outline', () => {
  const job = demo('washer'); // in place: the washer goes from 31 to 60
  const { items } = planDrawing(job, optionOf(job, 'in-place'), null, WHOLE);
  const washer = items.flatMap((i) => (i.item === 'line' && i.id === 'washer' ? [i] : []));
  expect(washer.map((l) => [l.points[0]![0], l.stroke?.dash])).toEqual([
    [31, 'away'],
    [60, null],
  ]);
});

const boxOf = (p: Placed<unknown>, w: number, h: number) => ({ x: p.x - w / 2, y: p.y - h / 2, w, h });
const overlap = (a: ReturnType<typeof boxOf>, b: ReturnType<typeof boxOf>): boolean =>
  a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;

test.each([
  [1100, 430],
  [810, 550],
  [370, 290],
])(
  'marks do not lie over each other on paper of %i by %i, and settle the same way twice',
  (width, height) => {
    for (const name of ['washer', 'l-shaped'] as const) {
      const job = demo(name);
      const option = optionOf(job, 'relocate-a');
      const drawing = planDrawing(job, option, planOf(job, option.id), { homeRun: null, small: width < 600 });
      const paper = paperFor(width, height, drawing.extent);
      const settled = settle(drawing, paper);
      expect(settled.marks.length).toBeGreaterThan(2);
      const boxes = settled.marks.map((m) => boxOf(m, 22, 22));
      boxes.forEach((a, i) => {
        for (const b of boxes.slice(i + 1)) expect(overlap(a, b)).toBe(false);
      });
      expect(settle(drawing, paper)).toEqual(settled);
    }
  },
  30_000,
);
