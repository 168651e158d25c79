import { expect, test } from 'vitest';
import { dimensionFigure } from '../../../src/drawings/dimensionBoxes';
import { type Drawn, path, ring, stroke } from '../../../src/drawings/items';
import { thingLabel } from '../../../src/drawings/names';
import { alongLine, type Box, type Paper, shared } from '../../../src/drawings/paper';
import { planDrawing } from '../../../src/drawings/planDrawing';
import { blockSize, type Settled, settle } from '../../../src/drawings/settle';
import { stands } from '../../../src/drawings/things';
import { wallDrawing } from '../../../src/drawings/wallDrawing';
import type { Obstacle } from '../../../src/job/schema';
import type { Pt } from '../../../src/units/types';
import { demo, optionOf } from './support';

const paper = (width: number, height: number, scale: number): Paper => ({
  width,
  height,
  scale,
  to: ([x, y]) => [x * scale + 60, height - 60 - y * scale],
});
const SAMPLE = demo('washer').site.obstacles[0]!;
const thing = (id: string, x: number, width: number): Obstacle => ({
  ...SAMPLE,
  id,
  kind: id,
  corner: [x, 20],
  turn: 0,
  bottom: 0,
  size: { width, depth: 27, height: 40 },
});
/** Names of things, each with the outlines it lies over. */
const names = (settled: Settled, items: readonly Drawn[], { to }: Paper) => {
  const boxOf = (points: readonly Pt[]): Box => {
    const [xs, ys] = [points.map((p) => p[0]), points.map((p) => p[1])];
    const [x, y] = [Math.min(...xs), Math.min(...ys)];
    return { x, y, w: Math.max(...xs) - x, h: Math.max(...ys) - y };
  };
  const outlines = items.flatMap((i) =>
    i.item === 'line' && i.closed && (i.layer === 'things' || i.layer === 'overhead')
      ? [{ id: i.id, box: boxOf(i.points.map(to)) }]
      : [],
  );
  return settled.labels
    .filter((l) => l.of.ofThing)
    .map(({ of, x, y, leader }) => {
      const { w, h } = blockSize(of);
      const at = { x: x - w / 2, y: y - h / 2, w, h };
      const over = outlines.filter(
        ({ box: b }) => at.x + 1 < b.x + b.w && b.x + 1 < at.x + w && at.y + 1 < b.y + b.h && b.y + 1 < at.y + h,
      );
      const own = over.find((o) => o.id === of.id)?.box;
      return {
        id: of.id,
        leader,
        others: over.filter((o) => o.id !== of.id).map((o) => o.id),
        inOwn:
          own !== undefined && own.x <= at.x && own.y <= at.y && at.x + w <= own.x + own.w && at.y + h <= own.y + own.h,
        outside: over.length === 0,
      };
    });
};

const sideBySide = (scale: number) => {
  const { site } = demo('washer');
  const two = stands({ ...site, obstacles: [thing('washer', 20, 27), thing('dryer', 47, 27)] }, []);
  const items: Drawn[] = [
    ...two.map(({ obstacle, outline }) => ring('things', obstacle.id, outline, stroke('object', 'ink-2'), 'appliance')),
    path(
      'new routes',
      'cable',
      [
        [10, 33.5],
        [47, 33.5],
      ],
      stroke('new', 'new'),
    ), // across the washer's middle
    ...two.map((stand) => thingLabel(stand, stand.outline)),
  ];
  const drawing = { items, extent: { minX: 0, minY: 0, maxX: 100, maxY: 80 } };
  const on = paper(100 * scale + 200, 80 * scale + 200, scale);
  return names(settle(drawing, on), items, on);
};

test.each([0.8, 1.5, 2.2, 4])(
  'of two things side by side, a cable across one, each is named in itself or beside both at %d points to the inch',
  (scale) => {
    const found = sideBySide(scale);
    expect(found.map((n) => n.id).sort()).toEqual(['dryer', 'washer']);
    // a thing smaller than the way a leader would go is named beside it without one
    for (const name of found) {
      expect(name.others).toEqual([]);
      expect(name.inOwn || (name.outside && (name.leader !== null || scale < 1))).toBe(true);
    }
  },
);

