import type { Job } from './schema';

/** One step of the undo list: the name of the edit and the job on the other side of it. */
export interface Step {
  readonly name: string;
  /** What kind of edit, without anything a person typed. */
  readonly kind: string;
  readonly job: Job;
}

/** The job now, what it was before each edit (latest last) and what undone edits had made of it (next one last). */
export interface History {
  readonly past: readonly Step[];
  readonly now: Job;
  readonly future: readonly Step[];
}

export const startHistory = (job: Job): History => ({ past: [], now: job, future: [] });

/** After an edit. One that changed nothing leaves no step. */
export const push = (history: History, name: string, job: Job, kind = ''): History =>
  job === history.now ? history : { past: [...history.past, { name, kind, job: history.now }], now: job, future: [] };

/** One step back; the same history where there is none. */
export const undo = (history: History): History => {
  const step = history.past.at(-1);
  if (!step) return history;
  return {
    past: history.past.slice(0, -1),
    now: step.job,
    future: [...history.future, { ...step, job: history.now }],
  };
};

/** One undone step forward again; the same history where there is none. */
export const redo = (history: History): History => {
  const step = history.future.at(-1);
  if (!step) return history;
  return {
    past: [...history.past, { ...step, job: history.now }],
    now: step.job,
    future: history.future.slice(0, -1),
  };
};
