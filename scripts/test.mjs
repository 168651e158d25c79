// Everything `npm test` runs, in order; stops at the first step that fails.
// The last line is `N passed, N failed`.
import { spawnSync } from 'node:child_process';
import { readFileSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

process.chdir(fileURLToPath(new URL('..', import.meta.url)));
const RESULTS = 'test-results';
const steps = [
  ['lint', 'node_modules/@biomejs/biome/bin/biome', 'ci', '--colors=off', '--error-on-warnings', '.'],
  ['types', 'node_modules/typescript/bin/tsc', '--noEmit'],
  ['types of the core', 'node_modules/typescript/bin/tsc', '--noEmit', '-p', 'src/tsconfig.core.json'],
  [
    'unit, reference, properties',
    'node_modules/vitest/vitest.mjs',
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${RESULTS}/vitest.json`,
  ],
  ['build', 'node_modules/vite/bin/vite.js', 'build', '--logLevel', 'warn'],
  ['e2e', 'node_modules/@playwright/test/cli.js', 'test'],
];

let passed = 0;
let failed = 0;
const timed = [];

function countVitest() {
  const report = JSON.parse(readFileSync(`${RESULTS}/vitest.json`, 'utf8'));
  passed += report.numPassedTests;
  failed += report.numFailedTests;
  for (const file of report.testResults)
    for (const t of file.assertionResults) timed.push([t.duration ?? 0, t.fullName]);
}

function countPlaywright() {
  const report = JSON.parse(readFileSync('e2e-results.json', 'utf8'));
  passed += report.stats.expected + report.stats.flaky;
  failed += report.stats.unexpected;
  const walk = (suite) => {
    for (const spec of suite.specs ?? [])
      timed.push([spec.tests[0]?.results.reduce((n, r) => n + r.duration, 0) ?? 0, spec.title]);
    for (const inner of suite.suites ?? []) walk(inner);
  };
  for (const suite of report.suites) walk(suite);
  rmSync('e2e-results.json');
}

function finish(status) {
  console.log('\nTen slowest:');
  for (const [ms, name] of timed.sort((a, b) => b[0] - a[0]).slice(0, 10))
    console.log(`  ${(ms / 1000).toFixed(1)} s  ${name}`);
  console.log(`${passed} passed, ${status === 0 ? failed : Math.max(1, failed)} failed`);
  process.exit(status);
}

rmSync(RESULTS, { recursive: true, force: true });
for (const [name, ...args] of steps) {
  const started = Date.now();
  const r = spawnSync(process.execPath, args, {
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, PLAYWRIGHT_JSON_OUTPUT_NAME: 'e2e-results.json' },
  });
  console.log(`[test] ${name}: exit ${r.status} in ${((Date.now() - started) / 1000).toFixed(1)} s`);
  try {
    if (name.startsWith('unit')) countVitest();
    if (name === 'e2e') countPlaywright();
  } catch (e) {
    console.log(`[test] no report from ${name}: ${e.message}`);
    finish(r.status || 1);
  }
  if (r.status !== 0) finish(r.status ?? 1);
}
finish(0);
