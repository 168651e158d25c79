import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { rulesPage } from './rulesPage';

test('docs/rules.md is what the rules and their fixtures say', () => {
  expect(readFileSync(new URL('../../../docs/rules.md', import.meta.url), 'utf8')).toBe(rulesPage());
});
