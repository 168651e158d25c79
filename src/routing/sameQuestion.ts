import type { RoutingAsk } from '../facts/routing';
import type { Job } from '../job/schema';
import { cansLeft } from './spliceCans';

/** The local rules that routing looks at; which old panels may hold splices is asked apart. */
export const ROUTING_AMENDMENTS = ['nmAllowed', 'afciCountsTails', 'racewayCountsIn6ft'] as const;

const alike = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** The same records, apart from the local rules: a change made by copying leaves the others as they are. */
const sameRecords = (a: Job, b: Job): boolean =>
  (Object.keys(a) as (keyof Job)[]).every((key) => key === 'code' || a[key] === b[key]) &&
  a.code.edition === b.code.edition;

/**
 * Do two questions have the same answer because nothing that routing looks at differs between them? Then one search
 * answers both. A local rule that only judges, or that refuses a splice can nobody could keep, changes no way.
 */
export const isSameQuestion = (a: RoutingAsk, b: RoutingAsk): boolean =>
  a.option === b.option &&
  a.grade === b.grade &&
  sameRecords(a.job, b.job) &&
  ROUTING_AMENDMENTS.every((key) => a.job.code.amendments[key] === b.job.code.amendments[key]) &&
  alike(cansLeft(a.job, a.option), cansLeft(b.job, b.option)) &&
  alike([a.boxes, a.penalties, a.feederCable], [b.boxes, b.penalties, b.feederCable]);
