import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { expect, test } from 'vitest';
import { idbShelf } from '../../../src/storage/idbShelf';
import type { KeptJob } from '../../../src/storage/shelf';

const entry = (key: string, version: number, text: string, keptAt = '2026-01-01T00:00:00Z'): KeptJob => ({
  key,
  job: `job ${key}`,
  title: `title ${key}`,
  find: `title ${key}`,
  place: 'jobs',
  pictures: [],
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
  expect(list.every((k) => !('text' in k) && !('pictures' in k))).toBe(true);
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

test('what version 1 of the database kept is all there in this one', async () => {
  const name = `test ${++count}`;
  const old = await openDB(name, 1, { upgrade: (db) => void db.createObjectStore('jobs', { keyPath: 'key' }) });
  for (const key of ['a', 'b']) {
    const { find: _f, place: _p, pictures: _i, ...first } = entry(key, 3, `text of ${key}`);
    await old.put('jobs', first);
  }
  old.close();
  const shelf = idbShelf(name);
  expect((await shelf.list()).map((k) => k.key)).toEqual(['a', 'b']);
  expect(await shelf.read('b')).toEqual(entry('b', 3, 'text of b'));
  expect(await shelf.keep(entry('b', 3, 'next'))).toEqual({ kept: true, version: 4 });
});

test('archive and bin move an entry, and neither counts as a change of the job', async () => {
  const shelf = shelfOf();
  await shelf.keep(entry('a', 0, 'one'));
  for (const place of ['archive', 'bin'] as const) {
    await shelf.place('a', place);
    expect((await shelf.list())[0]).toMatchObject({ place, version: 1 });
  }
  expect(await shelf.keep(entry('a', 1, 'two'))).toEqual({ kept: true, version: 2 });
  expect(await shelf.read('a')).toMatchObject({ place: 'bin', text: 'two' });
});

test('pictures are added to an entry one by one and go with it', async () => {
  const shelf = shelfOf();
  const photo = (id: string) => ({ id, data: `data of ${id}` });
  await shelf.keep({ ...entry('a', 0, 'one'), pictures: [photo('p'), photo('q')] });
  await shelf.keep({ ...entry('a', 1, 'two'), pictures: [photo('r')] });
  await shelf.keep({ ...entry('ab', 0, 'another'), pictures: [photo('x')] });
  expect((await shelf.read('a'))?.pictures).toEqual(['p', 'q', 'r'].map(photo));
  await shelf.remove('a');
  expect(await shelf.read('a')).toBeUndefined();
  await shelf.keep(entry('a', 0, 'again'));
  expect((await shelf.read('a'))?.pictures).toEqual([]);
  expect((await shelf.read('ab'))?.pictures).toEqual([photo('x')]);
});

test('of versions made by the program the latest ten stay, of named ones all', async () => {
  const shelf = shelfOf();
  const at = (n: number) => `2026-01-01T10:${String(n).padStart(2, '0')}:00Z`;
  await shelf.addVersion('a', { at: at(0), name: 'before finishing', text: 'v0' });
  for (let n = 1; n <= 14; n++) await shelf.addVersion('a', { at: at(n), name: null, text: `v${n}` });
  await shelf.addVersion('b', { at: at(0), name: null, text: 'of b' });
  const list = await shelf.versions('a');
  expect(list.map((v) => v.at)).toEqual([...Array.from({ length: 10 }, (_, i) => at(14 - i)), at(0)]);
  expect(await shelf.version('a', at(14))).toEqual({ at: at(14), name: null, text: 'v14' });
  expect(await shelf.version('a', at(1))).toBeUndefined();
});

test('a newer version of the program that takes the database over is told as that', async () => {
  const shelf = shelfOf();
  await shelf.keep(entry('a', 0, 'one'));
  const newer = await openDB(`test ${count}`, 3); // waits until the shelf lets go, which it does
  await expect(shelf.keep(entry('a', 1, 'two'))).rejects.toMatchObject({ kind: 'newer' });
  newer.close();
});

test('an older version of the program that holds on is told as that, and tried again', async () => {
  const name = `test ${++count}`;
  const old = await openDB(name, 1, { upgrade: (db) => void db.createObjectStore('jobs', { keyPath: 'key' }) });
  const shelf = idbShelf(name);
  await expect(shelf.list()).rejects.toMatchObject({ kind: 'blocked' });
  await expect(shelf.keep(entry('a', 0, 'one'))).rejects.toMatchObject({ kind: 'blocked' });
  old.close();
  await new Promise((resolve) => setTimeout(resolve, 10));
  await expect(shelf.list()).resolves.toEqual([]);
});

test('a database deleted under it is told, and can be written to anew', async () => {
  const shelf = shelfOf();
  await shelf.keep(entry('a', 0, 'one'));
  let told = 0;
  shelf.onGone(() => told++);
  await new Promise((resolve, reject) => {
    const request = indexedDB.deleteDatabase(`test ${count}`);
    request.onsuccess = resolve;
    request.onerror = reject;
  });
  expect(told).toBe(1);
  expect(await shelf.keep(entry('a', 1, 'two'))).toEqual({ kept: false, version: 0 });
  expect(await shelf.keep(entry('a', 0, 'two'))).toEqual({ kept: true, version: 1 });
});
