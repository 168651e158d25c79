import { expect, test } from 'vitest';
import { DETAIL_RADIUS, detailOf, detailPlace, tooSmall } from '../../../src/drawings/detail';
import type { Paper } from '../../../src/drawings/paper';
import { planDrawing } from '../../../src/drawings/planDrawing';
import { settle } from '../../../src/drawings/settle';
import { intrusions } from '../../../src/drawings/spaces';
import { middle } from '../../../src/drawings/things';
import { planOption } from '../../../src/plan/planOption';
import { demo, optionOf } from './support';

test('a conflict of 2 in is drawn again in a circle clear of what is written; a large one is not', () => {
  const job = demo('washer');
  const start = optionOf(job, 'relocate-a');
  // the washer ends at 58; a panel whose left edge is at 56 has 2 in of it before its front
  const option = { ...start, enclosure: { ...start.enclosure, on: { ...start.enclosure.on, left: 56 } } };
  const moved = { ...job, options: [option] };
  const plan = planOption(moved, option, 'live').plan;
  const found = intrusions(moved, option, plan);
  expect(found.map((i) => i.id)).toContain('washer');
  const small = tooSmall(found, 2)!;
  expect(small.by).toBeCloseTo(2, 6);
  expect(tooSmall(found, 20)).toBeNull();

  const drawing = planDrawing(moved, option, plan, { homeRun: null, small: false });
  const { extent } = drawing;
  const paper: Paper = {
    width: 1040,
    height: 560,
    scale: 2,
    to: ([x, y]) => [130 + (x - extent.minX) * 2, 100 + (extent.maxY - y) * 2],
  };
  const settled = settle(drawing, paper);
  const at = middle(small.outline);
  const place = detailPlace(drawing, paper, settled, at)!;
  const [tx, ty] = paper.to(at);
  expect(Math.hypot(place[0] - tx, place[1] - ty)).toBeGreaterThan(DETAIL_RADIUS);
  expect(place[0]).toBeGreaterThan(DETAIL_RADIUS);
  expect(place[1]).toBeLessThan(paper.height - DETAIL_RADIUS);
  const part = detailOf(drawing, at, paper.scale);
  expect(part.items.some((i) => i.id === 'in the way: washer')).toBe(true);
  expect(part.items.some((i) => i.id === 'furnace')).toBe(false);
});
