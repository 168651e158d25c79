import { planSchema, resultSchema } from '../../bin/resultSchema';
import type { Grade, Plan, Result } from '../../src/facts/result';
import { setValue } from '../../src/job/change';
import type { Job, Option } from '../../src/job/schema';
import { planOption } from '../../src/plan/planOption';
import { bookOf } from '../../src/plan/stages';
import { recount } from './recount';
import { walkRun } from './walkLegs';

/** What no plan of any job may have: a value that is none, a leg through a wall, a figure that does not add up. */
export const planFaults = (job: Job, option: Option, plan: Plan): string[] => {
  // the schema's numbers are finite and its keys all there: NaN, Infinity and undefined do not pass
  const shape = planSchema.safeParse(plan);
  const issues = shape.success ? [] : shape.error.issues.map((i) => `${i.path.join('/')}: ${i.message}`);
  return [
    ...issues.slice(0, 5),
    ...recount(job, option, plan, bookOf(job)).map((d) => `${d.what}: ${d.counted} counted, ${d.printed} printed`),
    ...plan.runs.flatMap((run) => walkRun(job, option, run)).map((f) => `${f.homeRun} leg ${f.leg} ${f.say}`),
    ...unanswered(job, plan),
    ...unexplained(job, option, plan),
  ];
};

/** Every home run is answered once, and none twice. */
const unanswered = (job: Job, plan: Plan): string[] => {
  const answered = plan.runs.map((r) => r.homeRun).join(' ');
  const asked = job.homeRuns
    .map((h) => h.id)
    .sort()
    .join(' ');
  return answered === asked ? [] : [`runs are ${answered}, home runs ${asked}`];
};

/** A cable that could not be routed says why and names records of the job; a price without it is not called whole. */
const unexplained = (job: Job, option: Option, plan: Plan): string[] => {
  const ids = new Set(idsIn({ ...job, options: [option] }));
  const blocked = plan.runs.filter((r) => r.blockedBy.length > 0);
  return [
    ...blocked.flatMap((r) => r.blockedBy.filter((id) => !ids.has(id)).map((id) => `${r.homeRun} blocked by ${id}`)),
    ...plan.runs.filter((r) => r.why.trim() === '').map((r) => `${r.homeRun} does not say why`),
    ...blocked.filter((r) => r.legs.some((l) => l.cable === 'new')).map((r) => `${r.homeRun} is blocked and has legs`),
    ...(blocked.length > 0 && plan.price.complete ? ['blocked, and the price is complete'] : []),
  ];
};

const idsIn = (value: unknown): string[] =>
  typeof value !== 'object' || value === null
    ? []
    : Object.entries(value).flatMap(([key, v]) => (key === 'id' && typeof v === 'string' ? [v] : idsIn(v)));

/** Every option of a job planned at a grade, or thrown: what is wrong with any of them. */
export const jobFaults = (
  job: Job,
  grade: Exclude<Grade, 'proven'> = 'final',
  options: readonly Option[] = job.options,
): string[] =>
  options.flatMap((option) => {
    try {
      return planFaults(job, option, planOption(job, option, grade).plan).map((f) => `${option.id}: ${f}`);
    } catch (e) {
      return [`${option.id}: threw ${e instanceof Error ? e.stack : String(e)}`];
    }
  });

/** The same for a whole result with its advice. */
export const resultFaults = (job: Job, result: Result): string[] => {
  const shape = resultSchema.safeParse(result);
  const issues = shape.success ? [] : shape.error.issues.map((i) => `${i.path.join('/')}: ${i.message}`);
  return [
    ...issues.slice(0, 5),
    ...result.plans.flatMap((p) => planFaults(job, job.options.find((o) => o.id === p.option)!, p)),
  ];
};

/** A job with a place not known. A place inside one that is unknown already is left as it is. */
export const forgotten = (job: Job, ...places: readonly string[]): Job =>
  places.reduce((j, place) => {
    const changed = setValue(j, place, 'unknown');
    return changed.ok ? (changed.value as Job) : j;
  }, job);
