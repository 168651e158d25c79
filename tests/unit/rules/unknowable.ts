import { jobSchema } from '../../../src/job/schema';
import { changed } from './support';

const NOT_A_WORD = 'zzz not a word of the job file';
/** Texts that may be 'unknown' although any text is valid there. */
const FREE_TEXTS = new Set(['size', 'answer']);

const fits = (job: object, pointer: string, value: unknown): boolean =>
  jobSchema.safeParse(changed(job, { [pointer]: value })).success;

function* places(value: unknown, at: string): Generator<readonly [pointer: string, key: string, value: unknown]> {
  if (typeof value !== 'object' || value === null) return;
  for (const [key, inner] of Object.entries(value)) {
    const pointer = `${at}/${key}`;
    yield [pointer, key, inner];
    yield* places(inner, pointer);
  }
}

/** Every known field of a job, below some places, that could be 'unknown': found by asking the schema. */
export const unknowable = (job: object, under: readonly string[] = ['/']): string[] =>
  [...places(job, '')]
    .filter(
      ([pointer, key, value]) =>
        value !== 'unknown' &&
        under.some((start) => pointer.startsWith(start)) &&
        !pointer.startsWith('/notes') &&
        !pointer.startsWith('/code/amendments') &&
        fits(job, pointer, 'unknown') &&
        (!fits(job, pointer, NOT_A_WORD) || (FREE_TEXTS.has(key) && typeof value === 'string')),
    )
    .map(([pointer]) => pointer);
