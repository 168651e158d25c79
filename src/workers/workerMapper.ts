import { proxy, wrap } from 'comlink';
import type { MapProgress } from '../plan/map/mapSteps';
import type { Mapper } from './mapper';
import type { Planning } from './plan.worker';
import { watchWorker } from './watch';

const startWorker = (): Worker =>
  new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module', name: 'map planner' });

/**
 * Maps in a worker of their own, one a question: it is ended when it is stopped or answered, so that nothing of a long
 * search goes on unseen. A worker that dies fails the question.
 */
export const workerMapper = (start: () => Worker = startWorker): Mapper => {
  let running: { readonly end: (how: 'done' | 'stopped') => void } | null = null;
  const stop = (): void => running?.end('stopped');
  return {
    stop,
    map(job, option, onStep) {
      stop();
      return new Promise((resolve, reject) => {
        const worker = start();
        const remote = wrap<Planning>(worker);
        const mine = {
          end: (how: 'done' | 'stopped'): void => {
            worker.terminate();
            if (running !== mine) return;
            running = null;
            resolve(how);
          },
        };
        running = mine;
        const fail = (say: string): void => {
          worker.terminate();
          if (running === mine) running = null;
          reject(new Error(say));
        };
        watchWorker(worker, () => remote.holds(), fail);
        const hear = proxy((step: MapProgress) => (running === mine ? onStep(step) : undefined));
        remote.map(job, option, hear).then(
          () => mine.end('done'),
          (reason: unknown) => fail(reason instanceof Error ? reason.message : String(reason)),
        );
      });
    },
  };
};
