import { expect, test } from 'vitest';
import { applyEdit } from '../../../src/job/applyEdit';
import { blankJob } from '../../../src/job/blankJob';
import { dependents } from '../../../src/job/dependents';
import { type Edit, editName } from '../../../src/job/edit';
import type { Job } from '../../../src/job/schema';
import { wallFaces } from '../../../src/job/site';
import { demoJob } from './demo';

const washer = demoJob('washer');
const blank = blankJob({ id: 'b', on: '2026-03-02' });
const after = (edit: Edit, before: Job = washer): Job => {
  const result = applyEdit(before, edit);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};
const fault = (edit: Edit, before: Job = washer) => {
  const result = applyEdit(before, edit);
  return result.ok ? 'applied' : result.error.error;
};
const corners = (job: Job) => job.site.outline.map((c) => [c.id, ...c.at]);

test('a field is set by the id of its record and the undo list says which', () => {
  const edit: Edit = { edit: 'set field', list: '/site/obstacles', id: 'washer', field: '/size/width', value: 30 };
  const now = after(edit);
  expect(now.site.obstacles.find((o) => o.id === 'washer')!.size.width).toBe(30);
  expect(now.site.obstacles.find((o) => o.id === 'dryer')).toBe(washer.site.obstacles.find((o) => o.id === 'dryer'));
  expect(editName(edit)).toBe('Change width of washer');
  expect(editName({ ...edit, field: '/corner/0' })).toBe('Change place of washer');
  expect(fault({ ...edit, id: 'nobody' })).toMatchObject({ type: 'no-such-place', path: '/site/obstacles/nobody' });
  expect(fault({ ...edit, field: '/size/weight' })).toMatchObject({ type: 'no-such-place' });
  expect(fault({ ...edit, value: 'wide' })).toMatchObject({ type: 'wrong-type' });
});

test('a room is drawn anew: walls that keep their id stay as they are built, new ones are not known', () => {
  const built = after({ edit: 'set field', list: '/site/outline', id: 'west', field: '/thickness', value: 10 }, blank);
  const now = after(
    {
      edit: 'draw room',
      walls: [
        { id: 'west', at: [0, 0] },
        { id: 'north', at: [0, 168] },
        { id: 'stair', at: [240, 168] },
      ],
    },
    built,
  );
  expect(corners(now)).toEqual([
    ['west', 0, 0],
    ['north', 0, 168],
    ['stair', 240, 168],
  ]);
  expect(now.site.outline.map((c) => c.thickness)).toEqual([10, 'unknown', 'unknown']);
});

test('a room is not drawn from under what hangs on its walls', () => {
  const walls = washer.site.outline.filter((c) => c.id !== 'east').map(({ id, at }) => ({ id, at }));
  expect(fault({ edit: 'draw room', walls })).toMatchObject({
    type: 'no-such-record',
    path: '/site/openings/2/on/wall',
  });
});

test('a longer wall moves the one that follows, and a rectangle stays one', () => {
  const now = after({ edit: 'wall length', wall: 'north', length: 250.5 }, blank);
  expect(corners(now)).toEqual([
    ['west', 0, 0],
    ['north', 0, 144],
    ['east', 250.5, 144],
    ['south', 250.5, 0],
  ]);
  expect(corners(after({ edit: 'wall length', wall: 'west', length: 100 }, blank))).toEqual([
    ['west', 0, 0],
    ['north', 0, 100],
    ['east', 240, 100],
    ['south', 240, 0],
  ]);
  expect(fault({ edit: 'wall length', wall: 'north', length: 0 }, blank)).toMatchObject({ type: 'wrong-value' });
  expect(fault({ edit: 'wall length', wall: 'nobody', length: 9 }, blank)).toMatchObject({ type: 'no-such-record' });
});

test('a partition made shorter keeps its start, and does not cut through its door', () => {
  const now = after({ edit: 'wall length', wall: 'new-wall', length: 150 });
  expect(now.site.partitions[0]).toMatchObject({ from: [180, 168], to: [180, 18] });
  expect(fault({ edit: 'wall length', wall: 'new-wall', length: 40 })).toMatchObject({ type: 'beyond-wall' });
});

/** Plan points of the ends of everything hung, to the inch fraction: what a split or a join must not move. */
const hangs = (job: Job) =>
  [...job.site.openings, ...job.enclosures.map((e) => ({ ...e, width: e.size.width }))].map(({ id, on, width }) => {
    const face = wallFaces(job.site, 'after').find((f) => f.wall === on.wall && f.face === on.face)!;
    const at = (s: number) => [0, 1].map((k) => Math.round((face.from[k]! + face.along[k]! * s) * 64) / 64);
    return [id, at(on.left), at(on.left + width)];
  });

