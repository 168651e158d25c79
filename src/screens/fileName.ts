import type { Job } from '../job/schema';

const MOST = 60;
/** A name for the job's file: its id, without what file systems do not take. */
export const fileNameOf = (job: Pick<Job, 'id'>): string => {
  const name = job.id
    .replace(/[^\p{L}\p{N}._-]+/gu, '-')
    .replace(/^[.-]+/, '')
    .slice(0, MOST);
  return `${name || 'job'}.job.json`;
};
