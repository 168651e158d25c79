import type { z } from 'zod';
import type { Fault } from '../units/fault';
import { jobWords } from '../words/en/job';
import { faultAt, inDocumentOrder, type Path, valueAt } from './pointer';

/** Something wrong at one place of a job file. */
export interface Problem {
  readonly type: string;
  readonly path: Path;
  readonly say: string;
}

/** The problem a reader of the file meets first. */
export const firstFault = (document: unknown, problems: readonly Problem[]): Fault | undefined => {
  const compare = inDocumentOrder(document);
  const first = [...problems].sort((a, b) => compare(a.path, b.path))[0];
  return first && faultAt(first.type, first.path, first.say);
};

type Issue = z.core.$ZodIssue;

const THINGS: Readonly<Record<string, string>> = {
  string: jobWords.aText,
  number: jobWords.aNumber,
  int: jobWords.aWholeNumber,
  boolean: jobWords.trueOrFalse,
  array: jobWords.aList,
  tuple: jobWords.aList,
  object: jobWords.anObject,
  record: jobWords.anObject,
  null: jobWords.nothing,
};
const thing = (kind: string): string => THINGS[kind] ?? kind;

/** What was found, short enough to print. */
export const inShort = (value: unknown): string => {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) return jobWords.anObject;
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
};

const limited = (origin: string, limit: number, least: boolean, inclusive: boolean): string => {
  if (origin === 'array') return jobWords.aListOf({ limit, least });
  if (origin === 'string') return jobWords.aTextOf({ limit, least });
  const v = { thing: thing(origin), limit };
  if (least) return inclusive ? jobWords.atLeast(v) : jobWords.above(v);
  return inclusive ? jobWords.atMost(v) : jobWords.below(v);
};

const expectedBy = (issue: Issue): string => {
  switch (issue.code) {
    case 'invalid_type':
      return thing(issue.expected);
    case 'invalid_value':
      return jobWords.or({ choices: issue.values.map((v) => JSON.stringify(v)) });
    case 'too_small':
      return limited(issue.origin, Number(issue.minimum), true, issue.inclusive ?? true);
    case 'too_big':
      return limited(issue.origin, Number(issue.maximum), false, issue.inclusive ?? true);
    case 'invalid_union':
      return issue.errors.length > 0
        ? jobWords.or({ choices: [...new Set(issue.errors.flatMap((branch) => branch.slice(0, 1).map(expectedBy)))] })
        : jobWords.or({ choices: optionsOf(issue) });
    case 'invalid_key':
      return jobWords.aShortKey;
    default:
      return issue.message;
  }
};
const optionsOf = (issue: Issue): string[] => {
  const options = 'options' in issue && Array.isArray(issue.options) ? (issue.options as unknown[]) : [];
  return options.map((o) => JSON.stringify(o));
};

/**
 * Of a union's branches the one that was meant is the one whose own fault lies deeper or is not about the value's type:
 * then that fault is reported in its place. Where none was, all that could stand here is named.
 */
const meant = (issue: Issue): readonly Issue[] | undefined => {
  if (issue.code !== 'invalid_union') return undefined;
  return issue.errors.find((branch) =>
    branch.some((i) => i.path.length > 0 || !['invalid_type', 'invalid_value', 'invalid_union'].includes(i.code)),
  );
};

/** Nothing but literal values could stand here. */
const literalsOnly = (issue: Issue): boolean =>
  issue.code === 'invalid_value' ||
  (issue.code === 'invalid_union' && issue.errors.every((branch) => branch.every(literalsOnly)));

const typeOf = (issue: Issue, value: unknown): string => {
  if (value === undefined) return 'missing-key';
  if (issue.code === 'too_small' || issue.code === 'too_big') return 'out-of-range';
  if (issue.code === 'invalid_key') return 'wrong-key';
  return literalsOnly(issue) ? 'wrong-value' : 'wrong-type';
};

const problemsOf = (document: unknown, issue: Issue, above: Path): Problem[] => {
  const path = [...above, ...issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step))];
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => ({ type: 'unknown-key', path: [...path, key], say: jobWords.unknownKey({ key }) }));
  const inner = meant(issue);
  if (inner) return inner.flatMap((i) => problemsOf(document, i, path));
  const value = valueAt(document, path);
  const expected = expectedBy(issue);
  const missing = value === undefined && !Array.isArray(valueAt(document, path.slice(0, -1)));
  const say = missing
    ? jobWords.missingKey({ key: String(path.at(-1) ?? ''), expected })
    : jobWords.expected({ expected, found: inShort(value) });
  return [{ type: typeOf(issue, value), path, say }];
};

/** What the schema found wrong, in our words. */
export const schemaProblems = (document: unknown, issues: readonly Issue[]): Problem[] =>
  issues.flatMap((issue) => problemsOf(document, issue, []));
