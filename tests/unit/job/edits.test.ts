import { expect, test } from 'vitest';
import { applyEdit } from '../../../src/job/applyEdit';
import { type Edit, editName } from '../../../src/job/edit';
import type { Job } from '../../../src/job/schema';
import { demoJob } from './demo';

const job = demoJob('washer');
const after = (edit: Edit, before: Job = job): Job => {
  const result = applyEdit(before, edit);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};
const fault = (edit: Edit, before: Job = job) => {
  const result = applyEdit(before, edit);
  return result.ok ? 'applied' : result.error.error;
};

test('one value is set; everything else is the same object as before', () => {
  const now = after({ edit: 'set value', path: '/options/1/enclosure/on/left', value: 77 });
  expect(now.options[1]!.enclosure.on.left).toBe(77);
  expect(now.options[0]).toBe(job.options[0]);
  expect(now.site).toBe(job.site);
  expect(now.homeRuns).toBe(job.homeRuns);
  expect(job.options[1]!.enclosure.on.left).toBe(76);
});

test('a value is checked and rounded like one read from a file', () => {
  expect(
    after({ edit: 'set value', path: '/options/1/enclosure/on/left', value: 77.001 }).options[1]!.enclosure.on.left,
  ).toBe(77);
  expect(fault({ edit: 'set value', path: '/options/1/enclosure/on/left', value: 'far' })).toMatchObject({
    type: 'wrong-type',
    path: '/options/1/enclosure/on/left',
  });
  expect(fault({ edit: 'set value', path: '/circuits/0/partner', value: null })).toMatchObject({
    type: 'partner-not-mutual',
    path: '/circuits/1/partner',
  });
});

test.each([
  ['', 1],
  ['circuits', []],
  ['/circuits/99/amps', 20],
  ['/circuits/00/amps', 20],
  ['/circuits/-/amps', 20],
  ['/nothing', 1],
  ['/circuits/0/toString', 1],
  ['/circuits/0/amps', undefined],
])('there is nothing to set at %s', (path, value) => {
  expect(fault({ edit: 'set value', path, value })).toMatchObject({ type: 'no-such-place', path });
});

test('an amendment can be added and taken away; a key of a prototype cannot', () => {
  const added = after({ edit: 'set value', path: '/code/amendments/spliceCan', value: 'yes' });
  expect(added.code.amendments).toEqual({ spliceCan: 'yes' });
  const removed = after({ edit: 'remove record', list: '/code/amendments', id: 'spliceCan' }, added);
  expect(removed.code.amendments).toEqual({});
  expect(fault({ edit: 'set value', path: '/code/amendments/__proto__', value: 'yes' })).toMatchObject({
    type: 'forbidden-key',
  });
  expect(fault({ edit: 'remove record', list: '/survey', id: 'by' })).toMatchObject({ type: 'no-such-place' });
});

test('setting a value to what it already is gives the same job', () => {
  expect(after({ edit: 'set value', path: '/notes', value: job.notes })).toBe(job);
  expect(after({ edit: 'move wall', wall: 'west', by: [0, 0] })).toBe(job);
});

test('a record is added at the end or before another, and the others stay the same objects', () => {
  const record = { ...job.circuits[5]!, id: 'c-25', number: '30' };
  expect(after({ edit: 'add record', list: '/circuits', record, before: null }).circuits.at(-1)!.id).toBe('c-25');
  const first = after({ edit: 'add record', list: '/circuits', record, before: 'c-01' });
  expect(first.circuits[0]!.id).toBe('c-25');
  expect(first.circuits[7]).toBe(job.circuits[6]);
  expect(fault({ edit: 'add record', list: '/circuits', record: job.circuits[5]!, before: null })).toMatchObject({
    type: 'duplicate-id',
    path: '/circuits/24/id',
  });
  expect(fault({ edit: 'add record', list: '/circuits', record: 5, before: null })).toMatchObject({
    type: 'wrong-type',
  });
  expect(fault({ edit: 'add record', list: '/circuits', record, before: 'c-99' })).toMatchObject({
    type: 'no-such-place',
  });
  expect(fault({ edit: 'add record', list: '/notes', record, before: null })).toMatchObject({ type: 'no-such-place' });
});

