import type { Plan, Result } from '../../facts/result';
import type { Job } from '../../job/schema';
import { cannotMatter } from './cannotMatter';
import { specsOf } from './fields/all';
import { fieldValue, LISTS, PARTS, part, pointerOf, type Ref, recordsOf, refAt } from './ref';

/** Something that is not known, and what waits for it. */
export interface Unknown {
  readonly pointer: string;
  /** Further fields of the same thing for which nothing waits either. */
  readonly also: readonly string[];
  /** The thing on this sheet it belongs to; null where it is a circuit's or a home run's. */
  readonly ref: Ref | null;
  /** Rules by id, and `routes`. */
  readonly blocks: readonly string[];
  /** A check that would stop the job cannot be told without it. */
  readonly stops: boolean;
  /** Its place among the unknowns of the result; null where only this sheet knows it is open. */
  readonly at: number | null;
}

const stopsIn = (plans: readonly Plan[], rules: readonly string[]): boolean =>
  plans.some((p) =>
    p.findings.some((f) => f.effect === 'stops the job' && f.outcome === 'cannot be told' && rules.includes(f.rule)),
  );

/** Every field of this sheet that is not known, thing by thing. */
const open = (job: Job): { readonly ref: Ref; readonly pointers: readonly string[] }[] => {
  const refs: Ref[] = [
    ...PARTS.map((p) => part(p)),
    ...LISTS.flatMap((list) => recordsOf(job, list).map(({ id }) => ({ list, id }))),
  ];
  return refs.map((ref) => ({
    ref,
    pointers: unknownFields(job, ref).map((field) => `${pointerOf(job, ref)}${field}`),
  }));
};

/** Its fields that are not known and can matter, by their place in the record. */
export const unknownFields = (job: Job, ref: Ref): string[] => {
  const fields = specsOf(ref)
    .map((s) => s.field)
    .filter((field) => fieldValue(job, ref, field) === 'unknown' && !cannotMatter(job, ref, field));
  return ref.list === '/cableGroups' && fieldValue(job, ref, '/tails') === 'unknown' ? [...fields, '/tails'] : fields;
};

/**
 * What is not known, ranked by what it blocks: what could stop the job first, then what the routes need, then by how
 * many checks wait; at the end what nothing waits for so far.
 */
export const rankUnknowns = (job: Job, result: Result | null): Unknown[] => {
  const waited = (result?.unknown ?? []).map(
    ({ path, blocks }, at): Unknown => ({
      pointer: path,
      also: [],
      ref: refAt(job, path)?.ref ?? null,
      blocks,
      stops: stopsIn(result?.plans ?? [], blocks),
      at,
    }),
  );
  const seen = new Set(waited.map((u) => u.pointer));
  const rest = open(job).flatMap(({ ref, pointers }): Unknown[] => {
    const [pointer, ...also] = pointers.filter((p) => !seen.has(p));
    return pointer === undefined ? [] : [{ pointer, also, ref, blocks: [], stops: false, at: null }];
  });
  const weight = (u: Unknown) => Number(u.stops) * 1000 + Number(u.blocks.includes('routes')) * 100 + u.blocks.length;
  return [...waited, ...rest]
    .map((u, i) => ({ u, i }))
    .sort((a, b) => weight(b.u) - weight(a.u) || a.i - b.i)
    .map(({ u }) => u);
};
