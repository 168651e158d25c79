import type { Job } from '../job/schema';

/**
 * A number for every job state ever asked about. Undo brings back the very same job object and with it the same
 * number, so that its plans need not be made again.
 */
export const makeRevisions = (): ((job: Job) => number) => {
  const known = new WeakMap<Job, number>();
  let last = 0;
  return (job) => {
    const revision = known.get(job) ?? ++last;
    known.set(job, revision);
    return revision;
  };
};
