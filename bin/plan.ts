/**
 * npm run --silent plan -- FILE|FOLDER [--option ID] [--quick] [--json]
 * stdout is the result only. Exit code 0 planned, 2 bad input, 1 a bug.
 */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import type { Plan, Result } from '../src/facts/result';
import { openJob } from '../src/job/parse';
import type { Job } from '../src/job/schema';
import { planJob, proveJob } from '../src/plan/planJob';
import type { Fault } from '../src/units/fault';
import { formatDollars } from '../src/units/money';
import { compareText } from '../src/units/order';
import { createSolver } from './solver';

const fault = (type: string, path: string, say: string): Fault => ({ error: { type, path, say } });
const isFault = (o: Result | Fault): o is Fault => 'error' in o;

interface Flags {
  readonly option: string | undefined;
  readonly quick: boolean;
}

const planText = async (text: string, flags: Flags): Promise<{ job: Job | null; output: Result | Fault }> => {
  const opened = openJob(text);
  if (!opened.ok) return { job: null, output: opened.error };
  const { job, repairs } = opened.value;
  for (const repair of repairs) console.error(`repaired: ${repair}`);
  const { option } = flags;
  if (option !== undefined && !job.options.some((o) => o.id === option))
    return { job, output: fault('no-such-option', '/options', `This job has no option "${option}".`) };
  const ask = option === undefined ? {} : { options: [option] };
  return { job, output: flags.quick ? planJob(job, ask) : await proveJob(job, ask, await createSolver()) };
};

const jobFiles = (path: string): { name: string; path: string }[] =>
  statSync(path).isDirectory()
    ? readdirSync(path)
        .filter((name) => name.endsWith('.job.json'))
        .sort(compareText)
        .map((name) => ({ name, path: join(path, name) }))
    : [{ name: path, path }];

/** One row a job: the recommended option, or the one asked for, or the first with what stops it. */
const COLUMNS = ['file', 'option', 'price', 'range', 'labor h', 'outage h', 'spliced', 'boxes', 'AFCI', 'stops'];
const row = (file: string, job: Job | null, output: Result | Fault): string[] => {
  if (isFault(output)) return [file, `${output.error.type} at ${output.error.path || '/'}: ${output.error.say}`];
  const plan: Plan | undefined = output.plans.find((p) => p.option === output.advice.option) ?? output.plans[0];
  if (!plan) return [file, output.advice.say];
  const { tally, price } = plan;
  const title = job?.options.find((o) => o.id === plan.option)?.title ?? '';
  return [
    file,
    `${plan.option} ${title}${output.advice.option === null ? ' (not recommended)' : ''}`,
    `${formatDollars(tally.likelyCents)}${price.complete ? '' : ' incomplete'}`,
    `${formatDollars(tally.lowCents)}–${formatDollars(tally.highCents)}`,
    String(tally.crewHours),
    String(tally.outageHours),
    String(tally.conductorsSpliced),
    String(tally.boxes),
    String(tally.afciAdded),
    String(tally.stops),
  ];
};
const table = (rows: readonly (readonly string[])[]): string => {
  const widths = COLUMNS.map((name, i) =>
    Math.max(name.length, ...rows.filter((r) => r.length > 2).map((r) => r[i]!.length)),
  );
  return [COLUMNS, ...rows]
    .map((r) => r.map((cell, i) => (i < r.length - 1 ? cell.padEnd(widths[i]!) : cell)).join('  '))
    .join('\n');
};

const main = async (): Promise<number> => {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      option: { type: 'string' },
      quick: { type: 'boolean', default: false },
      json: { type: 'boolean', default: false },
    },
  });
  const print = (o: unknown) => console.log(JSON.stringify(o, null, 2));
  const refuse = (f: Fault): number => {
    if (values.json) print(f);
    else console.error(f.error.say);
    return 2;
  };
  const path = positionals[0];
  if (path === undefined || positionals.length > 1)
    return refuse(fault('usage', '', 'Name one job file or one folder.'));
  const stat = statSync(path, { throwIfNoEntry: false });
  if (!stat) return refuse(fault('no-such-file', '', `There is no ${path}.`));
  const files: { file: string; output: Result | Fault }[] = [];
  const rows: string[][] = [];
  for (const { name, path: at } of jobFiles(path)) {
    const { job, output } = await planText(readFileSync(at, 'utf8'), { option: values.option, quick: values.quick });
    files.push({ file: name, output });
    rows.push(row(name, job, output));
  }
  const [only] = files;
  if (files.length === 0) return refuse(fault('no-jobs', '', `${path} holds no *.job.json.`));
  if (values.json) print(stat.isDirectory() ? { files } : only!.output);
  else {
    console.log(table(rows));
    for (const { output } of files) if (!stat.isDirectory() && !isFault(output)) console.log(`\n${output.advice.say}`);
  }
  return files.some(({ output }) => isFault(output)) ? 2 : 0;
};

const BAD_USE = /^ERR_PARSE_ARGS/;
main().then(
  (code) => {
    process.exitCode = code;
  },
  (e: unknown) => {
    const code = (e as { code?: string }).code ?? '';
    console.error(BAD_USE.test(code) ? (e as Error).message : e);
    process.exitCode = BAD_USE.test(code) ? 2 : 1;
  },
);
