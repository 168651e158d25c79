import { ASKED, agree, compare, SKIPPED } from './examples/all';
import type { Value } from './examples/asking';
import { EXAMPLES, type Example } from './examples/published';
import { SPOT_ANSWERS, SPOTS } from './examples/spots';

const DIGITS = 1e4;
const one = (value: number | string | boolean): string =>
  typeof value === 'number'
    ? String(Math.round(value * DIGITS) / DIGITS)
    : value === true
      ? 'yes'
      : value === false
        ? 'no'
        : value;
const shown = (value: Value | undefined): string =>
  value === undefined || value === null ? '–' : typeof value === 'object' ? value.map(one).join(' · ') : one(value);
const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');
const row = (...cells: readonly string[]): string => `| ${cells.map(cell).join(' | ')} |`;

const PRINT: Readonly<Record<Example['agrees'], string>> = {
  yes: '',
  partly: 'The print is right in part',
  no: 'The print is wrong',
  no_key: 'No answer is printed; recomputed',
};
const sourceOf = ({ source, section, agrees, published }: Example): string => {
  const from = `${source.publication}: ${source.title}; ${section}`;
  return agrees === 'yes' ? from : `${from}. ${PRINT[agrees]}${agrees === 'no_key' ? '' : `: “${published}”`}.`;
};

const exampleRows = (example: Example): string[] =>
  (ASKED[example.id] ?? []).map((asked, i) => {
    const { what, wanted, ours, agrees, implied, by } = compare(example, asked);
    const first = i === 0;
    return row(
      first ? example.id : '',
      implied ? `${what} (implied)` : what,
      shown(wanted),
      shown(ours),
      agrees ? 'yes' : '**no**',
      by,
      first ? sourceOf(example) : '',
    );
  });

const HEAD = ['example', 'figure', 'published', 'ours', 'agree', 'asked of', 'source'];
const rule = (count: number): string => row(...Array<string>(count).fill('---'));

const topics = (): string[] => [...new Set(EXAMPLES.filter((e) => !(e.id in SKIPPED)).map((e) => e.topic))];
const topicPart = (topic: string): string[] => [
  `## ${topic[0]!.toUpperCase()}${topic.slice(1)}`,
  '',
  row(...HEAD),
  rule(HEAD.length),
  ...EXAMPLES.filter((e) => e.topic === topic && !(e.id in SKIPPED)).flatMap(exampleRows),
  '',
];

const counted = () => {
  const open = EXAMPLES.filter((e) => !(e.id in SKIPPED));
  const rows = open.flatMap((e) => (ASKED[e.id] ?? []).map((asked) => compare(e, asked)));
  const spots = SPOTS.map((s) => agree(SPOT_ANSWERS[s.assertion]?.() ?? null, s.expected, 0));
  return {
    examples: open.length,
    figures: rows.length,
    agreeing: rows.filter((r) => r.agrees).length,
    byCalc: rows.filter((r) => r.by.startsWith('calc ')).length,
    spots: spots.length,
    spotsAgreeing: spots.filter(Boolean).length,
  };
};

/** docs/reference-checks.md: every published example and figure beside what the product says. */
export const referencePage = (): string => {
  const n = counted();
  return [
    '# Reference checks',
    '',
    'Written by `npm run generate` from `tests/reference/examples`; a test holds it against the code. Published examples are copied unchanged, with hashes, into `tests/reference/published`.',
    '',
    `${EXAMPLES.length} published worked examples: ${n.examples} are asked, ${Object.keys(SKIPPED).length} are left out with a reason below. Of their ${n.figures} figures ${n.agreeing} agree; ${n.byCalc} are answered by \`npm run --silent calc -- NAME\`, through the same text the command reads, the others by the function the plan uses. “Published” is what the example should give: where the print is wrong, the source column quotes it. A figure marked “implied” follows from the example and is not listed in it.`,
    '',
    `${n.spots} spot checks of published tables: ${n.spotsAgreeing} agree. Every cell of those tables is held by \`tests/reference/electricalTables.test.ts\`, \`mechanicalTables.test.ts\` and \`ruleTables.test.ts\`, through the product's look-up functions.`,
    '',
    ...topics().flatMap(topicPart),
    '## Left out',
    '',
    row('example', 'topic', 'why', 'source'),
    rule(4),
    ...EXAMPLES.filter((e) => e.id in SKIPPED).map((e) => row(e.id, e.topic, SKIPPED[e.id]!, sourceOf(e))),
    '',
    '## Spot checks of tables',
    '',
    row('figure', 'published', 'ours', 'agree', 'table file'),
    rule(5),
    ...SPOTS.map((s) => {
      const ours = SPOT_ANSWERS[s.assertion]?.();
      return row(
        s.assertion,
        shown(s.expected),
        shown(ours),
        agree(ours ?? null, s.expected, 0) ? 'yes' : '**no**',
        s.file,
      );
    }),
    '',
  ].join('\n');
};
