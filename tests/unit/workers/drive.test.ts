import { expect, test } from 'vitest';
import type { Plan, Result } from '../../../src/facts/result';
import type { PlanProgress } from '../../../src/plan/planJob';
import { drive } from '../../../src/workers/drive';
import type { PlanStep } from '../../../src/workers/planner';

const RESULT = { engine: 'test' } as Result;
const PLAN = { option: 'a' } as Plan;
function* steps(throwAt = -1): Generator<PlanProgress, Result> {
  for (let done = 1; done <= 3; done++) {
    if (done === throwAt) throw new Error('a bug');
    yield { done, of: 4, plan: PLAN };
  }
  return RESULT;
}
const ports = (stopAfter = Number.POSITIVE_INFINITY) => {
  const seen: PlanStep[] = [];
  let paused = 0;
  return {
    seen,
    pauses: () => paused,
    isStale: () => seen.length >= stopAfter,
    onStep: (s: PlanStep) => seen.push(s),
    pause: async () => {
      paused++;
    },
  };
};

test('every step is told with its revision, messages are let in between, the result comes last', async () => {
  const p = ports();
  expect(await drive(7, steps(), p)).toEqual({ revision: 7, kind: 'planned', result: RESULT });
  expect(p.seen.map((s) => [s.revision, s.done, s.of])).toEqual([
    [7, 1, 4],
    [7, 2, 4],
    [7, 3, 4],
  ]);
  expect(p.pauses()).toBe(3);
});

test('a stale question is dropped at the next step', async () => {
  const p = ports(2);
  expect(await drive(7, steps(), p)).toEqual({ revision: 7, kind: 'dropped' });
  expect(p.seen).toHaveLength(2);
});

test('a bug is answered in words, at whatever step it happens', async () => {
  for (const at of [1, 3])
    expect(await drive(7, steps(at), ports())).toEqual({ revision: 7, kind: 'failed', say: 'a bug' });
});
