import type { Plan, Result } from '../../facts/result';
import type { Job } from '../../job/schema';
import { specsOf } from './fields/all';
import { fieldValue, LISTS, PARTS, part, pointerOf, type Ref, recordsOf, refAt } from './ref';

/** Something that is not known, and what waits for it. */
export interface Unknown {
  readonly pointer: string;
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

/** Every field of this sheet that is not known. */
const open = (job: Job): { readonly pointer: string; readonly ref: Ref }[] => {
  const refs: Ref[] = [
    ...LISTS.flatMap((list) => recordsOf(job, list).map(({ id }) => ({ list, id }))),
    ...PARTS.map((p) => part(p)),
  ];
  return refs.flatMap((ref) => {
    const fields = specsOf(ref)
      .map((s) => s.field)
      .filter((field) => fieldValue(job, ref, field) === 'unknown');
    const tails = ref.list === '/cableGroups' && fieldValue(job, ref, '/tails') === 'unknown' ? ['/tails'] : [];
    return [...fields, ...tails].map((field) => ({ pointer: `${pointerOf(job, ref)}${field}`, ref }));
  });
};

/**
 * What is not known, ranked by what it blocks: what could stop the job first, then what the routes need, then by how
 * many checks wait; at the end what nothing waits for so far.
 */
export const rankUnknowns = (job: Job, result: Result | null): Unknown[] => {
  const waited = (result?.unknown ?? []).map(
    ({ path, blocks }, at): Unknown => ({
      pointer: path,
      ref: refAt(job, path)?.ref ?? null,
      blocks,
      stops: stopsIn(result?.plans ?? [], blocks),
      at,
    }),
  );
  const seen = new Set(waited.map((u) => u.pointer));
  const rest = open(job)
    .filter(({ pointer }) => !seen.has(pointer))
    .map(({ pointer, ref }): Unknown => ({ pointer, ref, blocks: [], stops: false, at: null }));
  const weight = (u: Unknown) => Number(u.stops) * 1000 + Number(u.blocks.includes('routes')) * 100 + u.blocks.length;
  return [...waited, ...rest]
    .map((u, i) => ({ u, i }))
    .sort((a, b) => weight(b.u) - weight(a.u) || a.i - b.i)
    .map(({ u }) => u);
};
