import { beforeEach, expect, test } from 'vitest';
import { openJob } from '../../../src/job/parse';
import { createJobStore, type JobStore } from '../../../src/state/jobStore';
import { demoText, testPorts } from './support';

let t: ReturnType<typeof testPorts>;
let store: JobStore;
beforeEach(async () => {
  t = testPorts();
  store = createJobStore(t.ports);
  await store.actions.openText(demoText('washer'), 'washer.job.json');
  await t.runTimers(store);
});
const keptLeft = (key: string): number => {
  const opened = openJob(t.entries.get(key)!.text);
  return opened.ok ? opened.value.job.options.find((o) => o.id === 'relocate-a')!.enclosure.on.left : Number.NaN;
};
const move = (to: JobStore, left: number): void => {
  const { on } = to.getState().history!.now.options.find((o) => o.id === 'relocate-a')!.enclosure;
  to.actions.edit({ edit: 'move panel', option: 'relocate-a', on: { ...on, left } });
};

test('several edits at once are kept once, undo is kept too', async () => {
  move(store, 80);
  move(store, 90);
  expect(store.getState().keeping.phase).toBe('waiting');
  expect(t.timers.size).toBe(1);
  await t.runTimers(store);
  expect(keptLeft('key 1')).toBe(90);
  expect(t.entries.get('key 1')?.version).toBe(2);
  store.actions.undo();
  await t.runTimers(store);
  expect(keptLeft('key 1')).toBe(80);
});

test('a kept job opens again as it was left, under its own entry', async () => {
  move(store, 80);
  await t.runTimers(store);
  const later = createJobStore(t.ports);
  expect(await later.actions.openKept('key 1')).toBe(true);
  expect(later.getState().history?.now.options.find((o) => o.id === 'relocate-a')?.enclosure.on.left).toBe(80);
  expect(later.getState().keeping).toMatchObject({ phase: 'kept' });
  move(later, 85);
  await t.runTimers(later);
  expect(keptLeft('key 1')).toBe(85);
  expect(t.entries.size).toBe(1);
});

test('two tabs that both hold one job, without locks: the one that comes second goes on under its own entry', async () => {
  const other = createJobStore(t.otherTab());
  await other.actions.openKept('key 1');
  move(other, 100);
  await t.runTimers(other);
  move(store, 80);
  await t.runTimers(store);
  expect(keptLeft('key 1')).toBe(100);
  expect(store.getState().parted).toBe(true);
  expect(keptLeft('key 2')).toBe(80);
  move(store, 82);
  await t.runTimers(store);
  expect(keptLeft('key 2')).toBe(82);
  expect(t.entries.size).toBe(2);
});

test('opening another job first keeps what waits of this one', async () => {
  move(store, 80);
  await store.actions.openText(demoText('small-house'), 'small-house.job.json');
  expect(keptLeft('key 1')).toBe(80);
  await t.runTimers(store);
  expect(t.entries.get('key 2')?.job).toBe('demo-small-house');
});

test('a browser that refuses says so, and what waited is kept when it no longer does', async () => {
  t.shelfState.broken = true;
  move(store, 80);
  await t.runTimers(store);
  expect(store.getState().keeping).toEqual({ phase: 'failed', why: 'full', say: 'quota exceeded' });
  t.shelfState.broken = false;
  await store.actions.keepNow();
  expect(store.getState().keeping.phase).toBe('kept');
  expect(keptLeft('key 1')).toBe(80);
});

test('a job that is kept nowhere is not given up for another, until it is on disk', async () => {
  t.shelfState.broken = true;
  move(store, 80);
  expect(await store.actions.openText(demoText('small-house'), 'small-house.job.json')).toBe(false);
  expect(store.getState().history?.now.id).toBe('demo-washer');
  expect(store.actions.fileText()).toContain('demo-washer');
  expect(await store.actions.openText(demoText('small-house'), 'small-house.job.json')).toBe(true);
  expect(store.getState().history?.now.id).toBe('demo-small-house');
});

test('a kept job that cannot be read is a refusal', async () => {
  t.shelfState.broken = true;
  expect(await store.actions.openKept('another')).toBe(false);
  expect(store.getState().refusal?.fault.error.say).toBe('quota exceeded');
});

test('the open job asked for again stays as it is, with what waits to be kept', async () => {
  move(store, 80);
  expect(await store.actions.openKept('key 1')).toBe(true);
  await t.runTimers(store);
  expect(keptLeft('key 1')).toBe(80);
  expect(store.getState().parted).toBe(false);
});

test('a job that is no longer kept is a refusal, not an empty sheet', async () => {
  expect(await store.actions.openKept('gone')).toBe(false);
  expect(store.getState().refusal?.fault.error.type).toBe('not-kept');
  expect(store.getState().history?.now.id).toBe('demo-washer');
});

test('the entry that is open cannot be removed under it; another can', async () => {
  await store.actions.openText(demoText('small-house'), 'small-house.job.json');
  await t.runTimers(store);
  await store.actions.removeKept('key 2');
  await store.actions.removeKept('key 1');
  expect([...t.entries.keys()]).toEqual(['key 2']);
});

test('changes without a rest are kept all the same, the first of them after the usual wait', async () => {
  let due: (() => void) | null = null;
  const asked: number[] = [];
  const ports = {
    ...t.ports,
    later: (run: () => void, ms: number) => {
      asked.push(ms);
      due = run;
      return () => undefined;
    },
  };
  const busy = createJobStore(ports);
  await busy.actions.openKept('key 1');
  asked.length = 0;
  for (let left = 60; left < 70; left++) move(busy, left);
  expect(asked).toHaveLength(1); // ten changes put the first wait off by nothing
  expect(asked[0]).toBe(0); // after a rest: at once
  due!();
  await busy.actions.keepNow();
  expect(keptLeft('key 1')).toBe(69);
  move(busy, 75);
  expect(asked[1]).toBeGreaterThan(0);
  expect(asked[1]).toBeLessThan(1000);
});
