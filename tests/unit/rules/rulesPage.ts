import { RULES } from '../../../src/rules/list';
import { NOT_COVERED } from '../../../src/standards/coverage';
import { RULE_IDS, sectionOf } from '../../../src/standards/sections';
import { compareText } from '../../../src/units/order';
import { EDITIONS } from '../../../src/units/types';
import { FIXTURES } from './fixtures/all';
import type { Fixture } from './fixtures/fixture';

const OUTCOMES: readonly Fixture['outcome'][] = ['fails', 'cannot be told', 'holds', 'does not apply'];

const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
const table = (head: readonly string[], rows: readonly (readonly string[])[]): string[] => [
  row(head),
  row(head.map(() => '---')),
  ...rows.map(row),
];

const sections = (): string[] =>
  table(
    ['rule', ...EDITIONS.map(String)],
    RULE_IDS.map((id) => [
      id,
      ...EDITIONS.map((edition) => {
        const { section, standing } = sectionOf(id, edition);
        return section === 'none' || standing === 'confirmed' ? section : `${section} (${standing})`;
      }),
    ]),
  );

const outcomes = (): string[] =>
  table(
    ['rule', 'outcome', 'effect', 'fixtures that produce it'],
    RULES.map((r) => r.id)
      .sort(compareText)
      .flatMap((id) =>
        OUTCOMES.flatMap((outcome) => {
          const made = FIXTURES.filter((f) => f.rule === id && f.outcome === outcome);
          const effects = [...new Set(made.map((f) => f.effect))].sort((a, b) => compareText(a ?? '', b ?? ''));
          return effects.map((effect) => [
            id,
            outcome,
            effect ?? '–',
            made
              .filter((f) => f.effect === effect)
              .map((f) => f.name)
              .join(' · '),
          ]);
        }),
      ),
  );

/** docs/rules.md: every rule, its section by code year, and the test situation that produces each of its outcomes. */
export const rulesPage = (): string =>
  [
    '# Rules',
    '',
    'Written from the code by `npm run generate`; do not edit. The requirements are stated in our own words with their',
    'section; the adopted code book and local amendments always win. No 2026 book was read: its numbers are unverified.',
    '',
    '## Outcomes',
    '',
    'A rule looks at one thing at a time (the panel, a circuit, a cable, a box, a row, the feeder, the job) and has four',
    'outcomes. What each does to the job is its effect. Each line names the situations in `tests/unit/rules/fixtures`',
    'that produce it.',
    '',
    ...outcomes(),
    '',
    '## Sections by code year',
    '',
    'NEC (NFPA 70) unless the cell says otherwise; `none` where that year asks for nothing.',
    '',
    ...sections(),
    '',
    '## Not covered',
    '',
    ...table(
      ['rule', 'why'],
      [...NOT_COVERED].sort((a, b) => compareText(a.rule, b.rule)).map(({ rule, why }) => [rule, why]),
    ),
    '',
  ].join('\n');
