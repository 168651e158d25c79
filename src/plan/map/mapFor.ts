import type { Result } from '../../facts/result';
import type { Job, Option } from '../../job/schema';
import { optionById } from '../../job/site';
import { byId } from '../../units/order';

/** The option whose panel a map asks about where nobody named one: the advised one if it moves, else the first that does. */
export const mapOption = (job: Job, advice: Result['advice']): Option | undefined => {
  const advised = advice.option === null ? undefined : optionById(job, advice.option);
  if (advised?.kind === 'relocate') return advised;
  const options = byId(job.options);
  return options.find((o) => o.kind === 'relocate') ?? options[0];
};
