import type { Result } from '../facts/result';
import type { PlanProgress } from '../plan/planJob';
import type { PlanReply, PlanStep } from './planner';

/**
 * Runs a planning generator to its end, letting messages in between its steps, and gives up as soon as the question
 * has become stale. What throws is a bug and is answered as one.
 */
export const drive = async (
  revision: number,
  steps: Generator<PlanProgress, Result>,
  ports: {
    readonly isStale: () => boolean;
    readonly pause: () => Promise<void>;
    readonly onStep: (step: PlanStep) => void;
  },
): Promise<PlanReply> => {
  try {
    for (;;) {
      const step = steps.next();
      if (step.done) return { revision, kind: 'planned', result: step.value };
      const { done, of, plan } = step.value;
      ports.onStep({ revision, done, of, plan });
      await ports.pause();
      if (ports.isStale()) return { revision, kind: 'dropped' };
    }
  } catch (bug) {
    return { revision, kind: 'failed', say: bug instanceof Error ? bug.message : String(bug) };
  }
};
