import { cutList } from '../cutlist/cutList';
import { type Need, orderList } from '../cutlist/order';
import type { Grade, Plan, Price } from '../facts/result';
import type { RoutingAnswer, RoutingAsk, Solve } from '../facts/routing';
import type { RuleFacts, Verdict } from '../facts/ruling';
import type { Job, Option } from '../job/schema';
import { conditionWork } from '../pricing/conditions';
import { takesOldPlace } from '../pricing/oldPlace';
import { price, priceTotals, takenWork } from '../pricing/price';
import { CREW, timePlan } from '../pricing/time';
import { prove, route } from '../routing/route';
import { isSameQuestion } from '../routing/sameQuestion';
import { compareText } from '../units/order';
import { afciPriced, alternatesOf } from './alternates';
import { electrodeMove } from './electrode';
import { toFinding } from './findings';
import { missingFeeder, missingFields, missingItems, missingWays, sortedMissing } from './missing';
import { openMatters } from './openMatters';
import { type RequiredWork, requiredWork } from './required';
import { settle } from './settle';
import { type Stage, stageOf } from './stages';
import { tallyOf } from './tally';

/** A plan with what the job-wide lists are made of. */
export interface Planned {
  readonly plan: Plan;
  readonly verdicts: readonly Verdict[];
  readonly answer: RoutingAnswer;
  readonly facts: RuleFacts;
  /** What routing was asked and said without the solver, so that the same question is not searched twice. */
  readonly ask: RoutingAsk;
  readonly routed: RoutingAnswer;
}

/** Findings for a job with routes already chosen. Keeps the routes whatever the job now says. */
export const judge = (job: Job, option: Option, answer: RoutingAnswer, stage: Stage) => {
  const { verdicts, doesNotApply } = settle(job, option, answer, stage);
  return { verdicts, doesNotApply, findings: verdicts.flatMap((v) => toFinding(job, option, v, stage.unit) ?? []) };
};

const finish = (stage: Stage, routed: RoutingAnswer, grade: Grade, answer = routed): Planned => {
  const { job, option, book, unit } = stage;
  const { facts, afci, gfci, breakers, verdicts, doesNotApply, spdRule } = settle(job, option, answer, stage);
  const findings = verdicts.flatMap((v) => toFinding(job, option, v, unit) ?? []);
  const electrode = electrodeMove(job, option);
  const { alternates, work: alternateWork } = alternatesOf(job, afci, breakers, gfci, spdRule);
  const direct: RequiredWork[] = [
    ...answer.work,
    ...requiredWork(
      job,
      option,
      answer,
      { feeder: facts.feeder, electrode },
      breakers,
      afciPriced(afci),
      facts.arrangement.directory.length,
      book,
    ),
    ...verdicts.flatMap((v) => v.cure),
    ...alternateWork,
  ];
  const slowed = conditionWork(direct, book, { occupied: job.house.occupied !== false, crowded: false });
  const where = { inOldPlace: takesOldPlace(job, option), feederKept: facts.feeder.way === 'kept' };
  const timed = timePlan({
    ...where,
    work: takenWork([...direct, ...slowed], alternates),
    book,
    runs: answer.runs,
    circuits: job.circuits.map((c) => c.id),
  });
  const days = Math.max(1, Math.ceil(timed.crewHours / (CREW.people * CREW.hoursPerDay)));
  const work: RequiredWork[] = [
    ...direct,
    ...slowed,
    { item: 'load in', quantity: days, homeRuns: [], rule: null, alternate: null },
  ];
  const taken = takenWork(work, alternates);
  const time = timePlan({ ...where, work: taken, book, runs: answer.runs, circuits: job.circuits.map((c) => c.id) });
  const priced = price({ work, book, practice: job.practice, surveyGrade: job.survey.grade, alternates });
  const cuts = cutList({
    runs: answer.runs,
    feeder: { cable: facts.feeder.cable, length: answer.feeder.cutLength, way: answer.feeder.way },
    book,
    stock: job.stock,
  });
  const open = sortedMissing([
    ...missingItems(job, taken, priced.missing),
    ...missingFields(job, openMatters(job, option, verdicts)),
    ...missingWays(job, answer),
    ...missingFeeder(job, option, answer),
  ]);
  const plan: Plan = {
    option: option.id,
    grade,
    tally: tallyOf({ findings, runs: answer.runs, boxes: answer.boxes, afci }, priceTotals(priced), time),
    electrode,
    spds: facts.spds,
    connectors: connectorsIn(taken),
    knockoutsUsed: facts.knockoutsUsed,
    loadMethod: stage.load.method,
    runs: answer.runs,
    boxes: answer.boxes,
    rows: answer.rows,
    feeder: facts.feeder,
    afci,
    findings,
    doesNotApply,
    load: stage.load.worked,
    directory: facts.arrangement.directory,
    price: {
      ...priced,
      complete: open.length === 0,
      missing: open.map((m) => m.id),
      missingSay: open.map((m) => m.say),
    },
    time: time.plan,
    cuts,
    order: orderList(needsOf(priced), cuts, book),
    proof: answer.proof,
  };
  return { plan, verdicts, answer, facts, ask: stage.ask, routed };
};

/** What the lines take of each material, one figure a material. */
const needsOf = (priced: Pick<Price, 'lines'>): Need[] => {
  const needs = new Map<string, Need>();
  for (const { kind, item, quantity, unit } of priced.lines)
    if (kind === 'material') needs.set(item, { id: item, unit, quantity: (needs.get(item)?.quantity ?? 0) + quantity });
  return [...needs.values()];
};

const connectorsIn = (work: readonly RequiredWork[]): Plan['connectors'] => {
  const counts = new Map<string, number>();
  for (const { item, quantity } of work) {
    const size = item.startsWith('connector:') ? item.slice('connector:'.length) : null;
    if (size !== null) counts.set(size, (counts.get(size) ?? 0) + quantity);
  }
  return [...counts].map(([size, count]) => ({ size, count })).sort((a, b) => compareText(a.size, b.size));
};

/**
 * One option, start to end, without the solver: cold and deterministic. `before`: the option as planned for a job that
 * differs in something else; where routing is asked the same again its search is not repeated.
 */
export const planOption = (
  job: Job,
  option: Option,
  grade: 'live' | 'final' = 'final',
  before: Planned | null = null,
): Planned => {
  const stage = stageOf(job, option, grade);
  return finish(stage, before && isSameQuestion(before.ask, stage.ask) ? before.routed : route(stage.ask), grade);
};

/** The same with the choice of ways, spots and boxes proven, or bounded, by the solver. */
export const proveOption = async (job: Job, option: Option, solve: Solve): Promise<Planned> => {
  const stage = stageOf(job, option, 'final');
  const routed = route(stage.ask);
  return finish(stage, routed, 'proven', await prove(stage.ask, routed, solve));
};
