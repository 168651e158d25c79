import { wrap } from 'comlink';
import type { Refiner } from './mapper';
import type { Planning } from './plan.worker';
import { watchWorker } from './watch';

const startWorker = (): Worker =>
  new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module', name: 'refiner' });

/** Refinements in a worker that lives as long as the question. */
export const workerRefiner = (start: () => Worker = startWorker): Refiner => ({
  refine: (job, option) =>
    new Promise((resolve, reject) => {
      const worker = start();
      const remote = wrap<Planning>(worker);
      watchWorker(
        worker,
        () => remote.holds(),
        (say) => reject(new Error(say)),
      );
      remote
        .refine(job, option)
        .then(resolve, reject)
        .finally(() => worker.terminate());
    }),
});
