/** `npm run models`: builds the 3-D models and their manifest into public/models. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { buildAll } from './models/manifest';

const OUT = new URL('../public/models/', import.meta.url);
mkdirSync(OUT, { recursive: true });
const built = buildAll();
for (const { entry, bytes } of built) writeFileSync(new URL(entry.file, OUT), bytes);
writeFileSync(
  new URL('manifest.json', OUT),
  `${JSON.stringify(
    built.map((b) => b.entry),
    null,
    1,
  )}\n`,
);
console.log(`${built.length} models, ${built.reduce((n, b) => n + b.bytes.length, 0)} bytes`);
