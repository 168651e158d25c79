import { type Remote, wrap } from 'comlink';
import type { Planning } from './plan.worker';
import type { LivePlanner } from './planner';

const startWorker = (): Worker =>
  new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module', name: 'live planner' });

/**
 * Live plans in a worker of their own, started at the first question: the planner of whole jobs is neither waited for
 * nor interrupted. A worker that dies is replaced at the next question.
 */
export const workerLive = (start: () => Worker = startWorker): LivePlanner => {
  let live: { readonly remote: Remote<Planning>; readonly died: Promise<never> } | null = null;

  const launch = () => {
    const worker = start();
    const died = new Promise<never>((_, reject) => {
      const die = (say: string) => {
        worker.terminate();
        live = null;
        reject(new Error(say));
      };
      worker.addEventListener('error', (event) => die(event.message || 'worker error'));
      worker.addEventListener('messageerror', () => die('message error'));
    });
    died.catch(() => undefined); // whoever waits for a plan is told; nobody waits between two
    return { remote: wrap<Planning>(worker), died };
  };

  return {
    async plan(job, option) {
      live ??= launch();
      const plan = await Promise.race([live.remote.live(job, option), live.died]);
      if (!plan) throw new Error(option);
      return plan;
    },
  };
};
