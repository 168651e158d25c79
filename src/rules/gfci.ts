import type { Run } from '../facts/result';
import type { Job } from '../job/schema';
import { DRYER_RANGE_GFCI } from '../standards/editionsCircuits';
import { byId } from '../units/order';
import { EDITIONS, type Id, isKnown } from '../units/types';
import { isRunAnew, threeWire } from './circuits/threeWire';
import { isIdle } from './reading';

/**
 * Circuits whose breaker gains GFCI because DRYER-RANGE gives them a new receptacle: old three-wire range and dryer
 * circuits run anew with four wires. A code year nobody knows is taken at its strictest.
 */
export const gfciAdded = (job: Job, runs: readonly Run[]): Id[] => {
  const { edition } = job.code;
  const asked = (isKnown(edition) ? [edition] : EDITIONS).some((year) => DRYER_RANGE_GFCI[year]);
  if (!asked) return [];
  return byId(job.circuits)
    .filter(
      (c) =>
        !isIdle(c) &&
        c.poles !== 1 &&
        c.partner === null &&
        c.hardWired !== true &&
        threeWire(job, c) !== false &&
        isRunAnew({ job, runs }, c),
    )
    .map((c) => c.id);
};
