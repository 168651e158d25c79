import type { Fault } from '../units/fault';
import { err, ok, type Result } from '../units/result';
import { jobWords } from '../words/en/job';
import { firstFault, inShort, schemaProblems } from './faults';
import { measureProblems } from './measures';
import { faultAt, type Path, stepInto, toPointer } from './pointer';
import { readJson } from './readJson';
import { danglingReferences, duplicateIds } from './references';
import { type Job, jobSchema } from './schema';
import { fillMissing, SCHEMA_NOW, upgradeJob } from './upgrades';

export interface Opened {
  readonly job: Job;
  /** What was changed to make the file readable, one sentence each. */
  readonly repairs: readonly string[];
}

/** The border: text from outside becomes a job that holds together, or a located fault. */
export const openJob = (text: string): Result<Opened, Fault> => {
  const read = readJson(text);
  if (!read.ok) return read;
  const known = recognize(read.value);
  if (!known.ok) return known;
  const upgraded = upgradeJob(known.value.job, known.value.schema);
  const filled = fillMissing(upgraded.job);
  const checked = checkJob(filled.job);
  if (!checked.ok) return checked;
  const repairs = [...upgraded.repairs, ...filled.repairs, ...roundings(filled.job, checked.value, [])];
  return ok({ job: checked.value, repairs });
};

/** Is it a job file, and of a schema this program knows? */
const recognize = (raw: unknown): Result<{ job: Readonly<Record<string, unknown>>; schema: number }, Fault> => {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw))
    return err(faultAt('foreign-format', [], jobWords.notAnObject));
  const job = raw as Readonly<Record<string, unknown>>;
  const format = stepInto(job, 'format');
  if (format !== 'backboard-job')
    return err(faultAt('foreign-format', ['format'], jobWords.foreignFormat({ found: inShort(format) })));
  const schema = stepInto(job, 'schema');
  if (typeof schema !== 'number' || !Number.isInteger(schema) || schema < 1)
    return err(faultAt('wrong-value', ['schema'], jobWords.badVersion({ found: inShort(schema) })));
  if (schema > SCHEMA_NOW)
    return err(faultAt('newer-version', ['schema'], jobWords.newerVersion({ found: schema, known: SCHEMA_NOW })));
  return ok({ job, schema });
};

/** Data of the present schema: keys and types first, then ids and references, then measures. Lengths come back in whole 1/64 in. */
export const checkJob = (raw: unknown): Result<Job, Fault> => {
  const parsed = jobSchema.safeParse(raw);
  if (!parsed.success) return err(firstFault(raw, schemaProblems(raw, parsed.error.issues))!);
  const job = parsed.data;
  // while an id stands twice, what a name leads to is not settled
  const fault =
    firstFault(raw, duplicateIds(job)) ?? firstFault(raw, [...danglingReferences(job), ...measureProblems(job)]);
  return fault ? err(fault) : ok(job);
};

/** Every number the schema rounded, in document order. */
const roundings = (raw: unknown, parsed: unknown, path: Path): string[] => {
  if (typeof raw === 'number' && typeof parsed === 'number')
    return raw === parsed ? [] : [jobWords.rounded({ path: toPointer(path), from: raw, to: parsed })];
  if (typeof raw !== 'object' || raw === null) return [];
  const steps = Array.isArray(raw) ? raw.keys() : Object.keys(raw);
  return [...steps].flatMap((step) => roundings(stepInto(raw, step), stepInto(parsed, step), [...path, step]));
};
