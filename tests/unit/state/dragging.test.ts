import { beforeEach, expect, test } from 'vitest';
import type { Plan } from '../../../src/facts/result';
import type { Job, OnWall } from '../../../src/job/schema';
import { createJobStore, type JobStore } from '../../../src/state/jobStore';
import { demoText, testPorts } from './support';

interface Question {
  readonly left: number;
  readonly answer: () => Promise<void>;
  readonly fail: () => Promise<void>;
}
let t: ReturnType<typeof testPorts>;
let store: JobStore;
let questions: Question[];
const settled = () => new Promise<void>((resolve) => setTimeout(resolve, 0));

beforeEach(async () => {
  t = testPorts();
  questions = [];
  const live = {
    plan: (job: Job, option: string) =>
      new Promise<Plan>((resolve, reject) => {
        const { left } = job.options.find((o) => o.id === option)!.enclosure.on;
        questions.push({
          left,
          answer: () => {
            resolve({ option, grade: 'live', boxes: [left] } as unknown as Plan);
            return settled();
          },
          fail: () => {
            reject(new Error('the worker died'));
            return settled();
          },
        });
      }),
  };
  store = createJobStore({ ...t.ports, live });
  await store.actions.openText(demoText('washer'), 'washer.job.json');
});
const s = () => store.getState();
const OPTION = 'relocate-a';
const placeOf = (): OnWall => s().history!.now.options.find((o) => o.id === OPTION)!.enclosure.on;
const dragTo = (left: number): void => store.actions.drag(OPTION, { ...placeOf(), left });

test('one question at a time; those passed over are not asked, the latest place is', async () => {
  dragTo(80);
  dragTo(81);
  dragTo(90);
  expect(questions.map((q) => q.left)).toEqual([80]);
  await questions[0]!.answer();
  expect(s().live?.plan?.boxes).toEqual([80]);
  expect(questions.map((q) => q.left)).toEqual([80, 90]);
  await questions[1]!.answer();
  expect(s().live).toMatchObject({ on: { left: 90 }, planned: { left: 90 } });
  expect(questions).toHaveLength(2);
});

test('nothing changes in the job until it is let go; then it is one edit, and the live plan stays until the final one', async () => {
  dragTo(80);
  dragTo(90);
  await questions[0]!.answer();
  expect(placeOf().left).toBe(76);
  expect(s().history?.past).toHaveLength(0);
  store.actions.drop();
  expect(placeOf().left).toBe(90);
  expect(s().history?.past).toHaveLength(1);
  expect(s().live).toMatchObject({ on: { left: 90 }, droppedAt: s().revision });
  store.actions.drop(); // once is enough
  expect(s().history?.past).toHaveLength(1);
  t.asked.at(-1)!.step(2); // in-place, relocate-a
  expect(s().live).toBeNull();
});

test('let go of without a place, it hangs where it hung; an answer that comes late is not taken', async () => {
  dragTo(90);
  store.actions.letGo();
  expect(s().live).toBeNull();
  await questions[0]!.answer();
  expect(s().live).toBeNull();
  expect(placeOf().left).toBe(76);
  expect(s().history?.past).toHaveLength(0);
});

test('a place the job refuses is said, and so is a planner that died; dragging on asks again', async () => {
  store.actions.drag(OPTION, { ...placeOf(), wall: 'nowhere' });
  expect(questions).toHaveLength(0);
  expect(s().live?.say).toMatch(/nowhere/);
  dragTo(90);
  await questions[0]!.fail();
  expect(s().live?.say).toBe('the worker died');
  dragTo(91);
  await questions[1]!.answer();
  expect(s().live).toMatchObject({ say: null, on: { left: 91 } });
});

test('another option or another edit lets go of the panel', async () => {
  dragTo(90);
  store.actions.choose('in-place');
  expect(s().live).toBeNull();
  dragTo(90);
  store.actions.edit({ edit: 'rename', option: OPTION, title: 'Elsewhere' });
  expect(s().live).toBeNull();
});