test('a removed circuit is forgotten by its cable and its partner', () => {
  const now = after({ edit: 'remove record', list: '/circuits', id: 'c-01' });
  expect(now.homeRuns.find((h) => h.id === 'h-01-02')!.circuits).toEqual(['c-02']);
  expect(now.circuits.find((c) => c.id === 'c-02')!.partner).toBeNull();
});

test('a removed cable, obstacle, panel or photo is forgotten by what only names it', () => {
  const pinned = [
    { id: 'p1', pin: 'way', homeRun: 'h-15', way: 'cut-in' },
    { id: 'p2', pin: 'row', homeRuns: ['h-15', 'h-17'] },
    { id: 'p3', pin: 'row', homeRuns: ['h-15'] },
  ];
  const withPins = after({ edit: 'set value', path: '/options/1/pins', value: pinned });
  const now = after({ edit: 'remove record', list: '/homeRuns', id: 'h-15' }, withPins);
  expect(now.options[1]!.pins).toEqual([{ id: 'p2', pin: 'row', homeRuns: ['h-17'] }]);
  expect(after({ edit: 'remove record', list: '/site/obstacles', id: 'washer' }).options[0]!.moves).toEqual([]);
});

test('what other records cannot do without is not removed', () => {
  expect(fault({ edit: 'remove record', list: '/cableGroups', id: 'g-east' })).toMatchObject({
    type: 'no-such-record',
    path: '/homeRuns/0/group',
  });
  expect(fault({ edit: 'remove record', list: '/site/partitions', id: 'new-wall' })).toMatchObject({
    type: 'no-such-record',
    path: '/site/openings/0/on/wall',
  });
  expect(fault({ edit: 'remove record', list: '/enclosures', id: 'old-1' })).toMatchObject({
    type: 'no-such-record',
    path: '/cableGroups/0/enclosure',
  });
  expect(fault({ edit: 'remove record', list: '/circuits', id: 'c-99' })).toMatchObject({ type: 'no-such-place' });
});

test('a panel moves to another wall, but not off it', () => {
  const on = { wall: 'south-laundry', face: 'front', left: 20, bottom: 36 } as const;
  const now = after({ edit: 'move panel', option: 'relocate-a', on });
  expect(now.options[1]!.enclosure.on).toEqual(on);
  expect(now.enclosures).toBe(job.enclosures);
  expect(fault({ edit: 'move panel', option: 'relocate-a', on: { ...on, left: 170 } })).toMatchObject({
    type: 'beyond-wall',
    path: '/options/1/enclosure/on/left',
  });
  expect(fault({ edit: 'move panel', option: 'nobody', on })).toMatchObject({ type: 'no-such-record' });
});

test('options are added, copied and renamed', () => {
  const copied = after({ edit: 'copy option', option: 'relocate-a', id: 'relocate-c', panel: 'new-c', title: 'C' });
  expect(copied.options.at(-1)).toEqual({
    ...job.options[1]!,
    id: 'relocate-c',
    title: 'C',
    enclosure: { ...job.options[1]!.enclosure, id: 'new-c' },
  });
  expect(after({ edit: 'rename', option: 'relocate-c', title: 'D' }, copied).options.at(-1)!.title).toBe('D');
  expect(after({ edit: 'rename', option: null, title: 'House' }).title).toBe('House');
  expect(fault({ edit: 'add option', option: job.options[0]! })).toMatchObject({
    type: 'duplicate-id',
    path: '/options/3/id',
  });
});

test('the names of edits say what was done', () => {
  expect(editName({ edit: 'set value', path: '/circuits/3/amps', value: 20 })).toBe('Change breaker rating');
  expect(editName({ edit: 'move wall', wall: 'west', by: [1, 0] })).toBe('Move wall west');
});
