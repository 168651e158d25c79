import type { Id } from '../units/types';
import type { Job } from './schema';

/** The pictures of a job's photos: by far its longest texts, and nothing that is planned hangs on them. */
export type Pictures = ReadonlyMap<Id, string>;

export const picturesOf = (job: Job): Pictures =>
  new Map(job.photos.flatMap(({ id, data }) => (data === null ? [] : [[id, data] as const])));

/** The same job without pictures; the very same one where it has none. */
export const withoutPictures = (job: Job): Job =>
  job.photos.some((p) => p.data !== null)
    ? { ...job, photos: job.photos.map((photo) => ({ ...photo, data: null })) }
    : job;

/** Photos without a picture get the one known by their id. */
export const withPictures = (job: Job, pictures: Pictures): Job =>
  job.photos.some((p) => p.data === null && pictures.has(p.id))
    ? { ...job, photos: job.photos.map((p) => ({ ...p, data: p.data ?? pictures.get(p.id) ?? null })) }
    : job;
