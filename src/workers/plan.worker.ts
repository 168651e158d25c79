import { expose } from 'comlink';
import type { Plan, Refinement } from '../facts/result';
import type { Job } from '../job/schema';
import { optionById } from '../job/site';
import { type MapProgress, mapSteps } from '../plan/map/mapSteps';
import { planSteps } from '../plan/planJob';
import { planOption } from '../plan/planOption';
import { refinementsOf } from '../plan/refine';
import type { Id } from '../units/types';
import { drive } from './drive';
import type { PlanReply, PlanRequest, PlanStep } from './planner';
import { holdForLife } from './watch';

let newest = 0;

/** A drawing follows in steps; every place by itself would only keep it busy. */
const TELL_EVERY_MS = 400;

/** Lets waiting messages in: a timer runs after them, a promise would not. */
const pause = () => new Promise<void>((resolve) => setTimeout(resolve, 0));

const planning = {
  /** Name of a lock that is free when this worker is no more. */
  holds: holdForLife,
  /** From here on only questions from this number on are worth an answer. */
  supersede(serial: number): void {
    newest = Math.max(newest, serial);
  },
  plan(serial: number, { revision, job }: PlanRequest, onStep: (step: PlanStep) => void): Promise<PlanReply> {
    planning.supersede(serial);
    return drive(revision, planSteps(job), { isStale: () => newest > serial, pause, onStep });
  },
  /** One option at live grade; null where the job has no such option. */
  live(job: Job, id: Id): Plan | null {
    const option = optionById(job, id);
    return option ? planOption(job, option, 'live').plan : null;
  },
  /** Small changes to an option in place. */
  refine(job: Job, id: Id): readonly Refinement[] {
    const option = optionById(job, id);
    return option ? refinementsOf(job, option) : [];
  },
  /** Where the option's panel can go, step by step; whoever has enough ends the worker. */
  async map(job: Job, id: Id, onStep: (step: MapProgress) => void): Promise<void> {
    const option = optionById(job, id);
    if (!option) throw new Error(id);
    let sent = Number.NEGATIVE_INFINITY;
    let changed: MapProgress['changed'] = [];
    let last: MapProgress | null = null;
    for (const step of mapSteps(job, option)) {
      changed = [...changed, ...step.changed];
      last = { ...step, changed };
      if (performance.now() - sent < TELL_EVERY_MS) continue;
      onStep(last);
      await pause();
      [sent, changed, last] = [performance.now(), [], null];
    }
    if (last) onStep(last);
  },
};
export type Planning = typeof planning;

expose(planning);
