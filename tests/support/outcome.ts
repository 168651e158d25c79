import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** Where the long run puts down what it found; outside what test runs clear away. */
const FOLDER = fileURLToPath(new URL('../../node_modules/.cache/reliability/', import.meta.url));

/** Puts down what the long run found, for `docs/reliability.md`; the short one is no measure. */
export const outcome = (part: string, found: Readonly<Record<string, unknown>>): void => {
  if (process.env.EFFORT !== 'hard') return;
  mkdirSync(FOLDER, { recursive: true });
  const on = new Date().toISOString().slice(0, 10);
  writeFileSync(`${FOLDER}${part}.json`, `${JSON.stringify({ on, ...found }, null, 2)}\n`);
};
