import type { Leg, Run } from '../../facts/result';
import { insideParts } from '../../geometry/polygon';
import { byId } from '../../units/order';
import type { Id, In, Pt3 } from '../../units/types';
import { laidLegs, runOf } from '../reading';
import type { FactsInYear } from '../rule';

export const homeRunIds = ({ job }: FactsInYear): Id[] => byId(job.homeRuns).map((h) => h.id);
export const rowIds = ({ rows }: FactsInYear): Id[] => byId(rows).map((r) => r.id);
export const boxIds = ({ boxes }: FactsInYear): Id[] => byId(boxes).map((b) => b.id);

/** The run of a home run with the legs this job lays, or null where nothing is laid. */
export const laid = (facts: FactsInYear, homeRun: Id): { readonly run: Run; readonly legs: readonly Leg[] } | null => {
  const run = runOf(facts, homeRun);
  const legs = run ? laidLegs(run) : [];
  return run && legs.length > 0 ? { run, legs } : null;
};

export const legLength = ({ from, to }: Leg): In => Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);

/** Does a leg pass inside a plan outline? */
export const passes = ({ from, to }: Leg, outline: readonly (readonly [number, number])[]): boolean =>
  insideParts([from[0], from[1]], [to[0], to[1]], outline).length > 0;

export const inPlanOf = (p: Pt3): readonly [number, number] => [p[0], p[1]];

export const halfOf = (width: In): In => width / 2;
