import { expect, test } from 'vitest';
import { wallPart } from '../../../src/documents/wallPart';
import type { Line } from '../../../src/drawings/items';
import { wallDrawing } from '../../../src/drawings/wallDrawing';
import { planOption } from '../../../src/plan/planOption';
import type { Pt } from '../../../src/units/types';
import { demoJob } from '../job/demo';

const job = demoJob('washer');
const option = job.options.find((o) => o.id === 'relocate-b')!;
const { plan } = planOption(job, option);
const whole = wallDrawing(job, option, plan, { homeRun: null, small: true });
const { on } = option.enclosure;
const wall = whole.walls.find((w) => w.face.wall === on.wall && w.face.face === on.face)!;
const [min, max] = [wall.at, wall.at + wall.face.length];

test('nothing of the part lies off its wall, and its panel is in it', () => {
  const part = wallPart(whole, on);
  expect(part.extent).toMatchObject({ minX: min, maxX: max });
  const xs = part.items.flatMap((item) => (item.item === 'line' ? item.points.map((p) => p[0]) : []));
  expect(Math.min(...xs)).toBeGreaterThanOrEqual(min - 1e-9);
  expect(Math.max(...xs)).toBeLessThanOrEqual(max + 1e-9);
  expect(part.items.some((item) => item.id === option.enclosure.id)).toBe(true);
  expect(part.items.length).toBeLessThan(whole.items.length);
});

test('lines are cut where the wall ends: a ring stays a ring, a course may fall in two', () => {
  const line = (points: readonly Pt[], closed: boolean): Line => ({
    item: 'line',
    id: 'x',
    layer: 'walls',
    points,
    closed,
    stroke: null,
    fill: null,
    beside: 0,
  });
  const [l, r] = [min - 10, max + 10];
  const cut = wallPart(
    {
      ...whole,
      items: [
        line(
          [
            [l, 0],
            [r, 0],
            [r, 10],
            [l, 10],
          ],
          true,
        ),
        line(
          [
            [min + 1, 0],
            [r, 0],
            [r, 5],
            [min + 1, 5],
          ],
          false,
        ),
        line(
          [
            [l - 20, 0],
            [l, 0],
          ],
          false,
        ),
      ],
    },
    on,
  ).items as Line[];
  expect(new Set(cut[0]!.points.map(String))).toEqual(
    new Set(
      [
        [min, 0],
        [max, 0],
        [max, 10],
        [min, 10],
      ].map(String),
    ),
  );
  expect(cut.slice(1).map((c) => c.points)).toEqual([
    [
      [min + 1, 0],
      [max, 0],
    ],
    [
      [max, 5],
      [min + 1, 5],
    ],
  ]);
});
