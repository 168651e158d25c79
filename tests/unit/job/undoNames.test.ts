import { expect, test } from 'vitest';
import { blankJob } from '../../../src/job/blankJob';
import { editName } from '../../../src/job/edit';
import { DEMOS, demoJob } from '../../support/demos';

/** Every place of a value, objects and lists included. */
const places = (value: unknown, at = ''): string[] =>
  typeof value !== 'object' || value === null
    ? [at]
    : [at, ...Object.entries(value).flatMap(([key, v]) => places(v, `${at}/${key}`))].filter((p) => p !== '');

test('no undo name holds a key as the file writes it, whatever field an edit sets', () => {
  const all = new Set([...DEMOS.map(demoJob), blankJob({ id: 'j', on: '2026-01-01' })].flatMap((job) => places(job)));
  expect(all.size).toBeGreaterThan(500);
  for (const path of all)
    for (const name of [
      editName({ edit: 'set value', path, value: null }),
      editName({ edit: 'set field', list: '/site/areas', id: 'x', field: path, value: null }),
      editName({ edit: 'add record', list: path, record: null, before: null }),
      editName({ edit: 'remove record', list: path, id: 'x' }),
    ])
      expect(name).not.toMatch(/[a-z][A-Z]|\/|undefined/);
});

test.each([
  ['/feeder/wholeDwelling', 'Change whether the whole dwelling hangs on it'],
  ['/feeder/from/lugs', 'Change terminal rating'],
  ['/house/smallApplianceCircuits', 'Change small-appliance circuits'],
  ['/site/outline/0/face/now/build', 'Change what it is built of'],
])('%s: %s', (path, name) => {
  expect(editName({ edit: 'set value', path, value: 'unknown' })).toBe(name);
});