test('a split wall keeps everything on it in its place, and joined again it is what it was', () => {
  const split = after({ edit: 'split wall', wall: 'north-room', at: 60, id: 'north-end' });
  expect(corners(split)[3]).toEqual(['north-end', 240, 168]);
  expect(split.site.openings[1]!.on).toMatchObject({ wall: 'north-end', left: 36 });
  expect(split.site.outline[3]!.face).toEqual(washer.site.outline[2]!.face);
  expect(hangs(split)).toEqual(hangs(washer));
  expect(after({ edit: 'join walls', wall: 'north-room' }, split)).toEqual(washer);
});

test('a split partition: the door on its back is measured from the other end', () => {
  const far = after({ edit: 'split wall', wall: 'new-wall', at: 50, id: 'new-end' });
  expect(far.site.openings[0]!.on).toMatchObject({ wall: 'new-end', left: 20 });
  const near = after({ edit: 'split wall', wall: 'new-wall', at: 150, id: 'new-end' });
  expect(near.site.openings[0]!.on).toMatchObject({ wall: 'new-wall', left: 2 });
  expect(hangs(far)).toEqual(hangs(washer));
  expect(hangs(near)).toEqual(hangs(washer));
  expect(fault({ edit: 'split wall', wall: 'new-wall', at: 130, id: 'new-end' })).toMatchObject({
    type: 'beyond-wall',
    path: '/site/openings/0/on/left',
  });
  expect(fault({ edit: 'split wall', wall: 'new-wall', at: 200, id: 'new-end' })).toMatchObject({
    type: 'wrong-value',
  });
});

test('walls that meet at a corner are not joined', () => {
  expect(fault({ edit: 'join walls', wall: 'west' }, blank)).toMatchObject({ type: 'not-straight' });
});

test('what cannot do without a record is named, and goes with it only when asked', () => {
  const of = { list: '/enclosures', id: 'old-1' };
  const groups = washer.cableGroups.filter((g) => g.enclosure === 'old-1').map((g) => g.id);
  const runs = washer.homeRuns.filter((h) => groups.includes(h.group)).map((h) => h.id);
  const found = dependents(washer, of).map((n) => n.id);
  expect(found.slice(0, groups.length)).toEqual(groups);
  expect(found.slice(groups.length).sort()).toEqual([...runs].sort());
  expect(fault({ edit: 'remove record', ...of })).toMatchObject({ type: 'no-such-record' });
  const now = after({ edit: 'remove together', ...of });
  expect(now.enclosures.map((e) => e.id)).not.toContain('old-1');
  expect(now.homeRuns.some((h) => runs.includes(h.id))).toBe(false);
  expect(now.circuits).toBe(washer.circuits);
  expect(now.options.every((o) => o.replaces.every((r) => r.enclosure !== 'old-1'))).toBe(true);
});

test('a partition goes with its door', () => {
  expect(dependents(washer, { list: '/site/partitions', id: 'new-wall' })).toContainEqual({
    list: '/site/openings',
    id: 'laundry-door',
  });
  const now = after({ edit: 'remove together', list: '/site/partitions', id: 'new-wall' });
  expect(now.site.partitions).toEqual([]);
  expect(now.site.openings.map((o) => o.id)).toEqual(['room-window', 'outside-door']);
});

test('a record gets another name, and all that names it follows', () => {
  const rename = (list: string, id: string, to: string) => after({ edit: 'rename record', list, id, to });
  const wall = rename('/site/partitions', 'new-wall', 'laundry wall');
  expect(wall.site.openings[0]!.on.wall).toBe('laundry wall');
  expect(JSON.stringify(wall)).not.toContain('"new-wall"');
  const can = rename('/enclosures', 'old-1', 'left panel');
  expect(can.cableGroups.filter((g) => g.enclosure === 'left panel')).toHaveLength(
    washer.cableGroups.filter((g) => g.enclosure === 'old-1').length,
  );
  expect(JSON.stringify(can)).not.toContain('"old-1"');
  const group = rename('/cableGroups', 'g-east', 'east bundle');
  expect(JSON.stringify(group)).not.toContain('"g-east"');
  const thing = rename('/site/obstacles', 'washer', 'big washer');
  expect(thing.options.flatMap((o) => o.moves.map((m) => m.obstacle))).toEqual(
    washer.options.flatMap((o) => o.moves.map((m) => (m.obstacle === 'washer' ? 'big washer' : m.obstacle))),
  );
  const back = { edit: 'rename record', list: '/enclosures', id: 'left panel', to: 'old-1' } as const;
  expect(after(back, can)).toEqual(washer);
  expect(fault({ edit: 'rename record', list: '/site/obstacles', id: 'washer', to: 'dryer' })).toMatchObject({
    type: 'duplicate-id',
  });
  expect(fault({ edit: 'rename record', list: '/circuits', id: 'c-01', to: 'x' })).toMatchObject({
    type: 'no-such-place',
  });
});
