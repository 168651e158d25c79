import type { Advice, Grade, Plan, Result } from '../facts/result';
import type { Solve } from '../facts/routing';
import type { Job, Option } from '../job/schema';
import { isSameQuestion } from '../routing/sameQuestion';
import { NOT_COVERED } from '../standards/coverage';
import { byId, compareText } from '../units/order';
import type { Id } from '../units/types';
import { planWords as say } from '../words/en/plan';
import { advise, type Replan } from './advise';
import { isBarredByPlace } from './barred';
import { comparisonsOf } from './compare';
import { ENGINE } from './engine';
import { withoutPin, withPinCosts } from './pinCosts';
import { type Planned, planOption, proveOption } from './planOption';
import { bookOf, stageOf } from './stages';
import { unknownsOf } from './unknowns';

export interface PlanAsk {
  /** Only these options; all of them when absent. */
  readonly options?: readonly Id[];
  readonly grade?: Exclude<Grade, 'proven'>;
}

const asked = (job: Job, ask: PlanAsk): Option[] =>
  byId(job.options).filter((o) => ask.options?.includes(o.id) ?? true);

/**
 * Options of a changed job planned again. One that was stopped, and whose place stays barred whatever is laid, stays
 * stopped: its plan is handed back as it was.
 */
const replanner =
  (planned: readonly Planned[]): Replan =>
  (changed, options, grade = 'final') =>
    asked(changed, { options }).map((option) => {
      const before = planned.find((p) => p.plan.option === option.id) ?? null;
      const stopped = before !== null && before.plan.tally.stops > 0;
      if (stopped && isBarredByPlace({ ...before.facts, job: changed, option })) return before.plan;
      // the same ways as before are there already, and better than quick ones
      const same = before !== null && isSameQuestion(before.ask, stageOf(changed, option, 'final').ask);
      return planOption(changed, option, same ? 'final' : grade, before).plan;
    });

const resultOf = (job: Job, planned: readonly Planned[], advice: Advice): Result => ({
  format: 'backboard-plan',
  schema: 1,
  engine: ENGINE,
  job: job.id,
  edition: job.code.edition,
  plans: planned.map((p) => p.plan),
  advice,
  unknown: unknownsOf(job, planned),
  notCovered: [...NOT_COVERED].sort((a, b) => compareText(a.rule, b.rule)),
  places: null,
  comparisons: comparisonsOf(
    bookOf(job),
    planned.map((p) => p.plan),
    say.laborHour,
  ),
});

/** `done` of `of` steps are finished; the plan that has just been made, in the order of the result. */
export interface PlanProgress {
  readonly done: number;
  readonly of: number;
  readonly plan: Plan;
}

/**
 * Every option planned cold, compared and advised on, one step an option: whoever drives the generator may stop
 * between steps, and may show each plan before the advice stands.
 */
export function* planSteps(job: Job, ask: PlanAsk = {}): Generator<PlanProgress, Result> {
  const options = asked(job, ask);
  const of = options.length + 1;
  const planned: Planned[] = [];
  for (const option of options) {
    const grade = ask.grade ?? 'final';
    const next = planOption(job, option, grade);
    const without = (pin: Id) => planOption(job, withoutPin(option, pin), grade).plan;
    planned.push(grade === 'live' ? next : { ...next, plan: withPinCosts(option, next.plan, without) });
    yield { done: planned.length, of, plan: planned.at(-1)!.plan };
  }
  return resultOf(
    job,
    planned,
    advise(
      job,
      planned.map((p) => p.plan),
      replanner(planned),
      unknownsOf(job, planned),
    ),
  );
}

export const planJob = (job: Job, ask: PlanAsk = {}): Result => {
  const steps = planSteps(job, ask);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
};

/** At proven grade, options and flips alike. */
export const proveJob = async (job: Job, ask: Pick<PlanAsk, 'options'>, solve: Solve): Promise<Result> => {
  const planned: Planned[] = [];
  for (const option of asked(job, ask)) {
    const next = await proveOption(job, option, solve);
    const without = new Map<Id, Plan>();
    for (const { id } of option.pins) without.set(id, (await proveOption(job, withoutPin(option, id), solve)).plan);
    planned.push({ ...next, plan: withPinCosts(option, next.plan, (pin) => without.get(pin)!) });
  }
  return resultOf(
    job,
    planned,
    advise(
      job,
      planned.map((p) => p.plan),
      replanner(planned),
      unknownsOf(job, planned),
    ),
  );
};
