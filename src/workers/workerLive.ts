import { type Remote, wrap } from 'comlink';
import type { Planning } from './plan.worker';
import type { LivePlanner } from './planner';
import { watchWorker } from './watch';

/** A live plan takes a part of a second; a worker that is silent so long has hung. */
const STUCK_MS = 30_000;

const startWorker = (): Worker =>
  new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module', name: 'live planner' });

/**
 * Live plans in a worker of their own, started at the first question: the planner of whole jobs is neither waited for
 * nor interrupted. A worker that dies is replaced at the next question.
 */
export const workerLive = (start: () => Worker = startWorker): LivePlanner => {
  let live: {
    readonly remote: Remote<Planning>;
    readonly died: Promise<never>;
    readonly die: (say: string) => void;
  } | null = null;

  const launch = () => {
    const worker = start();
    const remote = wrap<Planning>(worker);
    let die = (_say: string): void => undefined;
    const died = new Promise<never>((_, reject) => {
      die = (say) => {
        worker.terminate();
        if (live?.remote === remote) live = null;
        reject(new Error(say));
      };
    });
    watchWorker(worker, () => remote.holds(), die);
    died.catch(() => undefined); // whoever waits for a plan is told; nobody waits between two
    return { remote, died, die };
  };

  return {
    async plan(job, option) {
      live ??= launch();
      const { remote, died, die } = live;
      const timer = setTimeout(() => die('the worker did not answer'), STUCK_MS);
      const plan = await Promise.race([remote.live(job, option), died]).finally(() => clearTimeout(timer));
      if (!plan) throw new Error(option);
      return plan;
    },
  };
};
