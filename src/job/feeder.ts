import { type In, isKnown, type U } from '../units/types';
import type { Job, Option } from './schema';

/** True where the survey has a run for it: without one, where it comes into the room is nobody's measure. */
export const isFeederDrawn = ({ feeder }: Pick<Job, 'feeder'>): boolean => feeder.path.length > 0;

/**
 * What a new feeder runs outside the room, inches: nothing where its source, or the option's service disconnect, stands
 * in the room. A new disconnect outdoors is taken to stand where the service cable comes from, at the meter. Common
 * practice, no source.
 */
export const feederOutside = (job: Job, { serviceDisconnect }: Pick<Option, 'serviceDisconnect'>): U<In> => {
  const inTheRoom = serviceDisconnect
    ? serviceDisconnect.on !== 'outdoors'
    : job.enclosures.some((e) => e.id === job.feeder.from.panel);
  if (inTheRoom) return 0;
  return isFeederDrawn(job) && isKnown(job.feeder.outside) ? job.feeder.outside : 'unknown';
};
