import { describe, expect, test } from 'vitest';
import type { Drawn } from '../../../src/drawings/items';
import type { Paper } from '../../../src/drawings/paper';
import { planDrawing } from '../../../src/drawings/planDrawing';
import { blockSize, settle } from '../../../src/drawings/settle';
import { unroll } from '../../../src/drawings/unroll';
import { type WallDrawing, wallDrawing } from '../../../src/drawings/wallDrawing';
import type { Plan } from '../../../src/facts/result';
import type { Job } from '../../../src/job/schema';
import { planOption } from '../../../src/plan/planOption';
import { mirrored } from '../../support/turned';
import { demo, optionOf } from './support';

const WHOLE = { homeRun: null, small: false } as const;
const drawingOf = (job: Job, id: string, plan: Plan | null = null): WallDrawing =>
  wallDrawing(job, optionOf(job, id), plan, WHOLE);

/** Left, right, bottom and top of the first thing drawn by that name in a layer. */
const extentOf = (items: readonly Drawn[], id: string, layer: string): number[] => {
  const line = items.find((i) => i.item === 'line' && i.id === id && i.layer === layer);
  if (line?.item !== 'line') throw new Error(`no ${id} in ${layer}`);
  const xs = line.points.map((p) => p[0]);
  const zs = line.points.map((p) => p[1]);
  return [Math.min(...xs), Math.max(...xs), Math.min(...zs), Math.max(...zs)];
};
const near = (found: readonly number[], hand: readonly number[]): void => {
  expect(found).toHaveLength(hand.length);
  found.forEach((n, i) => {
    expect(n, `${found} for ${hand}`).toBeCloseTo(hand[i]!, 3);
  });
};

/*
 * Hand figures. Washer demo, walls turning right: west 168, north-laundry 180, north-room 204, east 168, south-room 204,
 * south-laundry 180: 1104 in. The first old panel's middle lies 168 + 30 + 7.25 = 205.25 along; the seam 552 farther, at
 * 757.25, nearest to the corner at 720 where south-room begins. So south-room 0, south-laundry 204, west 384,
 * north-laundry 552, north-room 732, east 936 … 1104; then, 48 apart, the new wall's two sides at 1152 and 1368.
 */
