import { beforeEach, expect, test } from 'vitest';
import { openJob } from '../../../src/job/parse';
import { createJobStore, type JobStore } from '../../../src/state/jobStore';
import { demoText, testPorts } from './support';

/** Two tabs of one browser on one kept job: `first` holds it, `second` looks on. */
let t: ReturnType<typeof testPorts>;
let first: JobStore;
let second: JobStore;
beforeEach(async () => {
  t = testPorts();
  first = createJobStore(t.ports);
  await first.actions.openText(demoText('small-house'), 'small-house.job.json');
  await t.runTimers(first);
  second = createJobStore(t.otherTab());
  await second.actions.openKept('key 1');
  await t.runTimers(second);
});
const settled = () => new Promise((resolve) => setTimeout(resolve, 5));
const rename = (store: JobStore, title: string) => store.actions.edit({ edit: 'rename', option: null, title });
const titleOf = (store: JobStore) => store.getState().history?.now.title;
const keptTitle = (key: string) => {
  const opened = openJob(t.entries.get(key)!.text);
  return opened.ok && opened.value.job.title;
};

test('the second tab is told, the first is not', () => {
  expect(first.getState().elsewhere).toBe(false);
  expect(second.getState().elsewhere).toBe(true);
});

test('the tab that looks on follows what is kept in the other', async () => {
  rename(first, 'changed in the first');
  await t.runTimers(first);
  await settled();
  expect(titleOf(second)).toBe('changed in the first');
  expect(second.getState()).toMatchObject({ elsewhere: true, parted: false });
});

test('a change made where one only looks on becomes a job of its own, and the other one stays as it is', async () => {
  rename(second, 'changed in the second');
  rename(first, 'changed in the first');
  await t.runTimers(second);
  await t.runTimers(first);
  await settled();
  expect(keptTitle('key 1')).toBe('changed in the first');
  expect(keptTitle(second.getState().openKey!)).toBe('changed in the second');
  expect(second.getState()).toMatchObject({ elsewhere: false, parted: true });
  expect(first.getState().parted).toBe(false);
  expect(t.entries.size).toBe(2);
});

test('when the first tab goes on to another job, the second holds it and writes to it', async () => {
  rename(first, 'changed in the first');
  await first.actions.openText(demoText('small-house'), 'small-house.job.json');
  await settled();
  expect(second.getState().elsewhere).toBe(false);
  expect(titleOf(second)).toBe('changed in the first');
  rename(second, 'now by the second');
  await t.runTimers(second);
  expect(keptTitle('key 1')).toBe('now by the second');
  expect(second.getState().parted).toBe(false);
});
