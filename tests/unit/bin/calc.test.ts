import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const ROOT = fileURLToPath(new URL('../../../', import.meta.url));
const calc = (name: string, input: string) => {
  const done = spawnSync(process.execPath, ['--import', 'tsx', 'bin/calc.ts', name], {
    cwd: ROOT,
    encoding: 'utf8',
    input,
  });
  return { code: done.status, out: JSON.parse(done.stdout) };
};

// 314.28(A)(2), a published example: angle pull, 3 in and 2 in entries: 6 × 3 + 2 = 20 in, 18 in between entries.
test('the command answers with figures and steps, exit code 0', () => {
  const { code, out } = calc('pull-box', '{"pull":"angle","racewaysIn":[3,2]}');
  expect([code, out.outcome, out.figures]).toEqual([0, 'value', { minimumIn: 20, sameConductorIn: 18 }]);
  for (const step of out.worked.steps) expect(step.section).toMatch(/^314\.28/);
});
test('bad input is told by its place, exit code 2', () => {
  expect(calc('pull-box', '{"pull":"angle","racewaysIn":["three"]}')).toMatchObject({
    code: 2,
    out: { error: { path: '/racewaysIn/0' } },
  });
  expect(calc('pull', '{}')).toMatchObject({ code: 2, out: { error: { type: 'no-such-calculation' } } });
});
