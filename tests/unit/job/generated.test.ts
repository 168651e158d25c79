import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { jobSchemaText } from '../../../src/job/jsonSchema';

test('the JSON Schema in docs/ is the one the code makes: run npm run generate', () => {
  const file = readFileSync(new URL('../../../docs/schema/job.schema.json', import.meta.url), 'utf8');
  expect(file).toBe(jobSchemaText());
});
