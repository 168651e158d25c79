import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { CalcOutput } from '../../../src/calculations/types';
import type { Fault } from '../../../src/units/fault';
import type { Result } from '../../../src/units/result';

type Fact = number | string | boolean | readonly (number | string)[];
export type Expected = Readonly<Record<string, Fact>>;
export interface FieldCase {
  readonly id: string;
  readonly title: string;
  readonly expected: Expected;
}
/** Asks the program what a case asks and holds the answer against the expected facts it names. */
export type Check = (expected: Expected) => void;

/** 64 cases restated from public trade discussions; the source of each stands beside it in the file. */
export const CASES = (
  JSON.parse(readFileSync(join(import.meta.dirname, '../published/field-cases.json'), 'utf8')) as {
    cases: readonly FieldCase[];
  }
).cases;

/** The same facts, noting which were looked at. */
export const watched = (expected: Expected, seen: Set<string>): Expected =>
  new Proxy(expected, {
    get: (facts, key) => {
      seen.add(String(key));
      return facts[String(key)];
    },
  });

/** What a pocket calculation answered. */
export const answerOf = (result: Result<CalcOutput, Fault>): CalcOutput => {
  if (!result.ok) throw new Error(result.error.error.say);
  return result.value;
};
