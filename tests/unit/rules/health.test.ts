import { readdirSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseSync } from 'oxc-parser';
import { describe, expect, test } from 'vitest';
import { RULES } from '../../../src/rules/list';
import { NOT_COVERED } from '../../../src/standards/coverage';
import { RULE_IDS } from '../../../src/standards/sections';

const ROOT = fileURLToPath(new URL('../../../src/rules', import.meta.url));
const FILES = readdirSync(ROOT, { recursive: true, encoding: 'utf8' })
  .filter((f) => f.endsWith('.ts'))
  .sort();
const RULE_FILES = FILES.filter((f) => f.endsWith('.rule.ts'));

interface Node {
  readonly type: string;
  readonly [key: string]: unknown;
}
const isNode = (x: unknown): x is Node => typeof x === 'object' && x !== null && 'type' in x;

function* nodes(x: unknown): Generator<Node> {
  if (Array.isArray(x)) for (const item of x) yield* nodes(item);
  if (!isNode(x)) return;
  yield x;
  for (const [key, inner] of Object.entries(x)) if (key !== 'parent') yield* nodes(inner);
}

const parse = (source: string): unknown => {
  const { program, errors } = parseSync('rule.ts', source);
  expect(errors).toEqual([]);
  return program;
};

/** Numbers written in a file, other than 0 and 1. */
const numbersIn = (source: string): unknown[] =>
  [...nodes(parse(source))]
    .filter((n) => n.type === 'Literal' && (typeof n.value === 'number' || typeof n.value === 'bigint'))
    .map((n) => n.value)
    .filter((value) => value !== 0 && value !== 1);

const speaksOfYear = (x: unknown): boolean =>
  isNode(x) &&
  ((x.type === 'Identifier' && (x.name === 'edition' || x.name === 'year')) ||
    (x.type === 'MemberExpression' && speaksOfYear(x.property) && x.computed !== true));

/** Comparisons and branches on a code year. What a year does is looked up (`TABLE[edition]`), never compared. */
const yearComparisonsIn = (source: string): string[] =>
  [...nodes(parse(source))].flatMap((n) => {
    const compared = n.type === 'BinaryExpression' && (speaksOfYear(n.left) || speaksOfYear(n.right));
    const switched = n.type === 'SwitchStatement' && speaksOfYear(n.discriminant);
    return compared || switched ? [n.type] : [];
  });

/** Numbers in what rules share that are no requirement of a code. 2 is the height in a point. */
const SHARED_NUMBERS: Readonly<Record<string, { readonly values: readonly number[]; readonly why: string }>> = {
  'reading.ts': { values: [240], why: 'the voltage of a two-pole circuit, as the survey writes it' },
  'run.ts': { values: [100], why: 'how effects are weighed against the number of cures' },
  'feeder/feederReading.ts': { values: [60, 75], why: 'the two markings terminals have, as the survey writes them' },
  'feeder/feederWay.ts': { values: [12], why: 'inches in a foot' },
  'place/placeReading.ts': { values: [16], why: 'sixteenths of an inch, for what is printed' },
};

const read = (file: string) => readFileSync(`${ROOT}/${file}`, 'utf8');

describe('a rule file', () => {
  test.each(RULE_FILES)('%s holds no number but 0 and 1', (file) => {
    expect(numbersIn(read(file))).toEqual([]);
  });
  test.each(FILES)('%s compares no code year', (file) => {
    expect(yearComparisonsIn(read(file))).toEqual([]);
  });
  test('what rules share holds no figure of a code either: places in a point, and the few numbers named here', () => {
    const found = FILES.filter((f) => !RULE_FILES.includes(f)).flatMap((f) =>
      numbersIn(read(f))
        .filter((n) => n !== 2 && !(SHARED_NUMBERS[f]?.values ?? []).includes(n as number))
        .map((n) => `${f}: ${n}`),
    );
    expect(found).toEqual([]);
  });
  test('the check sees a number and a comparison where there is one', () => {
    expect(numbersIn('export const a = (x: number) => x <= 36 || x === -1;')).toEqual([36]);
    expect(yearComparisonsIn('const a = (f: { edition: number }) => f.edition >= 2020;')).toEqual(['BinaryExpression']);
    expect(yearComparisonsIn('const a = (t: unknown[], edition: number) => t[edition] === 1;')).toEqual([]);
  });
});

describe('the register', () => {
  test('one rule a file, but for the reminders', () => {
    const own = RULES.filter((r) => RULE_FILES.some((f) => read(f).includes(`id: '${r.id}'`)));
    expect(RULE_FILES.length).toBe(own.length);
    expect(new Set(RULE_FILES.map((f) => basename(f))).size).toBe(RULE_FILES.length);
  });
  test('no rule id is passed in silence: checked or registered as not covered, never both', () => {
    const checked = RULES.map((r) => r.id);
    expect(new Set(checked).size).toBe(checked.length);
    expect([...checked, ...NOT_COVERED.map((n) => n.rule)].sort()).toEqual([...RULE_IDS]);
    for (const { why } of NOT_COVERED) expect(why).not.toBe('');
  });
});
