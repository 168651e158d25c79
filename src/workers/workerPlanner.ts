import { proxy, type Remote, wrap } from 'comlink';
import type { Planning } from './plan.worker';
import type { Planner, PlanReply, PlanRequest, PlanStep } from './planner';

/** How long a worker may go on with a superseded question before it is ended: a step of it cannot be interrupted. */
const PATIENCE_MS = 200;

interface Live {
  readonly worker: Worker;
  readonly remote: Remote<Planning>;
}
interface Question {
  readonly revision: number;
  readonly over: Promise<void>;
  readonly end: (reply: PlanReply) => void;
}

const startWorker = (): Worker =>
  new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module', name: 'planner' });

const message = (reason: unknown): string => (reason instanceof Error ? reason.message : String(reason));

/**
 * The planner in a module worker. A later question ends the one before it; a worker that will not leave off, or dies,
 * is replaced by a new one at the next question.
 */
export const workerPlanner = (start: () => Worker = startWorker): Planner => {
  let live: Live | null = null;
  let question: Question | null = null;
  let serial = 0;

  const discard = (one: Live): void => {
    one.worker.terminate();
    if (live === one) live = null;
  };
  const launch = (): Live => {
    const worker = start();
    const one: Live = { worker, remote: wrap<Planning>(worker) };
    const died = (say: string): void => {
      discard(one);
      if (question) question.end({ revision: question.revision, kind: 'failed', say });
    };
    worker.addEventListener('error', (event) => died(event.message || 'worker error'));
    worker.addEventListener('messageerror', () => died('message error'));
    return one;
  };

  const leaveOff = async (asked: Question, next: number): Promise<void> => {
    void live?.remote.supersede(next);
    await Promise.race([asked.over, new Promise<void>((resolve) => setTimeout(resolve, PATIENCE_MS))]);
    if (question !== asked) return;
    if (live) discard(live);
    asked.end({ revision: asked.revision, kind: 'dropped' });
  };

  const ask = (mine: number, request: PlanRequest, onStep: (step: PlanStep) => void): Promise<PlanReply> =>
    new Promise((resolve) => {
      let isOver = (): void => undefined;
      const asked: Question = {
        revision: request.revision,
        over: new Promise<void>((done) => {
          isOver = done;
        }),
        end: (reply) => {
          if (question === asked) question = null;
          isOver();
          resolve(reply);
        },
      };
      question = asked;
      live ??= launch();
      live.remote
        .plan(
          mine,
          request,
          proxy((step: PlanStep) => (question === asked ? onStep(step) : undefined)),
        )
        .then(asked.end, (reason: unknown) =>
          asked.end({ revision: request.revision, kind: 'failed', say: message(reason) }),
        );
    });

  return {
    async plan(request, onStep) {
      serial += 1;
      const mine = serial;
      if (question) await leaveOff(question, mine);
      return mine === serial ? ask(mine, request, onStep) : { revision: request.revision, kind: 'dropped' };
    },
  };
};
