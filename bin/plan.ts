/**
 * npm run --silent plan -- FILE|FOLDER [--option ID] [--map] [--quick] [--json]
 * stdout is the result only. Exit code 0 planned, 2 bad input, 1 a bug.
 */
import { parseArgs } from 'node:util';
import type { Output, Plan, Result } from '../src/facts/result';
import { openJob } from '../src/job/parse';
import type { Job } from '../src/job/schema';
import { planJob, proveJob } from '../src/plan/planJob';
import type { Fault } from '../src/units/fault';
import { formatDollars } from '../src/units/money';
import { err, ok } from '../src/units/result';
import { assumedWords as assumed } from '../src/words/en/assumed';
import { planWords as say } from '../src/words/en/plan';
import { mapLines, withMap } from './mapText';
import { fault, jobFiles, readText } from './readText';
import { createSolver } from './solver';

const isFault = (o: Result | Fault): o is Fault => 'error' in o;

interface Flags {
  readonly option: string | undefined;
  readonly quick: boolean;
  readonly map: boolean;
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
  const output = flags.quick ? planJob(job, ask) : await proveJob(job, ask, await createSolver());
  return { job, output: flags.map ? withMap(job, output, option) : output };
};

const shown = (plans: Result['plans'], advice: Result['advice']): Plan | undefined =>
  plans.find((p) => p.option === advice.option) ?? plans[0];

/** One row a job: the recommended option, or the one asked for, or the first with what stops it. */
const COLUMNS = [
  'file',
  'option',
  'title',
  'price',
  'range',
  'labor h',
  'outage h',
  'spliced',
  'boxes',
  'AFCI',
  'stops',
];
const row = (file: string, job: Job | null, output: Result | Fault): string[] => {
  if (isFault(output)) return [file, `${output.error.type} at ${output.error.path || '/'}: ${output.error.say}`];
  const plan = shown(output.plans, output.advice);
  if (!plan) return [file, output.advice.say];
  const { tally, price } = plan;
  const title = job?.options.find((o) => o.id === plan.option)?.title ?? '';
  return [
    file,
    plan.option,
    `${title}${output.advice.option === null ? ' (not recommended)' : ''}`,
    `${formatDollars(tally.likelyCents)}${price.complete ? '' : ' incomplete'}`,
    `${formatDollars(tally.lowCents)}–${formatDollars(tally.highCents)}`,
    String(tally.crewHours),
    String(tally.outageHours),
    String(tally.conductorsSpliced),
    String(tally.boxes),
    `${tally.afciAdded}${plan.afciOpen > 0 ? ` + ${plan.afciOpen}?` : ''}`,
    String(tally.stops),
  ];
};
/** What one job's row cannot hold: the advice, and what the price of the option in the row waits for. */
const spoken = ({ advice, plans }: Result): string[] => {
  const price = shown(plans, advice)?.price;
  const list = (title: string, texts: readonly string[]) =>
    texts.length > 0 ? ['', title, ...texts.map((text) => `- ${text}`)] : [];
  return [
    advice.say,
    ...list(say.missingTitle, price?.missingSay ?? []),
    ...list(`${assumed.title}:`, price?.assumed.map((one) => one.say) ?? []),
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

const OPTIONS = {
  option: { type: 'string' },
  quick: { type: 'boolean', default: false },
  map: { type: 'boolean', default: false },
  json: { type: 'boolean', default: false },
} as const;

const BAD_USE = /^ERR_PARSE_ARGS/;
const readArguments = (args: readonly string[]) => {
  try {
    const { values, positionals } = parseArgs({ args: [...args], allowPositionals: true, options: OPTIONS });
    const [path] = positionals;
    return path !== undefined && positionals.length === 1
      ? ok({ path, ...values })
      : err(fault('usage', '', 'Name one job file or one folder.'));
  } catch (e) {
    if (!BAD_USE.test((e as { code?: string }).code ?? '')) throw e;
    return err(fault('usage', '', (e as Error).message));
  }
};

const printed = (o: Output): string => JSON.stringify(o, null, 2);

const main = async (args: readonly string[]): Promise<number> => {
  const read = readArguments(args);
  const json = read.ok ? read.value.json : args.includes('--json');
  const refuse = (f: Fault): number => {
    if (json) console.log(printed(f));
    else console.error(f.error.say);
    return 2;
  };
  if (!read.ok) return refuse(read.error);
  const { path, option, quick, map } = read.value;
  const found = jobFiles(path);
  if (!found.ok) return refuse(found.error);
  const { folder } = found.value;
  const files: { file: string; output: Result | Fault }[] = [];
  const rows: string[][] = [];
  for (const { name, path: at } of found.value.files) {
    const text = readText(at);
    const { job, output } = text.ok
      ? await planText(text.value, { option, quick, map })
      : { job: null, output: text.error };
    files.push({ file: name, output });
    rows.push(row(name, job, output));
  }
  const [only] = files;
  if (!only) return refuse(fault('no-jobs', '', `${path} holds no *.job.json.`));
  if (json) console.log(printed(folder ? { files } : only.output));
  else {
    console.log(table(rows));
    if (!folder && !isFault(only.output)) {
      const { places } = only.output;
      console.log(['', ...spoken(only.output), ...(places ? mapLines(places) : [])].join('\n'));
    }
  }
  return files.some(({ output }) => isFault(output)) ? 2 : 0;
};

main(process.argv.slice(2)).then(
  (code) => {
    process.exitCode = code;
  },
  (e: unknown) => {
    console.error(e);
    process.exitCode = 1;
  },
);
