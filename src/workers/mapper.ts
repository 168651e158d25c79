import type { Refinement } from '../facts/result';
import type { Job } from '../job/schema';
import type { MapProgress } from '../plan/map/mapSteps';
import type { Id } from '../units/types';

/** Finds where an option's new panel can go, somewhere else than on the screen's own thread. */
export interface Mapper {
  /** One map at a time: the next question, and `stop`, end the one before. */
  map(job: Job, option: Id, onStep: (step: MapProgress) => void): Promise<'done' | 'stopped'>;
  stop(): void;
}

/** Finds small changes to an option in place that spare cables a joint. */
export interface Refiner {
  refine(job: Job, option: Id): Promise<readonly Refinement[]>;
}
