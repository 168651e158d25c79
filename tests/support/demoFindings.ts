import type { Finding } from '../../src/facts/result';
import { judge, planOption } from '../../src/plan/planOption';
import { stageOf } from '../../src/plan/stages';
import { EDITIONS, type Edition } from '../../src/units/types';
import { demoJob } from './demos';

const told = new Map<string, ReadonlyMap<Edition, readonly Finding[]>>();

/** Findings of one option of a demo in each code year, its routes kept: what the editions alone change. */
export const findingsByYear = (demo: string, optionId: string): ReadonlyMap<Edition, readonly Finding[]> => {
  const known = told.get(`${demo} ${optionId}`);
  if (known) return known;
  const job = demoJob(demo);
  const option = job.options.find((o) => o.id === optionId)!;
  const { answer } = planOption(job, option);
  const years = new Map(
    EDITIONS.map((edition) => {
      const inYear = { ...job, code: { ...job.code, edition } };
      return [edition, judge(inYear, option, answer, stageOf(inYear, option, 'final')).findings];
    }),
  );
  told.set(`${demo} ${optionId}`, years);
  return years;
};

/** The options whose findings are told in every code year: each demo's first relocation, and a panel replaced in its place. */
export const TOLD = [
  ['small-house', 'in-place'],
  ['small-house', 'relocate-a'],
  ['l-shaped', 'relocate-a'],
  ['washer', 'relocate-a'],
] as const;

const SHORT = {
  null: 'holds',
  'stops the job': 'stops',
  'extra work': 'extra',
  'verify in field': 'verify',
  note: 'note',
};

/** Findings of one rule counted by what they do: '3 holds, 1 extra'. */
const counted = (findings: readonly Finding[]): string =>
  Object.entries(SHORT)
    .map(([effect, short]) => [findings.filter((f) => String(f.effect) === effect).length, short] as const)
    .filter(([count]) => count > 0)
    .map(([count, short]) => `${count} ${short}`)
    .join(', ') || '–';

/** demo/FINDINGS.md: what every rule finds in the demo jobs, code year by code year, with the routes of the job's own year. */
export const findingsPage = (): string =>
  [
    '# Findings of the demo jobs by code year',
    '',
    'Written from the code by `npm run generate`; do not edit. Each option is planned in its own code year; its routes are',
    'kept and judged in every year, so that a line differs only where the editions do. Counted by what a finding does:',
    'stops the job, extra work in the price, verify in field, note; `–` where the rule has nothing to say.',
    '',
    ...TOLD.flatMap(([demo, option]) => {
      const years = findingsByYear(demo, option);
      const rules = [...new Set([...years.values()].flat().map((f) => f.rule))].sort();
      return [
        `## ${demo}, ${option} (its own year: ${demoJob(demo).code.edition})`,
        '',
        `| rule | ${EDITIONS.join(' | ')} | |`,
        `| --- | ${EDITIONS.map(() => '---').join(' | ')} | --- |`,
        ...rules.map((rule) => {
          const cells = EDITIONS.map((year) => counted(years.get(year)!.filter((f) => f.rule === rule)));
          return `| ${rule} | ${cells.join(' | ')} | ${cells.every((c) => c === cells[0]) ? '' : 'differs'} |`;
        }),
        '',
      ];
    }),
  ].join('\n');
