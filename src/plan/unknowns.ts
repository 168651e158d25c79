import type { Result } from '../facts/result';
import { fieldSentence } from '../job/names';
import { fromPointer, valueAt } from '../job/pointer';
import type { Job } from '../job/schema';
import { compareText } from '../units/order';
import { unratedPaths } from './missing';
import type { Planned } from './planOption';

const ROUTES = 'routes';
const PRICE = 'price';

/** A price waits for entries of its book too, and takes for granted also what is told. */
const isUntold = (job: Job, path: string): boolean => valueAt(job, fromPointer(path) ?? []) === 'unknown';

/** What the survey leaves open and what waits for it: rules by id, the load, the routes, the price. One line a field, by path, and in words. */
export const unknownsOf = (job: Job, planned: readonly Planned[]): Result['unknown'] => {
  const blocks = new Map<string, Set<string>>();
  const add = (path: string, what: string) => blocks.set(path, (blocks.get(path) ?? new Set()).add(what));
  for (const { plan, verdicts, answer } of planned) {
    for (const v of verdicts) for (const path of v.unknown) add(path, v.rule);
    for (const a of answer.assumed) add(a.path, ROUTES);
    for (const id of plan.price.missing) for (const path of unratedPaths(job, id)) add(path, PRICE);
    for (const id of [...plan.price.missing, ...plan.price.assumed.map((a) => a.id)])
      if (isUntold(job, id)) add(id, PRICE);
  }
  return [...blocks]
    .map(([path, set]) => ({ path, say: fieldSentence(job, path), blocks: [...set].sort(compareText) }))
    .sort((a, b) => compareText(a.path, b.path));
};
