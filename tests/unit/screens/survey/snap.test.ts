import { expect, test } from 'vitest';
import { applyEdit } from '../../../../src/job/applyEdit';
import { blankJob } from '../../../../src/job/blankJob';
import type { Edit } from '../../../../src/job/edit';
import type { Job } from '../../../../src/job/schema';
import { dragBody, dragGrip, gripsOf } from '../../../../src/screens/survey/drag';
import { hitsAt } from '../../../../src/screens/survey/hit';
import { obstacleOf, PALETTE } from '../../../../src/screens/survey/palette';
import { entryPoint, freePlace, newEnclosure, newOpening, newPartition } from '../../../../src/screens/survey/placing';
import { freshId, part, refAt } from '../../../../src/screens/survey/ref';
import { faceNear, snapBox, snapCorner, snapLeft, snapPoint } from '../../../../src/screens/survey/snap';
import { demoJob } from '../../job/demo';

const blank = blankJob({ id: 'b', on: '' });
const after = (job: Job, edit: Edit | null): Job => {
  if (!edit) throw new Error('no edit');
  const result = applyEdit(job, edit);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};
const add = (job: Job, list: string, record: unknown) => after(job, { edit: 'add record', list, record, before: null });
const wall = (id: string) => ({ list: '/site/outline', id });

test('a point goes to a corner, else to a wall, else to whole quarters of an inch', () => {
  expect(snapPoint(blank.site, [3, 141], 6)).toEqual([0, 144]);
  expect(snapPoint(blank.site, [3, 70.1], 6)).toEqual([0, 70]);
  expect(snapPoint(blank.site, [50.13, 70.1], 6)).toEqual([50.25, 70]);
});

test('a corner comes square where it nearly is, else whole quarters from its neighbor', () => {
  expect(snapCorner([1.5, 150.1], [0, 0], [240, 144], 4)).toEqual([0, 150]);
  expect(snapCorner([20.1, 150.1], [0, 0], [240, 144], 4)).toEqual([20, 150]);
});

test('a wall dragged makes its neighbors whole quarters long, whatever they were', () => {
  const odd = after(blank, { edit: 'wall length', wall: 'north', length: 240.15625 });
  const now = after(odd, dragBody(odd, wall('east'), [240, 70], [250.2, 75], 4));
  expect(now.site.outline.map((c) => c.at)).toEqual([
    [0, 0],
    [0, 144],
    [250.25, 144],
    [250.25, 0],
  ]);
});

test('a corner dragged by its grip moves by the same edit a file would hold', () => {
  expect(gripsOf(blank, wall('north')).map((g) => g.key)).toEqual(['north', 'east']);
  expect(dragGrip(blank, wall('north'), 'east', [251.1, 141], 4)).toEqual({
    edit: 'move corner',
    wall: 'east',
    to: [251, 144],
  });
});

test('a thing hung on a wall stays on it, whole quarters from the end it is nearer to', () => {
  expect(snapLeft(-5, 32, 240)).toBe(0);
  expect(snapLeft(230, 32, 240)).toBe(208);
  expect(snapLeft(20.1, 32, 240)).toBe(20);
  expect(snapLeft(190.2, 32, 240.125)).toBe(190.125);
});

test('a door is dragged along its wall, and round to another when taken there', () => {
  const job = add(blank, '/site/openings', newOpening(blank, 'door', { wall: 'south', face: 'front', left: 24 }));
  const ref = { list: '/site/openings', id: 'door' };
  const along = after(job, dragBody(job, ref, [200, 0], [180, 2], 4));
  expect(along.site.openings[0]!.on).toMatchObject({ wall: 'south', left: 44 });
  const round = after(job, dragBody(job, ref, [200, 0], [2, 70], 4));
  expect(round.site.openings[0]!.on).toMatchObject({ wall: 'west', left: 54 });
});