test('a name that fits nowhere but in another thing is left out', () => {
  const { site } = demo('washer');
  const small = { ...thing('sump', 40, 4), size: { width: 4, depth: 4, height: 4 } };
  const two = stands({ ...site, obstacles: [thing('bench', 0, 300), small] }, []);
  const items: Drawn[] = [
    ring(
      'things',
      'bench',
      [
        [-200, -200],
        [400, -200],
        [400, 400],
        [-200, 400],
      ],
      stroke('object', 'ink-2'),
    ),
    ...two
      .slice(1)
      .flatMap((s) => [ring('things', 'sump', s.outline, stroke('object', 'ink-2')), thingLabel(s, s.outline)]),
  ];
  const on = paper(400, 300, 1);
  expect(settle({ items, extent: { minX: 0, minY: 0, maxX: 200, maxY: 100 } }, on).labels).toEqual([]);
});

test.each([
  ['washer', 'relocate-a'],
  ['washer', 'in-place'],
  ['l-shaped', 'relocate-b'],
  ['small-house', 'relocate-a'],
] as const)(
  '%s, %s: no name inside the outline of another thing beside its own, in plan and along the walls',
  (name, id) => {
    const job = demo(name);
    const option = optionOf(job, id);
    for (const make of [planDrawing, wallDrawing])
      for (const scale of [1.2, 2.5, 4]) {
        const drawing = make(job, option, null, { homeRun: null, small: false });
        const { extent } = drawing;
        const on = paper((extent.maxX - extent.minX) * scale + 140, (extent.maxY - extent.minY) * scale + 140, scale);
        const found = names(settle(drawing, on), drawing.items, on);
        expect(found.length).toBeGreaterThan(1);
        for (const n of found) expect([n.id, n.inOwn || n.others.length === 0]).toEqual([n.id, true]);
      }
  },
);

const twoOutlines = (id: string, lefts: readonly number[], width: number): Drawn[] => {
  const { site } = demo('washer');
  const [stand] = stands({ ...site, obstacles: [thing(id, lefts[0]!, width)] }, []);
  return lefts.flatMap((left): Drawn[] => {
    const outline: readonly Pt[] = [
      [left, 0],
      [left + width, 0],
      [left + width, 36],
      [left, 36],
    ];
    return [ring('things', id, outline, stroke('object', 'ink-2'), 'appliance'), thingLabel(stand!, outline)];
  });
};

test('a thing drawn on both walls of a corner is named once in each of its outlines', () => {
  const items = twoOutlines('dryer', [0, 80], 40);
  const on = paper(600, 300, 2);
  const settled = settle({ items, extent: { minX: 0, minY: 0, maxX: 120, maxY: 36 } }, on);
  const xs = settled.labels.map((l) => l.x).sort((a, b) => a - b);
  expect(xs).toHaveLength(2);
  expect(Math.abs(xs[0]! - on.to([20, 0])[0])).toBeLessThan(40);
  expect(Math.abs(xs[1]! - on.to([100, 0])[0])).toBeLessThan(40);
});

test('the thin line of a name does not run through the figure of a dimension', () => {
  // a thing too small for its name, dimensions close on three of its sides
  const small = twoOutlines('sump', [60], 6);
  const dimension = (id: string, from: Pt, to: Pt, off: number): Drawn => ({
    item: 'dimension',
    id,
    layer: 'dimensions',
    from,
    to,
    clear: 0,
    off,
    beyond: 'to',
  });
  const items: Drawn[] = [
    ...small,
    dimension('left', [52, -20], [52, 56], 0),
    dimension('below', [40, -12], [86, -12], 0),
    dimension('above', [40, 46], [86, 46], 0),
  ];
  const on = paper(500, 400, 2);
  const { labels } = settle({ items, extent: { minX: 0, minY: -20, maxX: 130, maxY: 60 } }, on);
  expect(labels).toHaveLength(1);
  const { leader } = labels[0]!;
  for (const item of items)
    if (item.item === 'dimension' && leader)
      expect(alongLine(...leader).some((step) => shared(step, dimensionFigure(item, on)) > 0)).toBe(false);
});
