import type { AfciEntry } from '../facts/result';
import type { RoutingAnswer } from '../facts/routing';
import type { RuleFacts, Verdict } from '../facts/ruling';
import type { Job, Option } from '../job/schema';
import { arrangePanel } from '../loads/arrangePanel';
import { type Breaker, breakersOf } from '../loads/breakers';
import { feederDrop } from '../loads/feederDrop';
import { feederFigures } from '../loads/feederPlan';
import { afciEntries } from '../rules/afci';
import { gfciAdded } from '../rules/gfci';
import { SPD_ALTERNATE } from '../rules/panel/spd';
import { runRules } from '../rules/run';
import type { Id } from '../units/types';
import { AFCI_ALTERNATE, afciOpen, afciPriced, isTaken } from './alternates';
import type { Stage } from './stages';

/** A routed answer seen by the rules: everything that follows from it before money. */
export interface Settled {
  readonly facts: RuleFacts;
  readonly afci: readonly AfciEntry[];
  readonly gfci: readonly Id[];
  /** As priced: without what is left to the inspector. */
  readonly breakers: readonly Breaker[];
  readonly verdicts: readonly Verdict[];
  readonly doesNotApply: Readonly<Record<string, number>>;
  /** The rule that requires a surge device here, or null. */
  readonly spdRule: string | null;
}

const spdRuleIn = (verdicts: readonly Verdict[]): string | null =>
  verdicts.flatMap((v) => v.cure).find((w) => w.item === 'spd')?.rule ?? null;

/** Breakers, spaces, feeder figures and verdicts for a job with its routes chosen: also for a job that differs from the one they were chosen for. */
export const settle = (job: Job, option: Option, answer: RoutingAnswer, stage: Stage): Settled => {
  const afci = afciEntries(job, option, answer.runs);
  const gfci = gfciAdded(job, answer.runs);
  const breakers = breakersOf(job, afciPriced(afci), gfci, answer.runs);
  const placed = isTaken(job, AFCI_ALTERNATE)
    ? breakersOf(job, [...afciPriced(afci), ...afciOpen(afci)], gfci, answer.runs)
    : breakers;
  const cable = answer.feeder.way === 'kept' ? job.feeder.cable : stage.newFeeder;
  const { way, why, legs, cutLength, outside, holes, supports, plates } = answer.feeder;
  const figures = feederFigures(job, option, cable, stage.load);
  const drop = feederDrop(job, { way, legs, outside, cable }, stage.load);
  const worked = [...figures.worked, ...drop];
  const feeder = { way, why, legs, cutLength, outside, holes, supports, plates, ...figures, worked };
  const seen = (spds: number): RuleFacts => ({
    job,
    option,
    runs: answer.runs,
    boxes: answer.boxes,
    rows: answer.rows,
    feeder,
    arrangement: arrangePanel(job, option, placed, answer.runs, spds),
    load: stage.load,
    knockoutsUsed: answer.runs.filter((r) => r.way !== 'stays on old panel').length + 1,
    spds,
  });
  // a required surge device takes spaces, and only the rules know whether it is: ask, make room, ask again
  const first = seen(isTaken(job, SPD_ALTERNATE) ? 1 : 0);
  const ruled = runRules(first);
  const spdRule = spdRuleIn(ruled.verdicts);
  if (spdRule === null || first.spds > 0) return { facts: first, afci, gfci, breakers, spdRule, ...ruled };
  const facts = seen(1);
  return { facts, afci, gfci, breakers, spdRule, ...runRules(facts) };
};
