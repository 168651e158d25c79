import { expect, test } from 'vitest';
import { applyEdit } from '../../../src/job/applyEdit';
import type { Edit } from '../../../src/job/edit';
import type { Job } from '../../../src/job/schema';
import { demoJob } from './demo';

const after = (job: Job, edit: Edit): Job => {
  const result = applyEdit(job, edit);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};
const job = demoJob('washer');
const group = (of: Job, id: string) => of.cableGroups.find((g) => g.id === id)!;

test('a wall pushed out takes its corners, the cables stapled to it and the edge of the area along', () => {
  const now = after(job, { edit: 'move wall', wall: 'north-laundry', by: [0, 6] });
  expect(now.site.outline.map((c) => c.at)).toEqual([
    [0, 0],
    [0, 174],
    [180, 174],
    [384, 168],
    [384, 0],
    [180, 0],
  ]);
  expect(group(now, 'g-east').path.slice(0, 3)).toEqual([
    [37.25, 174, 72],
    [37.25, 174, 94.625],
    [37.25, 160, 94.625],
  ]);
  expect(now.feeder.path.at(-1)).toEqual([40, 174, 72]);
  expect(now.site.areas[0]!.outline).toEqual([
    [0, 0],
    [180, 0],
    [180, 174],
    [0, 174],
  ]);
  expect(now.site.partitions[0]!.from).toEqual([180, 174]);
});

test('what hangs on a moved wall keeps its distance from the left end of its face', () => {
  const now = after(job, { edit: 'move wall', wall: 'north-laundry', by: [0, 6] });
  expect(now.enclosures).toBe(job.enclosures);
  expect(now.options[1]!.enclosure.on).toBe(job.options[1]!.enclosure.on);
  expect(now.site.openings).toBe(job.site.openings);
});

test('a corner moved at the left end takes things along; at the right end they stay where they are', () => {
  const left = after(job, { edit: 'move corner', wall: 'north-laundry', to: [-12, 168] });
  expect(group(left, 'g-east').path[0]).toEqual([25.25, 168, 72]);
  const right = after(job, { edit: 'move corner', wall: 'east', to: [396, 168] });
  expect(right.cableGroups).toBe(job.cableGroups);
  expect(right.site.areas.find((a) => a.id === 'room')!.outline).toContainEqual([396, 168]);
});

test('a wall that would leave a panel behind does not move', () => {
  const result = applyEdit(job, { edit: 'move corner', wall: 'north-room', to: [60, 168] });
  expect(result.ok ? 'moved' : result.error.error).toMatchObject({
    type: 'beyond-wall',
    path: '/enclosures/1/on/left',
  });
});

test('a corner pulled across the room is refused and the room is as before', () => {
  const result = applyEdit(job, { edit: 'move corner', wall: 'east', to: [384, -50] });
  expect(result.ok ? 'moved' : result.error.error).toMatchObject({ type: 'crosses-itself', path: '/site/outline' });
});

test('a partition carries the cable on its faces, not what stands elsewhere', () => {
  const riser: Edit = {
    edit: 'set value',
    path: '/cableGroups/3/path',
    value: [
      [177.75, 60, 50],
      [177.75, 60, 90],
      [100, 60, 90],
    ],
  };
  const now = after(after(job, riser), { edit: 'move wall', wall: 'new-wall', by: [10, 0] });
  expect(now.site.partitions[0]).toMatchObject({ from: [190, 168], to: [190, 0] });
  expect(group(now, 'g-wall').path).toEqual([
    [187.75, 60, 50],
    [187.75, 60, 90],
    [100, 60, 90],
  ]);
  expect(now.options[2]!.enclosure.on).toBe(job.options[2]!.enclosure.on);
  expect(now.site.obstacles).toBe(job.site.obstacles);
});

test('a slanted wall turned about one end keeps what is on it at the same distance', () => {
  const shape = demoJob('l-shaped');
  // the wall runs from (384, 204) to (432, 156); (408, 180) is its middle
  const pinned = after(shape, {
    edit: 'set value',
    path: '/options/2/pins',
    value: [{ id: 'p', pin: 'splice at', homeRuns: ['h-03'], at: [408, 180, 100] }],
  });
  const now = after(pinned, { edit: 'move corner', wall: 'east', to: [444, 144] });
  const pin = now.options[2]!.pins[0]!;
  expect(pin.pin === 'splice at' && Math.hypot(pin.at[0] - 384, pin.at[1] - 204)).toBeCloseTo(Math.hypot(24, 24), 1);
});

test('there is no wall of that name', () => {
  for (const edit of [
    { edit: 'move wall', wall: 'x', by: [1, 1] },
    { edit: 'move corner', wall: 'new-wall', to: [1, 1] },
  ] as const) {
    const result = applyEdit(job, edit);
    expect(result.ok ? 'moved' : result.error.error.type).toBe('no-such-record');
  }
});
