import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { openJob } from '../../src/job/parse';
import type { Job } from '../../src/job/schema';

const FOLDER = fileURLToPath(new URL('../../demo/', import.meta.url));

export const demoText = (name: string): string => readFileSync(`${FOLDER}${name}.job.json`, 'utf8');
export const demoJob = (name: string): Job => {
  const opened = openJob(demoText(name));
  if (!opened.ok) throw new Error(`demo ${name}: ${opened.error.error.say}`);
  return opened.value.job;
};
export const DEMOS = readdirSync(FOLDER)
  .filter((f) => f.endsWith('.job.json'))
  .map((f) => f.replace('.job.json', ''))
  .sort();
