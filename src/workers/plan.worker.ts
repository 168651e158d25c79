import { expose } from 'comlink';
import { planSteps } from '../plan/planJob';
import { drive } from './drive';
import type { PlanReply, PlanRequest, PlanStep } from './planner';

let newest = 0;

/** Lets waiting messages in: a timer runs after them, a promise would not. */
const pause = () => new Promise<void>((resolve) => setTimeout(resolve, 0));

const planning = {
  /** From here on only questions from this number on are worth an answer. */
  supersede(serial: number): void {
    newest = Math.max(newest, serial);
  },
  plan(serial: number, { revision, job }: PlanRequest, onStep: (step: PlanStep) => void): Promise<PlanReply> {
    planning.supersede(serial);
    return drive(revision, planSteps(job), { isStale: () => newest > serial, pause, onStep });
  },
};
export type Planning = typeof planning;

expose(planning);