describe('washer demo', () => {
  const job = demo('washer');
  const { items, walls, extent } = drawingOf(job, 'relocate-a');
  test('walls stand one after the other, turning right', () => {
    expect(walls.map((w) => [w.face.id, w.at])).toEqual([
      ['south-room:front', 0],
      ['south-laundry:front', 204],
      ['west:front', 384],
      ['north-laundry:front', 552],
      ['north-room:front', 732],
      ['east:front', 936],
      ['new-wall:front', 1152],
      ['new-wall:back', 1368],
    ]);
    // joists 9 1/4 in deep with their underside at 90
    near([extent.minX, extent.maxX, extent.maxY], [0, 1536, 99.25]);
  });
  test('panels, things, openings and the cut partition stand where they were measured', () => {
    near(extentOf(items, 'new-a', 'new work'), [628, 642.5, 36, 72]);
    near(extentOf(items, 'old-1', 'old work'), [582, 596.5, 48, 72]);
    near(extentOf(items, 'old-2', 'old work'), [600, 614.5, 52, 70]);
    // 31 in out from the west wall too, but drawn where it stands at the wall
    const washers = items.filter((i) => i.item === 'line' && i.id === 'washer' && i.fill === 'appliance');
    expect(washers).toHaveLength(1);
    near(extentOf(washers, 'washer', 'things'), [583, 610, 0, 39]);
    near(extentOf(items, 'room-window', 'openings'), [828, 864, 62, 82]);
    near(extentOf(items, 'outside-door', 'openings'), [1036, 1072, 0, 80]);
    // the new wall is 4 1/2 in thick and ends on the corner of two walls: half of it on each
    const cuts = items.filter((i) => i.item === 'line' && i.id === 'new-wall' && i.fill === 'stud');
    expect(
      cuts.map((i) => (i.item === 'line' ? Math.min(...i.points.map((p) => p[0])) : 0)).sort((a, b) => a - b),
    ).toEqual([201.75, 204, 729.75, 732]);
  });
  test('a panel on a partition hangs on that side of it, apart from the room’s walls', () => {
    near(extentOf(drawingOf(job, 'relocate-b').items, 'new-b', 'new work'), [1488, 1502.5, 36, 72]);
  });
  test('joists show their ends on walls they run into and their side on walls they lie along', () => {
    // along y, 16 apart from x = 12: at 12 along north-laundry, 1 1/2 thick
    const ends = items.filter((i) => i.item === 'line' && i.fill === 'wood end');
    const lefts = ends.map((i) => (i.item === 'line' ? Math.min(...i.points.map((p) => p[0])) : 0));
    expect(lefts.some((x) => Math.abs(x - (552 + 12 - 0.75)) < 1e-6)).toBe(true);
    // x = 12 … 172 in the laundry and 188 … 380 in the room, on the north and on the south side
    expect(lefts.filter((x) => x < 1104)).toHaveLength(2 * (11 + 13));
    expect(lefts.some((x) => x > 384 && x < 552 - 1)).toBe(false);
  });
  test('dimensions: 6 ft 4 in from the corner, 3 ft and 6 ft above the floor', () => {
    const long = (id: string): number => {
      const d = items.find((i) => i.item === 'dimension' && i.id === id);
      return d?.item === 'dimension' ? Math.hypot(d.to[0] - d.from[0], d.to[1] - d.from[1]) : Number.NaN;
    };
    near([long('new-a offset'), long('new-a bottom'), long('new-a top')], [76, 36, 72]);
  });
  test('boxes and cable ends stand where the plan has them', () => {
    const plan = planOption(job, optionOf(job, 'relocate-a'), 'live').plan;
    const drawn = drawingOf(job, 'relocate-a', plan).items;
    const signs = drawn.flatMap((i) => (i.item === 'sign' && i.sign === 'splice box' ? [i] : []));
    // every box of this option hangs on the north wall (y = 168): 552 + its x, at its height
    const boxes = plan.boxes.filter((b) => b.on === 'wall' || b.on === 'joist');
    expect(boxes.length).toBeGreaterThan(2);
    expect(signs.map((s) => s.id)).toEqual(boxes.map((b) => b.id));
    boxes.forEach((b, i) => {
      // on the wall, or in a bank that reaches out from it under the joists
      expect(b.at[1]).toBeGreaterThan(168 - 24);
      near(signs[i]!.at, [552 + b.at[0], b.at[2]]);
    });
    // the left old run at 50 in above the floor, which ends 14 in from the corner at 40 in
    const wall = drawn.filter((i) => i.item === 'line' && i.id === 'g-wall');
    const ends = wall.flatMap((i) => (i.item === 'line' ? i.points : []));
    expect(ends.some(([x, z]) => Math.abs(x - 566) < 0.01 && Math.abs(z - 40) < 0.01)).toBe(true);
  });
});

/*
 * L-shaped demo: west-room 150, west-mech 162, north 216, inner-east 108, inner-north 168, slant 48√2 = 67.882, east 156,
 * south-family 216, south-room 216: 1459.882. Old panel's middle at 77.25, seam at 807.19, nearest to the corner at 804
 * where the slant begins.
 */
test('an L-shaped room with a slanted wall: true lengths, the panel 26 in along the slant', () => {
  const job = demo('l-shaped');
  const walls = unroll(job);
  const slant = 48 * Math.SQRT2;
  const room = walls.filter((w) => !w.face.partition);
  expect(room.map((w) => w.face.wall)).toEqual([
    'slant',
    'east',
    'south-family',
    'south-room',
    'west-room',
    'west-mech',
    'north',
    'inner-east',
    'inner-north',
  ]);
  near(
    room.map((w) => w.at),
    [0, slant, slant + 156, slant + 372, slant + 588, slant + 738, slant + 900, slant + 1116, slant + 1224],
  );
  const { items } = drawingOf(job, 'relocate-b');
  near(extentOf(items, 'new-b', 'new work'), [26, 40.5, 24, 72]);
  near(extentOf(items, 'old', 'old work'), [slant + 588 + 70, slant + 588 + 84.5, 33, 72]);
  // joists run along y and meet the slant at 45 degrees: a joist end is 1 1/2 × √2 wide there
  const end = items.find((i) => i.item === 'line' && i.fill === 'wood end' && i.points[1]![0] < slant - 3);
  expect(end?.item === 'line' ? end.points[1]![0] - end.points[0]![0] : 0).toBeCloseTo(1.5 * Math.SQRT2, 6);
  // the partition that meets the north-south family wall does not hide what hangs before it on its own side
  expect(items.some((i) => i.item === 'line' && i.id === 'furnace')).toBe(false); // farther than 3 ft from every wall
});

