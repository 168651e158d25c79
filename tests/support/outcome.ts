import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** Puts down what a run found, for `docs/reliability.md`. */
export const outcome = (part: string, found: Readonly<Record<string, unknown>>): void => {
  const folder = fileURLToPath(new URL('../../test-results/reliability/', import.meta.url));
  mkdirSync(folder, { recursive: true });
  writeFileSync(`${folder}${part}.json`, `${JSON.stringify(found, null, 2)}\n`);
};
