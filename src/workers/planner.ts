import type { Plan, Result } from '../facts/result';
import type { Job } from '../job/schema';
import type { PlanProgress } from '../plan/planJob';
import type { Id } from '../units/types';

/** A question to the planner; `revision` comes back with everything it says about it. */
export interface PlanRequest {
  readonly revision: number;
  readonly job: Job;
}
/** `done` of `of` steps are finished; the plan just made, which is number `done` − 1 of the result. */
export interface PlanStep extends PlanProgress {
  readonly revision: number;
}
export type PlanReply =
  | { readonly revision: number; readonly kind: 'planned'; readonly result: Result }
  /** A later question came before this one was answered. */
  | { readonly revision: number; readonly kind: 'dropped' }
  /** A bug of the program: the planner stopped. `say` is its own message. */
  | { readonly revision: number; readonly kind: 'failed'; readonly say: string };

/** Plans jobs somewhere else than on the screen's own thread. Answers one question at a time, the latest. */
export interface Planner {
  plan(request: PlanRequest, onStep: (step: PlanStep) => void): Promise<PlanReply>;
}

/** Plans one option at live grade while something is dragged: as quick as can be, never stored or printed. */
export interface LivePlanner {
  plan(job: Job, option: Id): Promise<Plan>;
}