test('a mirrored job gives the mirrored drawing', () => {
  for (const [name, id, whole] of [
    ['washer', 'relocate-a', 1104],
    ['small-house', 'relocate-a', 720],
  ] as const) {
    const job = demo(name);
    const [one, other] = [drawingOf(job, id), drawingOf(mirrored(job), id)];
    const seen = (d: WallDrawing, flip: boolean): string[] =>
      d.items
        .flatMap((i) => {
          if (i.item !== 'line' || i.id === 'slab' || i.id === 'floor') return [];
          const xs = i.points.map((p) => (flip ? whole - p[0] : p[0]));
          const zs = i.points.map((p) => p[1]);
          if (Math.min(...i.points.map((p) => p[0])) > whole) return [];
          const round = (n: number) => (Math.round(n * 1000) + 0) / 1000;
          return [
            [i.id, i.layer, ...[Math.min(...xs), Math.max(...xs), Math.min(...zs), Math.max(...zs)].map(round)].join(
              ' ',
            ),
          ];
        })
        .filter((text) => !text.includes(':front')) // corner lines belong to the wall on their right
        .sort();
    expect(seen(other, true)).toEqual(seen(one, false));
  }
});

test('what stands behind a partition is not seen through it', () => {
  const job = demo('washer');
  // the stored boxes stand 27 3/4 in before the side the panel hangs on, and on the other side of the wall not at all
  const { items } = drawingOf(job, 'relocate-b');
  const boxes = items.flatMap((i) =>
    i.item === 'line' && i.id === 'boxes' ? [Math.min(...i.points.map((p) => p[0]))] : [],
  );
  expect(boxes.some((x) => x > 1152 && x < 1368)).toBe(false);
  expect(boxes.some((x) => x >= 1368)).toBe(true);
});

test('lettering and marks of both drawings do not lie over each other at a desk', () => {
  for (const name of ['washer', 'small-house', 'l-shaped'] as const) {
    const job = demo(name);
    const option = optionOf(job, 'relocate-a');
    const { plan } = planOption(job, option, 'live');
    for (const [drawing, high] of [
      [planDrawing(job, option, plan, WHOLE), 680],
      [wallDrawing(job, option, plan, WHOLE), 300],
    ] as const) {
      const { minX, maxX, minY, maxY } = drawing.extent;
      const scale = (high - 122) / (maxY - minY);
      const paper: Paper = {
        width: (maxX - minX) * scale + 124,
        height: high,
        scale,
        to: ([x, y]) => [62 + (x - minX) * scale, 61 + (maxY - y) * scale],
      };
      const { labels, marks } = settle(drawing, paper);
      const written = [
        ...labels.map((l) => ({ say: l.of.lines[0]!.say, x: l.x, y: l.y, ...blockSize(l.of) })),
        ...marks.map((m) => ({ say: `mark ${m.of.number}`, x: m.x, y: m.y, w: 22, h: 22 })),
      ];
      const over = written.flatMap((a, i) =>
        written
          .slice(i + 1)
          .filter((b) => Math.abs(a.x - b.x) < (a.w + b.w) / 2 - 1 && Math.abs(a.y - b.y) < (a.h + b.h) / 2 - 1)
          .map((b) => `${a.say} over ${b.say}`),
      );
      expect(over, name).toEqual([]);
      expect(written.length).toBeGreaterThan(10);
    }
  }
}, 30_000);
