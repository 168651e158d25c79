// The long runs: random and spoiled input many times over, then the browser killed thirty times. `npm run hard -- files`
// or `-- kills` is a part of it. Writes docs/reliability.md.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

process.chdir(fileURLToPath(new URL('..', import.meta.url)));
const VITEST = ['node_modules/vitest/vitest.mjs', 'run', '--test-timeout', '3600000'];
const FILES = [
  'tests/properties/fuzz.test.ts',
  'tests/properties/hostileCsv.test.ts',
  'tests/properties/largeJob.test.ts',
];
const STEPS = [
  ['files', [...VITEST, ...FILES]],
  [
    'properties',
    [
      ...VITEST,
      'tests/properties',
      'tests/unit/plan/map',
      'tests/reference/sixFoot.test.ts',
      ...FILES.flatMap((file) => ['--exclude', file]),
    ],
  ],
  ['kills', ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'warn']],
  ['kills', ['node_modules/@playwright/test/cli.js', 'test', '--reporter=list', 'killed', 'keeping']],
];
const wanted = process.argv.slice(2);
let failed = 0;
for (const [part, args] of STEPS) {
  if (wanted.length > 0 && !wanted.includes(part)) continue;
  const { status } = spawnSync(process.execPath, args, { stdio: 'inherit', env: { ...process.env, EFFORT: 'hard' } });
  if (status !== 0) failed++;
}
spawnSync(process.execPath, ['scripts/reliability.mjs'], { stdio: 'inherit' });
process.exit(failed === 0 ? 0 : 1);
