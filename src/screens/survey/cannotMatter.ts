import type { Job } from '../../job/schema';
import { fieldValue, type Ref } from './ref';

/** Walls without studs behind their face. A furred or finished one has them. */
const STUDLESS: readonly unknown[] = ['poured', 'block'];

/**
 * True where the answer to a field cannot change anything: how far apart the studs of a solid wall stand, and how a
 * wall's sides are built in a state of the house in which it does not stand. Such a field is neither asked nor counted.
 */
export const cannotMatter = (job: Job, of: Ref, field: string): boolean => {
  const value = (at: string): unknown => fieldValue(job, of, at);
  const state = /^\/(?:front|back)\/(now|after)\//.exec(field)?.[1];
  if (state !== undefined) return value(`/exists/${state}`) === false;
  if (field !== '/studSpacing') return false;
  const sides = of.list === '/site/outline' ? ['/face'] : ['/front', '/back'];
  const builds = sides.flatMap((side) =>
    ['now', 'after'].flatMap((when) => (value(`/exists/${when}`) === false ? [] : [value(`${side}/${when}/build`)])),
  );
  return builds.length > 0 && builds.every((build) => STUDLESS.includes(build));
};
