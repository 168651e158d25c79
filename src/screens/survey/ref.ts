import type { Named } from '../../job/dependents';
import { fromPointer, valueAt } from '../../job/pointer';
import type { Job } from '../../job/schema';
import type { Id } from '../../units/types';

/** What can be selected on the survey sheet: a record of a list, or with an empty list a part of the job there is one of. */
export type Ref = Named;

/** The lists of the survey in the order a survey is taken. */
export const LISTS = [
  '/site/outline',
  '/site/partitions',
  '/site/openings',
  '/site/areas',
  '/site/framing',
  '/site/bays',
  '/site/obstacles',
  '/enclosures',
  '/cableGroups',
  '/site/sleeves',
  '/house/loads',
] as const;
/** Parts of the job there is one of, by pointer. */
export const PARTS = ['/survey', '/code', '/house', '/feeder'] as const;
export type Part = (typeof PARTS)[number];

export const part = (id: Part): Ref => ({ list: '', id });
export const sameRef = (a: Ref | null, b: Ref | null): boolean =>
  a !== null && b !== null && a.list === b.list && a.id === b.id;

export const recordsOf = (job: Job, list: string): readonly { readonly id: Id }[] => {
  const found = valueAt(job, fromPointer(list) ?? []);
  return Array.isArray(found) ? (found as { readonly id: Id }[]) : [];
};

/** Where the record is now; undefined when it is gone. */
export const pointerOf = (job: Job, ref: Ref): string | undefined => {
  if (ref.list === '') return ref.id;
  const at = recordsOf(job, ref.list).findIndex((r) => r.id === ref.id);
  return at < 0 ? undefined : `${ref.list}/${at}`;
};

/** The value of a field of it. */
export const fieldValue = (job: Job, ref: Ref, field: string): unknown => {
  const pointer = pointerOf(job, ref);
  return pointer === undefined ? undefined : valueAt(job, fromPointer(`${pointer}${field}`) ?? []);
};

/** The thing a place of the job belongs to, and the field of it. */
export const refAt = (job: Job, pointer: string): { readonly ref: Ref; readonly field: string } | undefined => {
  for (const list of LISTS) {
    const found = new RegExp(`^${list}/(\\d+)(/.*)?$`).exec(pointer);
    const record = found && recordsOf(job, list)[Number(found[1])];
    if (record) return { ref: { list, id: record.id }, field: found[2] ?? '' };
  }
  const one = PARTS.find((p) => pointer.startsWith(`${p}/`));
  return one && { ref: part(one), field: pointer.slice(one.length) };
};

/** A name no record of the list has yet: the word itself, or the word and a number. */
export const freshId = (job: Job, list: string, word: string): Id => {
  // walls of the room and partitions share their names
  const lists =
    list === '/site/outline' || list === '/site/partitions' ? ['/site/outline', '/site/partitions'] : [list];
  const taken = new Set(lists.flatMap((l) => recordsOf(job, l).map((r) => r.id)));
  const base = word.replaceAll(' ', '-');
  if (!taken.has(base)) return base;
  for (let n = 2; ; n++) if (!taken.has(`${base}-${n}`)) return `${base}-${n}`;
};
