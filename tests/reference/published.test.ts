import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const FOLDER = join(dirname(fileURLToPath(import.meta.url)), 'published');
const listed = readFileSync(join(FOLDER, 'SHA256SUMS'), 'utf8')
  .trim()
  .split('\n')
  .map((line) => line.split(/\s+/) as [string, string]);

test('every published figure is as it was copied', () => {
  const found = listed.map(([, file]) => [
    createHash('sha256')
      .update(readFileSync(join(FOLDER, file)))
      .digest('hex'),
    file,
  ]);
  expect(found).toEqual(listed);
});

test('nothing stands in the folder that is not in the list', () => {
  const there = readdirSync(FOLDER).filter((file) => file !== 'SHA256SUMS');
  expect(there.sort()).toEqual(listed.map(([, file]) => file).sort());
});
