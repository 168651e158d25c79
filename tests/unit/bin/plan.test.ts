import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { resultSchema } from '../../../bin/resultSchema';

const ROOT = fileURLToPath(new URL('../../../', import.meta.url));
const DEMO = join(ROOT, 'demo/small-house.job.json');

const plan = (...args: string[]) => {
  const done = spawnSync(process.execPath, ['--import', 'tsx', 'bin/plan.ts', ...args], {
    cwd: ROOT,
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  return { code: done.status, out: done.stdout, err: done.stderr };
};
const faultOf = (out: string) => (JSON.parse(out) as { error: { type: string; path: string; say: string } }).error;

let folder = '';
const at = (name: string) => join(folder, name);
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'backboard-'));
  mkdirSync(at('empty'));
  mkdirSync(at('mixed'));
  copyFileSync(DEMO, at('mixed/good.job.json'));
  copyFileSync(DEMO, at('mixed/not-a-job.json'));
  writeFileSync(at('mixed/cut.job.json'), '{"format": "backboard-job"');
  writeFileSync(at('mixed/binary.job.json'), Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0xff, 0x00, 0xfe]));
  mkdirSync(at('mixed/folder.job.json'));
  symlinkSync(at('circle'), at('circle'));
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('what is asked for badly: exit code 2, a fault on stdout with --json, a sentence on stderr without', () => {
  test.each([
    ['nothing', [], 'usage', /one job file or one folder/],
    ['two files', [DEMO, DEMO], 'usage', /one job file or one folder/],
    ['a flag nobody knows', [DEMO, '--fast'], 'usage', /--fast/],
    ['an option without its id', [DEMO, '--option'], 'usage', /--option/],
    ['a flag with a value', [DEMO, '--quick=yes'], 'usage', /--quick/],
    ['an option the job does not have', [DEMO, '--quick', '--option', 'nowhere'], 'no-such-option', /"nowhere"/],
    ['a file that is not there', [() => at('none.job.json')], 'no-such-file', /none\.job\.json/],
    ['a file below a file', [() => join(DEMO, 'x')], 'no-such-file', /no such file/],
    ['a link that leads in a circle', [() => at('circle')], 'unreadable', /circle/],
    ['a folder without jobs', [() => at('empty')], 'no-jobs', /no \*\.job\.json/],
    ['a binary file', [() => at('mixed/binary.job.json')], 'not-text', /UTF-8/],
    ['a file cut short', [() => at('mixed/cut.job.json')], 'not-json', /the end of the file/],
  ] as [string, (string | (() => string))[], string, RegExp][])('%s', (_what, args, type, say) => {
    const { code, out } = plan(...args.map((a) => (typeof a === 'string' ? a : a())), '--json');
    expect(code).toBe(2);
    expect(faultOf(out)).toEqual({ type, path: expect.any(String), say: expect.stringMatching(say) });
  });

  test('without --json nothing but the result goes to stdout', () => {
    const { code, out, err } = plan('--fast', DEMO);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('--fast');
  });
});

describe('a folder with good and bad files', () => {
  test('each is answered in order of its name; the good one is planned; exit code 2', () => {
    const { code, out } = plan(at('mixed'), '--quick', '--json');
    expect(code).toBe(2);
    const { files } = JSON.parse(out) as { files: { file: string; output: { error?: { type: string } } }[] };
    expect(files.map((f) => [f.file, f.output.error?.type ?? 'planned'])).toEqual([
      ['binary.job.json', 'not-text'],
      ['cut.job.json', 'not-json'],
      ['folder.job.json', 'unreadable'],
      ['good.job.json', 'planned'],
    ]);
    expect(resultSchema.safeParse(files[3]!.output).success).toBe(true);
  });
  test('as a table: one row a file, the place of each fault in its row', () => {
    const { code, out } = plan(at('mixed'), '--quick');
    const rows = out.trimEnd().split('\n');
    expect(code).toBe(2);
    expect(rows.map((r) => r.split(/\s/)[0])).toEqual([
      'file',
      'binary.job.json',
      'cut.job.json',
      'folder.job.json',
      'good.job.json',
    ]);
    expect(rows[2]).toContain('not-json at /: Not JSON: line 1, column 27');
    expect(rows[4]).toMatch(/in-place .*\$\d/);
  });
});

describe('a good file: exit code 0', () => {
  const jsonOf = (...args: string[]) => {
    const { code, out, err } = plan(DEMO, '--json', ...args);
    expect([code, err]).toEqual([0, '']);
    return out;
  };
  let quick = '';
  const quickOnce = () => {
    quick ||= jsonOf('--quick');
    return resultSchema.parse(JSON.parse(quick));
  };
  test.each([[['--quick']], [[]]])('twice gives the same bytes, and they are a result: %j', (flags) => {
    const first = jsonOf(...flags);
    expect(jsonOf(...flags)).toBe(first);
    const { plans } = resultSchema.parse(JSON.parse(first));
    expect(plans.map((p) => p.option)).toEqual(['in-place', 'relocate-a']);
    expect(new Set(plans.map((p) => p.grade))).toEqual(new Set([flags.length > 0 ? 'final' : 'proven']));
  });
  test('one option only, in place of all', () => {
    const one = resultSchema.parse(JSON.parse(jsonOf('--quick', '--option', 'relocate-a')));
    expect(one.plans).toEqual(quickOnce().plans.filter((p) => p.option === 'relocate-a'));
  });
  test('a price that is not whole says in words what it waits for', () => {
    const { code, out } = plan(join(ROOT, 'demo/washer.job.json'), '--quick', '--option', 'relocate-a');
    expect(code).toBe(0);
    expect(out).toContain('incomplete');
    expect(out).toMatch(
      /The price waits for:\n- The breaker of .+ \(circuit .+\) has no price: its rating is not known\./,
    );
  });
  test('as a table every figure is one of the result, and the advice follows', () => {
    const { code, out } = plan(DEMO, '--quick');
    const { plans, advice } = quickOnce();
    const { tally } = plans.find((p) => p.option === advice.option)!;
    expect(code).toBe(0);
    expect(out).toContain(advice.say);
    expect(out).not.toContain('The price waits for');
    const figures = out.split('\n')[1]!.split(/\s{2,}/);
    expect(figures.slice(-6)).toEqual(
      [tally.crewHours, tally.outageHours, tally.conductorsSpliced, tally.boxes, tally.afciAdded, tally.stops].map(
        String,
      ),
    );
  });
});
