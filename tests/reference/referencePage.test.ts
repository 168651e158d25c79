import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { referencePage } from './referencePage';

test('docs/reference-checks.md is what the product says today, and agrees throughout: run npm run generate', () => {
  const page = readFileSync(new URL('../../docs/reference-checks.md', import.meta.url), 'utf8');
  expect(page).toBe(referencePage());
  expect(page).not.toContain('**no**');
});
