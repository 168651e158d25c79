import { proxy, type Remote, wrap } from 'comlink';
import type { Planning } from './plan.worker';
import type { Planner, PlanReply, PlanRequest, PlanStep } from './planner';
import { watchWorker } from './watch';

/** How long a worker may go on with a superseded question before it is ended: a step of it cannot be interrupted. */
const PATIENCE_MS = 200;
/**
 * A worker that neither takes a step nor answers for so long has hung; a second one is given more time. An option of
 * 200 circuits took a slow machine nearly a minute.
 */
const STUCK_MS = [180_000, 600_000] as const;

/** The worker was lost with the question still open; `say` is what is known of why. */
interface Lost {
  readonly kind: 'lost';
  readonly say: string;
}

interface Live {
  readonly worker: Worker;
  readonly remote: Remote<Planning>;
}
interface Question {
  readonly revision: number;
  readonly over: Promise<void>;
  readonly end: (reply: PlanReply | Lost) => void;
}

const startWorker = (): Worker =>
  new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module', name: 'planner' });

const message = (reason: unknown): string => (reason instanceof Error ? reason.message : String(reason));

/**
 * The planner in a module worker. A later question ends the one before it; a worker that will not leave off is replaced
 * at the next question. One that dies or hangs is replaced at once, and asked the same again; only when that one is lost
 * too, it is told.
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
      if (live !== one) return;
      discard(one);
      question?.end({ kind: 'lost', say });
    };
    watchWorker(worker, () => one.remote.holds(), died);
    return one;
  };

  const leaveOff = async (asked: Question, next: number): Promise<void> => {
    void live?.remote.supersede(next);
    await Promise.race([asked.over, new Promise<void>((resolve) => setTimeout(resolve, PATIENCE_MS))]);
    if (question !== asked) return;
    if (live) discard(live);
    asked.end({ revision: asked.revision, kind: 'dropped' });
  };

  const ask = (mine: number, request: PlanRequest, onStep: (step: PlanStep) => void, stuckMs: number) =>
    new Promise<PlanReply | Lost>((resolve) => {
      let isOver = (): void => undefined;
      let timer: ReturnType<typeof setTimeout> | undefined;
      const asked: Question = {
        revision: request.revision,
        over: new Promise<void>((done) => {
          isOver = done;
        }),
        end: (reply) => {
          clearTimeout(timer);
          if (question === asked) question = null;
          isOver();
          resolve(reply);
        },
      };
      const wait = (): void => {
        clearTimeout(timer);
        timer = setTimeout(() => {
          if (live) discard(live);
          asked.end({ kind: 'lost', say: 'the worker did not answer' });
        }, stuckMs);
      };
      const step = (one: PlanStep): void => {
        if (question !== asked) return;
        wait();
        onStep(one);
      };
      question = asked;
      live ??= launch();
      wait();
      live.remote
        .plan(mine, request, proxy(step))
        .then(asked.end, (reason: unknown) =>
          asked.end({ revision: request.revision, kind: 'failed', say: message(reason) }),
        );
    });

  return {
    async plan(request, onStep) {
      const { revision } = request;
      serial += 1;
      const mine = serial;
      if (question) await leaveOff(question, mine);
      let say = '';
      for (const stuckMs of STUCK_MS) {
        if (mine !== serial) return { revision, kind: 'dropped' };
        const reply = await ask(mine, request, onStep, stuckMs);
        if (reply.kind !== 'lost') return reply;
        say = reply.say;
      }
      return { revision, kind: 'failed', say };
    },
  };
};
