import { readFileSync } from 'node:fs';
import { openJob } from '../../../src/job/parse';
import type { Job } from '../../../src/job/schema';

/** A demo job by its file name without the ending. */
export const demoJob = (name: 'washer' | 'l-shaped' | 'small-house'): Job => {
  const opened = openJob(readFileSync(new URL(`../../../demo/${name}.job.json`, import.meta.url), 'utf8'));
  if (!opened.ok) throw new Error(JSON.stringify(opened.error));
  return opened.value.job;
};
