import { EDITIONS } from '../units/types';
import { MATTERS, coverageWords as say } from '../words/en/coverage';
import { splitWords } from '../words/en/splits';
import { type CoverageRow, coverageCounts, coverageRows } from './coverage';

const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
const table = (head: readonly string[], rows: readonly (readonly string[])[]): string[] => [
  row(head),
  row(head.map(() => '---')),
  ...rows.map(row),
];

const sectionCell = ({ asked, section, standing }: CoverageRow['sections'][number]): string => {
  if (!asked) return say.none;
  const short = say.standingShort[standing];
  return short === '' ? section : `${section} (${short})`;
};

const statusCell = (r: CoverageRow): string =>
  [
    say.status[r.status],
    ...(r.why === null ? [] : [r.why]),
    ...(r.split === null ? [] : [`${splitWords.lead} ${r.split}`]),
    ...(r.questions.length === 0 ? [] : [say.question({ names: r.questions.join('; ') })]),
  ]
    .join('. ')
    .replace(/\.\. /g, '. ');

/** docs/coverage.md: the coverage page as the app shows it. */
export const coveragePage = (): string => {
  const rows = coverageRows();
  return [
    `# ${say.title}`,
    '',
    'Written from the code by `npm run generate`; do not edit.',
    '',
    say.lead,
    '',
    say.counts(coverageCounts(rows)),
    '',
    ...table(
      [say.columns.rule, say.columns.asks, ...EDITIONS.map(String), say.columns.status, say.columns.source],
      rows.map((r) => [r.rule, r.asks, ...r.sections.map(sectionCell), statusCell(r), r.source]),
    ),
    '',
    `## ${say.mattersTitle}`,
    '',
    say.mattersLead,
    '',
    ...table(
      [say.columnsMatters.matter, say.columnsMatters.rules, say.columnsMatters.where],
      MATTERS.map(([matter, rules, where]) => [matter, rules.join(', ') || '–', where]),
    ),
    '',
  ].join('\n');
};
