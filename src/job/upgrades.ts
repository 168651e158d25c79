import { jobWords } from '../words/en/job';
import { type Path, toPointer } from './pointer';

/** The schema number this program writes. */
export const SCHEMA_NOW = 1;

type Raw = Readonly<Record<string, unknown>>;

/** Brings a file from schema `from` to `from + 1`; works on raw data that no schema has looked at yet. */
export interface Upgrade {
  readonly from: number;
  readonly change: (job: Raw) => Raw;
}

/** One a schema number, lowest first. Schema 1 is the first. */
export const UPGRADES: readonly Upgrade[] = [];

/** A key added to schema 1 after its first release: absent in older files. '*' in `at` is every entry of a list. */
export interface Fill {
  readonly at: Path;
  readonly key: string;
  readonly value: unknown;
}

/** Every key added since the first release. */
export const FILLS: readonly Fill[] = [
  { at: ['feeder'], key: 'outside', value: 'unknown' },
  { at: ['code'], key: 'saidBy', value: {} },
  // as they were counted before the question was put
  { at: ['enclosures', '*', 'attached', '*'], key: 'becomes', value: 'moves' },
  { at: ['options', '*', 'enclosure', 'attached', '*'], key: 'becomes', value: 'moves' },
  { at: ['site', 'openings', '*'], key: 'sizes', value: 'measured' },
  { at: ['site', 'obstacles', '*'], key: 'sizes', value: 'measured' },
];

/** Raw data with the steps from its schema number up carried out, and what was done in words. */
export const upgradeJob = (
  job: Raw,
  schema: number,
  upgrades: readonly Upgrade[] = UPGRADES,
): { readonly job: Raw; readonly repairs: readonly string[] } => {
  let at = schema;
  let upgraded = job;
  const repairs: string[] = [];
  for (const step of [...upgrades].sort((a, b) => a.from - b.from)) {
    if (step.from !== at) continue;
    upgraded = { ...step.change(upgraded), schema: at + 1 };
    repairs.push(jobWords.upgraded({ from: at, to: at + 1 }));
    at++;
  }
  return { job: upgraded, repairs };
};

/** A copy with missing keys filled; values that are not objects are left for the schema to refuse. */
const fillAt = (value: unknown, fill: Fill, at: Path, done: Path, repairs: string[]): unknown => {
  const [step, ...rest] = at;
  if (step === '*') {
    if (!Array.isArray(value)) return value;
    return value.map((entry: unknown, i) => fillAt(entry, fill, rest, [...done, i], repairs));
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
  const object = value as Raw;
  if (step !== undefined) {
    if (!Object.hasOwn(object, step)) return value;
    return { ...object, [step]: fillAt(object[step], fill, rest, [...done, step], repairs) };
  }
  if (Object.hasOwn(object, fill.key)) return value;
  repairs.push(jobWords.filled({ path: toPointer([...done, fill.key]), value: JSON.stringify(fill.value) }));
  return { ...object, [fill.key]: fill.value };
};

/** The repair step: keys that older files of the same schema do not have yet. */
export const fillMissing = (
  job: Raw,
  fills: readonly Fill[] = FILLS,
): { readonly job: unknown; readonly repairs: readonly string[] } => {
  const repairs: string[] = [];
  const filled = fills.reduce<unknown>((now, fill) => fillAt(now, fill, fill.at, [], repairs), job);
  return { job: filled, repairs };
};
