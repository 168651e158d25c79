import { readFileSync } from 'node:fs';

/** A good job file, to be spoiled in one place. */
export const GOOD = readFileSync(new URL('../../../../demo/washer.job.json', import.meta.url), 'utf8');

// biome-ignore lint/suspicious/noExplicitAny: the tables write any nonsense anywhere
export type Raw = any;
export const changed = (change: (job: Raw) => void): string => {
  const job = JSON.parse(GOOD) as Raw;
  change(job);
  return JSON.stringify(job);
};

/** Input, and the fault it must get: type, JSON pointer, and what the sentence must say. */
export type Row = readonly [what: string, text: string, type: string, path: string, say?: RegExp];
