import { attempt } from './attempt';
import { fillByCoil } from './byCoil';
import { fillByLead } from './byLead';
import type { CoilSet } from './coilSets';
import type { Whole } from './model';
import { type Budget, keepings, NEAR, type Packing, type Tried } from './remnants';

/** No waste at all, then a little, then twice as much, up to all that may be wasted. */
const wasteSteps = (most: number): number[] => {
  const steps = [0];
  for (let step = Math.ceil(most / 64); step > 0 && step < most; step *= 2) steps.push(step);
  return most > 0 ? [...steps, most] : steps;
};

/** The search goes one call deeper with every coil; beyond this many the relaxation has to do. */
const MOST_COILS = 1000;

/**
 * Packs all pieces into exactly the coils of a set, for remnants worth more than `atLeast`. Coils that keep a remnant
 * are filled last; every other coil is filled so that no further piece would fit: moving one in never costs anything.
 * Both ways of filling are tried, each with half the steps; either one coming to its end settles the question.
 */
export const packSet = (whole: Whole, set: CoilSet, atLeast: number, budget: Budget): Tried => {
  const left = set.capacity - whole.total;
  let best: Packing | null = null;
  let bar = atLeast;
  const { list, all } = keepings(whole, set, left);
  let complete = all;
  if (set.counts.reduce((sum, count) => sum + count, 0) > MOST_COILS) return { best, complete: false };
  for (const keeping of list) {
    if (keeping.most <= bar + NEAR) break;
    const none = keeping.counts.every((count) => count === 0);
    let settled = false;
    let clear = -1;
    for (const fill of [fillByLead, fillByCoil]) {
      const steps: Budget = { nodes: Math.ceil(budget.nodes / 2) };
      const given = steps.nodes;
      const state = attempt(whole, set.counts, keeping, left, bar, clear, steps);
      // Only a set with a remnant gains by wasting less; elsewhere the waste is what it is.
      const limits = none ? [left] : wasteSteps(left - whole.keep).filter((limit) => limit > clear);
      for (const limit of limits) {
        state.limit = limit;
        if (fill(state)) state.clear = limit;
        settled = state.satisfied() || state.clear === limits.at(-1);
        if (settled || steps.nodes <= 0) break;
      }
      clear = state.clear;
      budget.nodes -= given - Math.max(0, steps.nodes);
      if (state.best) {
        best = state.best;
        bar = state.bar;
      }
      if (settled || budget.nodes <= 0) break;
    }
    if (!settled) complete = false;
    if (budget.nodes <= 0) {
      complete = false;
      break;
    }
    if (none && best) break;
  }
  return { best, complete };
};
