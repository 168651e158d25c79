import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { CalcOutput } from '../../src/calculations/types';
import type { Fault } from '../../src/units/fault';
import type { Result } from '../../src/units/result';

/** One published worked example: what was printed, where, and what it should be. */
export interface Example {
  readonly id: string;
  readonly section: string;
  readonly expected: Readonly<Record<string, unknown>>;
  readonly source: { readonly publication: string; readonly title: string; readonly where: string };
  readonly published: string;
  readonly agrees: 'yes' | 'no' | 'partly';
}

const all = JSON.parse(
  readFileSync(join(import.meta.dirname, '../reference/published/worked-examples.json'), 'utf8'),
) as Example[];

/** Every example of the topics named by their prefix: 'AM', 'FD'… */
export const examplesOf = (...prefixes: readonly string[]): Example[] =>
  all.filter((e) => prefixes.includes(e.id.split('-')[0]!));

/** The name of a test: the example, where it was printed and, where the print is wrong, what it said. */
export const titleOf = (e: Example): string =>
  `${e.id} ${e.source.title} (${e.source.publication}; ${e.source.where})${e.agrees === 'yes' ? '' : `; printed: ${e.published}`}`;

export const figuresOf = (answer: Result<CalcOutput, Fault>): CalcOutput['figures'] & { outcome: string } => {
  if (!answer.ok) throw new Error(`${answer.error.error.path}: ${answer.error.error.say}`);
  return { ...answer.value.figures, outcome: answer.value.outcome };
};

/** A figure of an example: it must be there. */
export const num = (value: unknown): number => {
  if (typeof value !== 'number') throw new Error(`not a figure: ${value}`);
  return value;
};

type Expected = Example['expected'];
/**
 * One test an example, named by its source. Every example of the topics is asserted, or left out with a reason why this
 * product does not answer it.
 */
export const runExamples = (
  prefixes: readonly string[],
  checks: Readonly<Record<string, (expected: Expected) => void>>,
  skipped: Readonly<Record<string, string>> = {},
): void => {
  const examples = examplesOf(...prefixes);
  describe(`published worked examples: ${prefixes.join(', ')}`, () => {
    for (const example of examples) {
      const check = checks[example.id];
      if (check) test(titleOf(example), () => check(example.expected));
    }
    test('every example is asserted or left out for a stated reason, never both', () => {
      const answered = [...Object.keys(checks), ...Object.keys(skipped)].sort();
      expect(answered).toEqual(examples.map((e) => e.id).sort());
    });
    test('two or more of every topic are asserted', () => {
      for (const prefix of prefixes)
        expect(Object.keys(checks).filter((id) => id.startsWith(`${prefix}-`)).length).toBeGreaterThanOrEqual(2);
    });
  });
};
