import type { Fault } from '../units/fault';
import { err, ok, type Result } from '../units/result';
import { jobWords } from '../words/en/job';
import { inShort } from './faults';
import { asIndex, faultAt, fromPointer, type Path, stepInto, valueAt } from './pointer';
import { FORBIDDEN_KEYS } from './readJson';

/** Changes to plain data by JSON pointer; what is not touched keeps its identity. */

/** Records whose keys are the contractor's own. */
const OPEN_RECORDS: ReadonlySet<string> = new Set(['/code/amendments', '/people/contractor', '/people/customer']);

const noPlace = (pointer: string): Result<never, Fault> =>
  err({ error: { type: 'no-such-place', path: pointer, say: jobWords.noSuchPlace } });

const put = (value: unknown, path: Path, leaf: unknown): unknown => {
  const [step, ...rest] = path;
  if (step === undefined) return leaf;
  const changed = put(stepInto(value, step), rest, leaf);
  if (Array.isArray(value)) return value.with(asIndex(step)!, changed);
  return { ...(value as object), [step]: changed };
};

/** A value put at a place that exists, or under a new key of an open record. */
export const setValue = (document: unknown, pointer: string, value: unknown): Result<unknown, Fault> => {
  const path = fromPointer(pointer);
  const last = path?.at(-1);
  if (!path || last === undefined || value === undefined) return noPlace(pointer);
  if (FORBIDDEN_KEYS.has(last)) return err(faultAt('forbidden-key', path, jobWords.forbiddenKey({ key: last })));
  const exists = valueAt(document, path) !== undefined;
  if (!exists && !OPEN_RECORDS.has(pointer.slice(0, pointer.lastIndexOf('/')))) return noPlace(pointer);
  return ok(put(document, path, value));
};

/** Each in the document the ones before it have left; the first that has no place stops them all. */
export const setValues = (
  document: unknown,
  values: readonly { readonly path: string; readonly value: unknown }[],
): Result<unknown, Fault> =>
  values.reduce<Result<unknown, Fault>>(
    (so, { path, value }) => (so.ok ? setValue(so.value, path, value) : so),
    ok(document),
  );

const idOf = (record: unknown): unknown => stepInto(record, 'id');

const listAt = (document: unknown, pointer: string): { path: Path; list: readonly unknown[] } | undefined => {
  const path = fromPointer(pointer);
  const list = path && valueAt(document, path);
  return path && Array.isArray(list) ? { path, list } : undefined;
};

export const addRecord = (
  document: unknown,
  pointer: string,
  record: unknown,
  before: string | null,
): Result<unknown, Fault> => {
  const found = listAt(document, pointer);
  if (!found) return noPlace(pointer);
  if (idOf(record) === undefined)
    return err(
      faultAt('wrong-type', found.path, jobWords.expected({ expected: jobWords.aRecord, found: inShort(record) })),
    );
  const at = before === null ? found.list.length : found.list.findIndex((r) => idOf(r) === before);
  if (at < 0) return noPlace(`${pointer}/${before}`);
  return ok(put(document, found.path, found.list.toSpliced(at, 0, record)));
};

export const removeRecord = (document: unknown, pointer: string, id: string): Result<unknown, Fault> => {
  const found = listAt(document, pointer);
  if (found) {
    const kept = found.list.filter((r) => idOf(r) !== id);
    return kept.length === found.list.length ? noPlace(`${pointer}/${id}`) : ok(put(document, found.path, kept));
  }
  const path = fromPointer(pointer);
  if (!path || !OPEN_RECORDS.has(pointer) || valueAt(document, [...path, id]) === undefined)
    return noPlace(`${pointer}/${id}`);
  const { [id]: _, ...rest } = valueAt(document, path) as Record<string, unknown>;
  return ok(put(document, path, rest));
};
