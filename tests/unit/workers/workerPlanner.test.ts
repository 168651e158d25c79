import { MessageChannel } from 'node:worker_threads';
import { expose } from 'comlink';
import { afterEach, expect, test, vi } from 'vitest';
import type { Plan, Result } from '../../../src/facts/result';
import type { Job } from '../../../src/job/schema';
import type { PlanReply, PlanRequest, PlanStep } from '../../../src/workers/planner';
import { workerPlanner } from '../../../src/workers/workerPlanner';

const JOB = {} as Job;
const resultFor = (revision: number): Result => ({ engine: `r${revision}` }) as Result;

/** A worker's two ends as a message channel; what it does is up to the test. */
const fakeWorkers = (
  plan: (worker: number, request: PlanRequest, onStep: (s: PlanStep) => void) => Promise<PlanReply>,
) => {
  const workers: { worker: EventTarget & { terminated: boolean }; superseded: number[] }[] = [];
  const start = (): Worker => {
    const { port1, port2 } = new MessageChannel();
    const index = workers.length;
    const superseded: number[] = [];
    expose(
      {
        supersede: (serial: number) => void superseded.push(serial),
        plan: (_serial: number, request: PlanRequest, onStep: (s: PlanStep) => void) => plan(index, request, onStep),
      },
      port2 as unknown as Parameters<typeof expose>[1],
    );
    const own = new EventTarget();
    const worker = Object.assign(own, {
      terminated: false,
      postMessage: (data: unknown, moved: never[]) => port1.postMessage(data, moved),
      start: () => port1.start(),
      terminate() {
        worker.terminated = true;
        port1.close();
        port2.close();
      },
    });
    port1.on('message', (data: unknown) => own.dispatchEvent(Object.assign(new Event('message'), { data })));
    workers.push({ worker, superseded });
    return worker as unknown as Worker;
  };
  open.push(() => {
    for (const { worker } of workers) if (!worker.terminated) (worker as unknown as Worker).terminate();
  });
  return { workers, start };
};
const open: (() => void)[] = [];
afterEach(() => {
  for (const close of open.splice(0)) close();
});

const never = () => new Promise<PlanReply>(() => undefined);

test('one worker answers question after question, with steps', async () => {
  const { workers, start } = fakeWorkers(async (_w, { revision }, onStep) => {
    await onStep({ revision, done: 1, of: 2, plan: {} as Plan });
    return { revision, kind: 'planned', result: resultFor(revision) };
  });
  const planner = workerPlanner(start);
  const seen: PlanStep[] = [];
  for (const revision of [1, 2])
    expect(await planner.plan({ revision, job: JOB }, (s) => seen.push(s))).toEqual({
      revision,
      kind: 'planned',
      result: resultFor(revision),
    });
  expect(seen.map((s) => s.revision)).toEqual([1, 2]);
  expect(workers).toHaveLength(1);
});

test('a later question drops the one before; a worker that does not leave off is ended and replaced', async () => {
  const { workers, start } = fakeWorkers((w, { revision }) =>
    w === 0 ? never() : Promise.resolve({ revision, kind: 'planned', result: resultFor(revision) }),
  );
  const planner = workerPlanner(start);
  const first = planner.plan({ revision: 1, job: JOB }, () => undefined);
  const second = planner.plan({ revision: 2, job: JOB }, () => undefined);
  const third = planner.plan({ revision: 1, job: JOB }, () => undefined); // by undo: an older revision, a later question
  expect(await first).toEqual({ revision: 1, kind: 'dropped' });
  expect(await second).toEqual({ revision: 2, kind: 'dropped' });
  expect(await third).toEqual({ revision: 1, kind: 'planned', result: resultFor(1) });
  expect(workers.map((w) => w.worker.terminated)).toEqual([true, false]);
});

test('a worker that leaves off when asked goes on working', async () => {
  let leave = (_reply: PlanReply): void => undefined;
  const { workers, start } = fakeWorkers((_w, { revision }) =>
    revision === 1
      ? new Promise((resolve) => {
          leave = resolve;
        })
      : Promise.resolve({ revision, kind: 'planned', result: resultFor(revision) }),
  );
  const planner = workerPlanner(start);
  const first = planner.plan({ revision: 1, job: JOB }, () => undefined);
  await new Promise((r) => setTimeout(r, 20));
  const second = planner.plan({ revision: 2, job: JOB }, () => undefined);
  await new Promise((r) => setTimeout(r, 20));
  expect(workers[0]!.superseded).toEqual([2]);
  leave({ revision: 1, kind: 'dropped' });
  expect(await first).toEqual({ revision: 1, kind: 'dropped' });
  expect(await second).toMatchObject({ kind: 'planned' });
  expect(workers).toHaveLength(1);
});

const die = (worker: EventTarget) =>
  worker.dispatchEvent(Object.assign(new Event('error'), { message: 'out of memory' }));

test('a worker that dies is replaced at once and asked the same again', async () => {
  const { workers, start } = fakeWorkers((w, { revision }) =>
    w === 0 ? never() : Promise.resolve({ revision, kind: 'planned', result: resultFor(revision) }),
  );
  const planner = workerPlanner(start);
  const first = planner.plan({ revision: 1, job: JOB }, () => undefined);
  await new Promise((r) => setTimeout(r, 20));
  die(workers[0]!.worker);
  expect(await first).toEqual({ revision: 1, kind: 'planned', result: resultFor(1) });
  expect(workers).toHaveLength(2);
});

test('a question that no worker survives is a failure, and the next one is answered', async () => {
  const { workers, start } = fakeWorkers((w, { revision }) =>
    w < 2 ? never() : Promise.resolve({ revision, kind: 'planned', result: resultFor(revision) }),
  );
  const planner = workerPlanner(start);
  const first = planner.plan({ revision: 1, job: JOB }, () => undefined);
  for (const w of [0, 1]) {
    await new Promise((r) => setTimeout(r, 20));
    die(workers[w]!.worker);
  }
  expect(await first).toEqual({ revision: 1, kind: 'failed', say: 'out of memory' });
  expect(await planner.plan({ revision: 2, job: JOB }, () => undefined)).toMatchObject({ kind: 'planned' });
  expect(workers).toHaveLength(3);
});

test('a worker that hangs is ended after three minutes of silence and replaced; one that takes steps is not', async () => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  const pause = () => new Promise((r) => setImmediate(r));
  let step = async (): Promise<void> => undefined;
  const { workers, start } = fakeWorkers((w, { revision }, onStep) => {
    step = async () => onStep({ revision, done: 1, of: 2, plan: {} as Plan });
    return w === 0 ? never() : Promise.resolve({ revision, kind: 'planned', result: resultFor(revision) });
  });
  const planner = workerPlanner(start);
  const first = planner.plan({ revision: 1, job: JOB }, () => undefined);
  for (let i = 0; i < 5; i++) await pause();
  vi.advanceTimersByTime(170_000);
  await step();
  for (let i = 0; i < 5; i++) await pause();
  vi.advanceTimersByTime(170_000);
  expect(workers[0]!.worker.terminated).toBe(false);
  vi.advanceTimersByTime(11_000);
  expect(workers[0]!.worker.terminated).toBe(true);
  vi.useRealTimers();
  expect(await first).toEqual({ revision: 1, kind: 'planned', result: resultFor(1) });
});
