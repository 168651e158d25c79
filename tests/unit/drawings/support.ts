import { readFileSync } from 'node:fs';
import { openJob } from '../../../src/job/parse';
import type { Job, Option } from '../../../src/job/schema';

/** A demo job as the app opens it. */
export const demo = (name: 'washer' | 'l-shaped' | 'small-house'): Job => {
  const opened = openJob(readFileSync(new URL(`../../../demo/${name}.job.json`, import.meta.url), 'utf8'));
  if (!opened.ok) throw new Error(opened.error.error.say);
  return opened.value.job;
};
export const optionOf = (job: Job, id: string): Option => {
  const option = job.options.find((o) => o.id === id);
  if (!option) throw new Error(`no option ${id}`);
  return option;
};
