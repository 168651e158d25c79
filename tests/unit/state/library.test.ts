import { beforeEach, expect, test } from 'vitest';
import { openJob } from '../../../src/job/parse';
import type { Job } from '../../../src/job/schema';
import { createJobStore, type JobStore } from '../../../src/state/jobStore';
import { demoText, testPorts } from './support';

let t: ReturnType<typeof testPorts>;
let store: JobStore;
beforeEach(async () => {
  t = testPorts();
  store = createJobStore(t.ports);
  await store.actions.openText(demoText('small-house'), 'small-house.job.json');
  await t.runTimers(store);
});
const rename = (title: string) => store.actions.edit({ edit: 'rename', option: null, title });
const now = (): Job => store.getState().history!.now;
const PHOTO = { id: 'p1', pinnedTo: 'x', takenOn: '', type: 'image/jpeg', widthPx: 1, heightPx: 1, data: 'AAAA' };
const addPhoto = () => store.actions.edit({ edit: 'add record', list: '/photos', record: PHOTO, before: null });

test('pictures are kept apart from the text, once, and are there again when the job is opened', async () => {
  addPhoto();
  await t.runTimers(store);
  rename('and another change');
  await t.runTimers(store);
  const entry = t.entries.get('key 1')!;
  expect(entry.text).not.toContain('AAAA');
  expect(entry.pictures).toEqual([{ id: 'p1', data: 'AAAA' }]);
  const later = createJobStore(t.otherTab());
  await later.actions.openKept('key 1');
  expect(later.getState().history?.now.photos[0]?.data).toBe('AAAA');
  expect(later.actions.fileText()).toContain('AAAA');
  expect(later.actions.fileText(false)).not.toContain('AAAA');
});

test('the planner is asked without pictures', () => {
  addPhoto();
  expect(t.asked.at(-1)!.request.job.photos[0]!.data).toBeNull();
});

test('a duplicate is a job of its own with the same pictures', async () => {
  addPhoto();
  await store.actions.duplicateKept('key 1');
  expect(t.entries.size).toBe(2);
  const copy = [...t.entries.values()].find((e) => e.key !== 'key 1')!;
  const opened = openJob(copy.text);
  expect(opened.ok && opened.value.job.title).toBe(`Copy of ${now().title}`);
  expect(opened.ok && opened.value.job.id).not.toBe(now().id);
  expect(opened.ok && { ...opened.value.job, id: now().id, title: now().title }).toEqual({
    ...now(),
    photos: [{ ...PHOTO, data: null }],
  });
  expect(copy.pictures).toHaveLength(1);
});

test('a job goes to the bin and back; the open one does not', async () => {
  await store.actions.duplicateKept('key 1');
  const copy = [...t.entries.keys()].find((key) => key !== 'key 1')!;
  await store.actions.placeKept(copy, 'bin');
  await store.actions.placeKept('key 1', 'bin');
  const places = () => Object.fromEntries(store.getState().kept.map((k) => [k.key, k.place]));
  expect(places()).toEqual({ 'key 1': 'jobs', [copy]: 'bin' });
  await store.actions.placeKept(copy, 'jobs');
  expect(places()[copy]).toBe('jobs');
});

test('the state a job was opened in can be gone back to, and that undone', async () => {
  const later = createJobStore(t.otherTab());
  store = later;
  await later.actions.openKept('key 1');
  const opened = now().title;
  rename('something else');
  await t.runTimers(store);
  await store.actions.refreshVersions();
  const { versions } = store.getState();
  expect(versions.map((v) => v.name)).toEqual([null]);
  await store.actions.restoreVersion(versions[0]!.at);
  expect(now().title).toBe(opened);
  store.actions.undo();
  expect(now().title).toBe('something else');
});

test('a version under a name, with a photo removed since', async () => {
  addPhoto();
  await store.actions.nameVersion('before the inspector came');
  store.actions.edit({ edit: 'remove record', list: '/photos', id: 'p1' });
  await t.runTimers(store);
  expect(now().photos).toEqual([]);
  const { at } = store.getState().versions.find((v) => v.name === 'before the inspector came')!;
  await store.actions.restoreVersion(at);
  expect(now().photos[0]?.data).toBe('AAAA');
  expect(store.getState().history?.past.at(-1)?.name).toBe('go back to “before the inspector came”');
});

test('while one works a version is put by every ten minutes, not at every change', async () => {
  rename('a');
  await t.runTimers(store);
  rename('b');
  await t.runTimers(store);
  expect(t.versions.get('key 1') ?? []).toHaveLength(0); // a new job: nothing older to go back to
  t.time.now = '2026-11-25T10:10:01.000Z';
  rename('c');
  await t.runTimers(store);
  rename('d');
  await t.runTimers(store);
  expect(t.versions.get('key 1')).toHaveLength(1);
});

test('what the browser clears away under an open job is kept anew, and that is said', async () => {
  addPhoto();
  await t.runTimers(store);
  t.shelfState.clear();
  await store.actions.keepNow();
  expect(t.entries.get('key 1')).toMatchObject({ version: 1, pictures: [{ id: 'p1' }] });
  expect(store.getState()).toMatchObject({ cleared: true, keeping: { phase: 'kept' } });
});

test('an error report gets kinds of edits that hold nothing a person typed', () => {
  rename('Secret Name');
  store.actions.edit({ edit: 'set value', path: '/people/customer/Secret Name', value: 'Secret Name' });
  const kinds = store.getState().history!.past.map((s) => s.kind);
  expect(kinds[0]).toBe('rename');
  expect(JSON.stringify(kinds)).not.toContain('Secret');
});
