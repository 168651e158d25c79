import { beforeEach, expect, test } from 'vitest';
import { openJob } from '../../../src/job/parse';
import { createJobStore, type JobStore } from '../../../src/state/jobStore';
import { demoText, testPorts } from './support';

let t: ReturnType<typeof testPorts>;
let store: JobStore;
beforeEach(() => {
  t = testPorts();
  store = createJobStore(t.ports);
});
const s = () => store.getState();
const leftOf = (id: string): number => s().history!.now.options.find((o) => o.id === id)!.enclosure.on.left;
const move = (left: number): boolean => {
  const { on } = s().history!.now.options.find((o) => o.id === 'relocate-a')!.enclosure;
  return store.actions.edit({ edit: 'move panel', option: 'relocate-a', on: { ...on, left } });
};

test('a job opens with its first option chosen, is kept and planned', async () => {
  expect(await store.actions.openText(demoText('washer'), 'washer.job.json')).toBe(true);
  expect(s().option).toBe('in-place');
  expect(s().planning).toEqual({ phase: 'working', done: 0, of: 4 });
  await t.runTimers(store);
  expect(s().keeping).toMatchObject({ phase: 'kept' });
  expect([...t.entries.values()].map((e) => openJob(e.text).ok)).toEqual([true]);
  expect(t.remembered).toEqual(['key 1']);
});

test('a refused file leaves the open job as it is, and says where it is wrong', async () => {
  await store.actions.openText(demoText('washer'), 'washer.job.json');
  const before = s().history;
  const bad = demoText('small-house').replace('"poles": 1', '"poles": 3');
  expect(await store.actions.openText(bad, 'bad.job.json')).toBe(false);
  expect(s().history).toBe(before);
  expect(s().refusal).toMatchObject({ what: 'bad.job.json', doing: 'opening' });
  expect(s().refusal?.fault.error.path).toMatch(/^\/circuits\/\d+\/poles$/);
});

test('an edit is a named step; undo and redo bring back the very same job, and its plans without asking again', async () => {
  await store.actions.openText(demoText('washer'), 'washer.job.json');
  const [opened] = [s().history!.now];
  await t.asked[0]!.reply('planned');
  expect(move(80)).toBe(true);
  const moved = s().history!.now;
  expect(leftOf('relocate-a')).toBe(80);
  expect(moved.changedOn).toBe('2026-11-25');
  expect(s().history?.past.at(-1)?.name).toContain('Same wall, clear of the washer');
  expect(s().answer?.revision).not.toBe(s().revision); // figures from before the edit, and known to be
  await t.asked[1]!.reply('planned');
  expect(s().answer?.revision).toBe(s().revision);

  store.actions.undo();
  expect(s().history?.now).toBe(opened);
  expect(s().planning.phase).toBe('done');
  expect(s().answer?.revision).toBe(s().revision);
  store.actions.redo();
  expect(s().history?.now).toBe(moved);
  expect(t.asked).toHaveLength(2);
});

test('an edit that cannot be is refused with its place and changes nothing', async () => {
  await store.actions.openText(demoText('washer'), 'washer.job.json');
  const before = s().history;
  expect(move(5000)).toBe(false);
  expect(s().history).toBe(before);
  expect(s().refusal).toMatchObject({ doing: 'editing', fault: { error: { type: 'beyond-wall' } } });
});

test('an edit that changes nothing leaves no step', async () => {
  await store.actions.openText(demoText('washer'), 'washer.job.json');
  expect(move(leftOf('relocate-a'))).toBe(true);
  expect(s().history?.past).toHaveLength(0);
});

test('late answers are dropped, and kept for when undo comes back to their state', async () => {
  await store.actions.openText(demoText('washer'), 'washer.job.json');
  const first = s().revision;
  move(80);
  t.asked[0]!.step(1);
  expect(s().answer).toBeNull(); // a step about the state before the edit
  await t.asked[0]!.reply('planned');
  expect(s().answer).toBeNull();
  t.asked[1]!.step(1);
  expect(s().answer?.plans).toHaveLength(1);
  expect(s().answer?.result).toBeNull();
  store.actions.undo();
  expect(s().answer).toMatchObject({ revision: first });
  expect(s().answer?.result).not.toBeNull();
});

test('plans are shown one by one, and the advice last', async () => {
  await store.actions.openText(demoText('washer'), 'washer.job.json');
  t.asked[0]!.step(1);
  t.asked[0]!.step(2);
  expect(s().answer?.plans.map((p) => p.option)).toEqual(['in-place', 'relocate-a']);
  expect(s().planning).toEqual({ phase: 'working', done: 2, of: 4 });
  await t.asked[0]!.reply('planned');
  expect(s().answer?.plans).toHaveLength(3);
  expect(s().planning.phase).toBe('done');
});

test('a planner that fails says so, keeps the job, and can be asked again', async () => {
  await store.actions.openText(demoText('washer'), 'washer.job.json');
  await t.asked[0]!.reply('failed');
  expect(s().planning).toEqual({ phase: 'failed', say: 'a bug' });
  expect(s().history).not.toBeNull();
  store.actions.planAgain();
  await t.asked[1]!.reply('planned');
  expect(s().planning.phase).toBe('done');
});
