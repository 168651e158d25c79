import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { hear } from '../../../src/app/lastWords';
import type { Keeping, KeptJob, Shelf } from '../../../src/storage/shelf';

const entry: KeptJob = {
  key: 'k',
  job: 'j',
  title: 'before',
  keptAt: '2026-01-01T10:00:00Z',
  version: 3,
  text: 'before',
  find: 'before',
  place: 'jobs',
  pictures: [{ id: 'p', data: 'x' }],
};
const shelfOf = (there: KeptJob | undefined) => {
  const kept: Keeping[] = [];
  const shelf: Pick<Shelf, 'read' | 'keep'> = {
    read: async () => there,
    keep: async (e) => {
      kept.push(e);
      return { kept: true, version: e.version + 1 };
    },
  };
  return { shelf, kept };
};
const said = (words: object): void => localStorage.setItem('last-words k', JSON.stringify(words));
const words = { keptAt: entry.keptAt, title: 'after', text: 'after' };

beforeEach(() => {
  const there = new Map<string, string>();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => there.get(key) ?? null,
    setItem: (key: string, value: string) => void there.set(key, value),
    removeItem: (key: string) => void there.delete(key),
  });
});
afterEach(() => vi.unstubAllGlobals());

test('what was said last goes into its entry, once', async () => {
  said(words);
  const { shelf, kept } = shelfOf(entry);
  await hear('k', shelf, () => 'new');
  await hear('k', shelf, () => 'new');
  expect(kept).toEqual([{ ...entry, title: 'after', text: 'after', pictures: [] }]);
});

test('where another tab has written since, it becomes an entry of its own', async () => {
  said(words);
  const { shelf, kept } = shelfOf({ ...entry, keptAt: '2026-01-01T10:05:00Z', text: 'theirs' });
  await hear('k', shelf, () => 'new');
  expect(kept).toMatchObject([{ key: 'new', version: 0, text: 'after', pictures: entry.pictures }]);
});

test('nothing said, the same said, or an entry removed meanwhile: nothing is written', async () => {
  const { shelf, kept } = shelfOf(entry);
  await hear('k', shelf, () => 'new');
  said({ ...words, text: 'before' });
  await hear('k', shelf, () => 'new');
  expect(kept).toEqual([]);
  said(words);
  const gone = shelfOf(undefined);
  await hear('k', gone.shelf, () => 'new');
  expect(gone.kept).toEqual([]);
});