test('a washer comes to stand against the wall it nearly stands against', () => {
  expect(snapBox(blank.site, [2, 112.9], 27, 28, 4)).toEqual([0, 116]);
  const thing = PALETTE.find((t) => t.kind === 'washer')!;
  const job = add(blank, '/site/obstacles', obstacleOf(thing, 'washer', [50, 50]));
  const now = after(job, dragBody(job, { list: '/site/obstacles', id: 'washer' }, [60, 60], [60.1, 125], 4));
  expect(now.site.obstacles[0]!.corner).toEqual([50, 116]);
});

test('a face is found from the side one stands on, in front of a partition and behind it', () => {
  const job = add(blank, '/site/partitions', newPartition(blank, [120, 144], [120, 0]));
  expect(faceNear(job.site, [110, 70], 24)?.face.id).toBe('partition:front');
  expect(faceNear(job.site, [130, 70], 24)?.face.id).toBe('partition:back');
  expect(faceNear(job.site, [5, 70], 24)?.face.id).toBe('west:front');
  expect(faceNear(job.site, [60, 70], 24)).toBeUndefined();
});

test('what lies on top is hit first: an old panel before its wall, a thing before its area', () => {
  const job = demoJob('washer');
  expect(hitsAt(job, [35, 143], 2)[0]).toEqual({ list: '/site/obstacles', id: 'washer' });
  expect(hitsAt(job, [35, 143], 2).at(-1)).toEqual({ list: '/site/areas', id: 'laundry' });
  expect(hitsAt(job, [-4, 80], 2)[0]).toEqual(wall('west'));
  expect(hitsAt(job, [200, 150], 2).map((r) => r.id)).toContain(part('/feeder').id);
});

test('every thing of the palette is one the job takes, and they are put where nothing stands', () => {
  let job: Job = after(blank, { edit: 'wall length', wall: 'north', length: 600 });
  job = after(job, { edit: 'wall length', wall: 'west', length: 600 });
  for (const thing of PALETTE) {
    const at = freePlace(job, thing.size.width, thing.size.depth);
    job = add(job, '/site/obstacles', obstacleOf(thing, freshId(job, '/site/obstacles', thing.kind), at));
  }
  expect(job.site.obstacles.map((o) => o.kind)).toEqual(PALETTE.map((t) => t.kind));
  const boxes = job.site.obstacles.map((o) => [...o.corner, o.corner[0] + o.size.width, o.corner[1] + o.size.depth]);
  for (const [i, a] of boxes.entries())
    for (const b of boxes.slice(i + 1))
      expect(a[2]! <= b[0]! || b[2]! <= a[0]! || a[3]! <= b[1]! || b[3]! <= a[1]!).toBe(true);
});

test('cables leave a can on the wall in the middle of their side', () => {
  const can = newEnclosure(blank, { wall: 'north', face: 'front', left: 60 });
  const job = add(blank, '/enclosures', can);
  expect(entryPoint(job, can, 'top')).toEqual([67.25, 144, 72]);
  expect(entryPoint(job, can, 'right')).toEqual([74.5, 144, 60]);
});

test('names are free in their list, and walls share theirs with partitions', () => {
  expect(freshId(blank, '/site/partitions', 'west')).toBe('west-2');
  expect(freshId(blank, '/site/obstacles', 'water heater')).toBe('water-heater');
});

test('a place of the job leads to its thing and field', () => {
  const job = demoJob('washer');
  expect(refAt(job, '/site/obstacles/0/size/width')).toEqual({
    ref: { list: '/site/obstacles', id: 'washer' },
    field: '/size/width',
  });
  expect(refAt(job, '/house/loads/6/va')).toEqual({ ref: { list: '/house/loads', id: 'ld-cooling' }, field: '/va' });
  expect(refAt(job, '/house/yearBuilt')).toEqual({ ref: part('/house'), field: '/yearBuilt' });
  expect(refAt(job, '/circuits/0/amps')).toBeUndefined();
});
