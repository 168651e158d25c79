import { RULES } from '../../../src/rules/list';
import type { RuleId } from '../../../src/standards/sections';
import { compareText } from '../../../src/units/order';
import { CELL_NAMES, CELLS, type Cell, EMPTY } from './emptyCells';
import { FIXTURES } from './fixtures/all';

const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;

/** The situations that produce an outcome, or why there is none. */
const producedBy = (id: RuleId, cell: Cell): string => {
  const { outcome, effect } = CELLS[cell];
  const made = FIXTURES.filter((f) => f.rule === id && f.outcome === outcome && f.effect === effect);
  return made.length > 0 ? made.map((f) => f.name).join(' · ') : `never: ${EMPTY[id]?.[cell] ?? ''}`;
};

/** docs/rules.md: every rule, each outcome and effect, and the test situation that produces it or the reason why none does. */
export const rulesPage = (): string =>
  [
    '# What each rule may say',
    '',
    'Written from the code by `npm run generate`; do not edit. What each rule asks for, its section by code year and',
    'what is not checked: [coverage.md](coverage.md).',
    '',
    'A rule looks at one thing at a time (the panel, a circuit, a cable, a box, a row, the feeder, the job) and has four',
    'outcomes. What each does to the job is its effect. Each line names the situations in `tests/unit/rules/fixtures`',
    'that produce it; where there are none, it says why a rule never says so. A yes or no recorded on site turns any',
    '“cannot be told” into “holds” or “fails”, whatever the rule.',
    '',
    row(['rule', 'outcome', 'effect', 'produced by']),
    row(['---', '---', '---', '---']),
    ...RULES.map((r) => r.id)
      .sort(compareText)
      .flatMap((id) =>
        CELL_NAMES.map((cell) => row([id, CELLS[cell].outcome, CELLS[cell].effect ?? '–', producedBy(id, cell)])),
      ),
    '',
  ].join('\n');
