import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { coveragePage } from '../src/documents/coveragePage';
import { jobSchemaText } from '../src/job/jsonSchema';
import { priceBookPage } from '../src/pricing/bookPage';
import { defaultBook } from '../src/pricing/defaultBook';
import { referencePage } from '../tests/reference/referencePage';
import { findingsPage } from '../tests/support/demoFindings';
import { rulesPage } from '../tests/unit/rules/rulesPage';
import { resultSchemaText } from './resultSchema';

/** Files written from the code: `npm run generate`. A test holds each against its text. */
export const GENERATED: readonly { readonly file: string; readonly text: () => string }[] = [
  { file: 'docs/schema/job.schema.json', text: jobSchemaText },
  { file: 'docs/schema/result.schema.json', text: resultSchemaText },
  { file: 'docs/coverage.md', text: coveragePage },
  { file: 'docs/rules.md', text: rulesPage },
  { file: 'demo/FINDINGS.md', text: findingsPage },
  { file: 'docs/reference-checks.md', text: referencePage },
  { file: 'docs/price-book.md', text: () => priceBookPage(defaultBook) },
];

const ROOT = resolve(dirname(fileURLToPath(import.meta.url)), '..');

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const { file, text } of GENERATED) {
    mkdirSync(dirname(resolve(ROOT, file)), { recursive: true });
    writeFileSync(resolve(ROOT, file), text());
    process.stderr.write(`${file}\n`);
  }
}
