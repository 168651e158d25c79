import { describe, expect, test } from 'vitest';
import { boxSchedule, fromWall } from '../../../src/documents/boxPlaces';
import { readCsv } from '../../../src/documents/csv';
import { cutListCsv, orderCsv } from '../../../src/documents/cutListCsv';
import { orderGroups } from '../../../src/documents/orderGroups';
import { scheduleOf, tasksWhen, WHENS } from '../../../src/documents/schedule';
import { blankJob } from '../../../src/job/blankJob';
import { planOption } from '../../../src/plan/planOption';
import { demoJob } from '../job/demo';

const job = demoJob('washer');
const { plan } = planOption(job, job.options.find((o) => o.id === 'relocate-b')!);
const table = (text: string): string[][] => {
  const read = readCsv(text, ',');
  if (!read.ok) throw new Error('not read');
  return read.value;
};

test('the cut list as CSV holds every piece of the plan, by coil', () => {
  const [, ...rows] = table(cutListCsv(plan, (id) => `tag ${id}`));
  const pieces = plan.cuts.flatMap((cut) =>
    cut.coils.flatMap((coil, k) =>
      coil.pieces.map((p) => [cut.cable, `${k + 1}`, `${coil.length}`, p.homeRun, `${p.length}`, `${coil.left}`]),
    ),
  );
  expect(pieces.length).toBeGreaterThan(5);
  expect(rows.map(([cable, coil, , length, run, , piece, , left]) => [cable, coil, length, run, piece, left])).toEqual(
    pieces,
  );
});

test('the order as CSV is the order', () => {
  const [, ...rows] = table(orderCsv(plan.order));
  expect(rows).toEqual(plan.order.map((l) => [l.item, l.say, String(l.quantity), l.unit, String(l.leadDays ?? '')]));
});

test('the order in groups holds every line once; nothing that has an aisle lands under other', () => {
  const groups = orderGroups(plan.order);
  const placed = groups.flatMap((g) => g.lines);
  expect(placed.map((l) => l.at).sort((a, b) => a - b)).toEqual(plan.order.map((_, i) => i));
  for (const { line, at } of placed) expect(plan.order[at]).toBe(line);
  const groupOf = (item: string) => groups.find((g) => g.lines.some((l) => l.line.item === item))?.group;
  for (const { item } of plan.order.filter((l) => l.item.startsWith('cable:'))) expect(groupOf(item)).toBe('cable');
  expect(groups.find((g) => g.group === 'other')?.lines.map((l) => l.line.item) ?? []).toEqual(
    plan.order.flatMap((l) => (['label', 'patch'].includes(l.item) ? [l.item] : [])),
  );
});

describe('the home-run schedule', () => {
  const rows = scheduleOf(job, plan);
  test('holds every run once, with its own place in the result', () => {
    expect(rows.map((r) => r.at).sort((a, b) => a - b)).toEqual(plan.runs.map((_, i) => i));
    for (const row of rows) expect(plan.runs[row.at]).toBe(row.run);
  });
  test('names the box a run is spliced in, and the strictest word on AFCI of its circuits', () => {
    for (const { run, box, afci } of rows) {
      expect(box === '').toBe(run.box === null);
      const circuits = job.homeRuns.find((h) => h.id === run.homeRun)!.circuits;
      const words = plan.afci.filter((a) => circuits.includes(a.circuit)).map((a) => a.required);
      if (words.includes('yes')) expect(afci?.required).toBe('yes');
    }
  });
  test('tasks of the three parts of the day are all tasks', () => {
    const all = WHENS.flatMap((when) => tasksWhen(plan, when));
    expect(all.map((t) => t.at).sort((a, b) => a - b)).toEqual(plan.time.byTask.map((_, i) => i));
  });
});

describe('a place from the walls', () => {
  // a room of 240 by 144 in; its outline runs clockwise from the lower left corner
  const room = blankJob({ id: 'j', on: '2026-03-01' });
  test('off the nearest wall, along it from the left end of who faces it', () => {
    expect(fromWall(room, [10, 100])).toEqual({ wall: 'west', off: 10, along: 100 });
    expect(fromWall(room, [100, 140])).toEqual({ wall: 'north', off: 4, along: 100 });
    expect(fromWall(room, [238, 100])).toEqual({ wall: 'east', off: 2, along: 44 });
    expect(fromWall(room, [100, 3])).toEqual({ wall: 'south', off: 3, along: 140 });
  });
  test('outside the room beside no wall', () => expect(fromWall(room, [-5, 200])).toBeNull());
  test('every box of a plan is found beside a wall, with the circuits on its label', () => {
    const boxes = boxSchedule(job, plan);
    expect(boxes.length).toBe(plan.boxes.length);
    for (const { from, numbers, box } of boxes) {
      expect(from).not.toBeNull();
      expect(numbers.length).toBeGreaterThanOrEqual(box.homeRuns.length > 0 ? 1 : 0);
    }
  });
});
