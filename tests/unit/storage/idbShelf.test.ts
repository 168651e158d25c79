import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import { idbShelf } from '../../../src/storage/idbShelf';
import type { KeptJob } from '../../../src/storage/shelf';

const entry = (key: string, version: number, text: string, keptAt = '2026-01-01T00:00:00Z'): KeptJob => ({
  key,
  job: `job ${key}`,
  title: `title ${key}`,
  keptAt,
  version,
  text,
});
let count = 0;
const shelfOf = () => idbShelf(`test ${++count}`);

test('what is kept is read back, also by a shelf opened later', async () => {
  const shelf = shelfOf();
  expect(await shelf.keep(entry('a', 0, 'one'))).toEqual({ kept: true, version: 1 });
  expect(await shelf.keep(entry('a', 1, 'two'))).toEqual({ kept: true, version: 2 });
  const later = idbShelf(`test ${count}`);
  expect(await later.read('a')).toEqual(entry('a', 2, 'two'));
  expect(await later.read('b')).toBeUndefined();
});

test('an entry another tab kept meanwhile is not overwritten', async () => {
  const shelf = shelfOf();
  await shelf.keep(entry('a', 0, 'one'));
  const tab1 = shelf.keep(entry('a', 1, 'from tab 1'));
  const tab2 = idbShelf(`test ${count}`).keep(entry('a', 1, 'from tab 2'));
  const answers = await Promise.all([tab1, tab2]);
  expect(answers.filter((a) => a.kept)).toHaveLength(1);
  const winner = answers[0]!.kept ? 'from tab 1' : 'from tab 2';
  expect((await shelf.read('a'))?.text).toBe(winner);
  expect(answers.find((a) => !a.kept)).toEqual({ kept: false, version: 2 });
});

test('a second entry may not take a key that is taken', async () => {
  const shelf = shelfOf();
  await shelf.keep(entry('a', 0, 'one'));
  expect(await shelf.keep(entry('a', 0, 'another'))).toEqual({ kept: false, version: 1 });
});

test('the list is latest first and carries no texts; what is removed is gone', async () => {
  const shelf = shelfOf();
  await shelf.keep(entry('old', 0, 'x', '2026-01-01T00:00:00Z'));
  await shelf.keep(entry('new', 0, 'x', '2026-02-01T00:00:00Z'));
  await shelf.keep(entry('same', 0, 'x', '2026-02-01T00:00:00Z'));
  const list = await shelf.list();
  expect(list.map((k) => k.key)).toEqual(['new', 'same', 'old']);
  expect(list.every((k) => !('text' in k))).toBe(true);
  await shelf.remove('new');
  expect((await shelf.list()).map((k) => k.key)).toEqual(['same', 'old']);
});

test('a browser without a database answers with its reason, and is asked again the next time', async () => {
  const real = globalThis.indexedDB;
  const shelf = shelfOf();
  Object.defineProperty(globalThis, 'indexedDB', {
    configurable: true,
    value: {
      open: () => {
        throw new Error('not allowed here');
      },
    },
  });
  await expect(shelf.list()).rejects.toThrow('not allowed here');
  Object.defineProperty(globalThis, 'indexedDB', { configurable: true, value: real });
  await expect(shelf.list()).resolves.toEqual([]);
});
