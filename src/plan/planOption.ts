import { cutList } from '../cutlist/cutList';
import { type Need, orderList } from '../cutlist/order';
import type { AfciEntry, Finding, Grade, Plan, Price } from '../facts/result';
import type { RoutingAnswer, Solve } from '../facts/routing';
import type { RuleFacts, Verdict } from '../facts/ruling';
import type { Job, Option } from '../job/schema';
import { arrangePanel } from '../loads/arrangePanel';
import { breakersOf } from '../loads/breakers';
import { feederFigures } from '../loads/feederPlan';
import { conditionWork } from '../pricing/conditions';
import { type Alternate, price, priceTotals, takenWork } from '../pricing/price';
import { CREW, timePlan } from '../pricing/time';
import { prove, route } from '../routing/route';
import { afciEntries } from '../rules/afci';
import { runRules } from '../rules/run';
import { cableItem } from '../standards/cableNames';
import { compareText } from '../units/order';
import { electrodeMove } from './electrode';
import { toFinding } from './findings';
import { type RequiredWork, requiredWork } from './required';
import { type Stage, stageOf } from './stages';
import { tallyOf } from './tally';

/** A plan with what the job-wide lists are made of. */
export interface Planned {
  readonly plan: Plan;
  readonly verdicts: readonly Verdict[];
  readonly answer: RoutingAnswer;
}

/** What rules look at, from a routed answer: also for a job that differs from the one it was routed for. */
export const factsOf = (
  job: Job,
  option: Option,
  answer: RoutingAnswer,
  stage: Stage,
): RuleFacts & { readonly afci: readonly AfciEntry[] } => {
  const afci = afciEntries(job, option, answer.runs);
  const breakers = breakersOf(job, afci);
  const cable = answer.feeder.way === 'kept' ? job.feeder.cable : stage.newFeeder;
  const feeder = { way: answer.feeder.way, legs: answer.feeder.legs, ...feederFigures(job, option, cable, stage.load) };
  const spds = spdsIn(option, job);
  const arrangement = arrangePanel(job, option, breakers, answer.runs, spds);
  return {
    job,
    option,
    runs: answer.runs,
    boxes: answer.boxes,
    rows: answer.rows,
    feeder,
    arrangement,
    load: stage.load,
    knockoutsUsed: answer.runs.filter((r) => r.way !== 'stays on old panel').length + 1,
    spds,
    afci,
  };
};

const SPD_ALTERNATE = 'spd';
const spdsIn = (_option: Option, job: Job): number =>
  job.alternates.some((a) => a.id === SPD_ALTERNATE && a.taken) ? 1 : 0;

/** Findings for a job with routes already chosen. Keeps the routes whatever the job now says. */
export const judge = (
  job: Job,
  option: Option,
  answer: RoutingAnswer,
  stage: Stage,
): { findings: Finding[]; verdicts: Verdict[]; doesNotApply: Record<string, number> } => {
  const { verdicts, doesNotApply } = runRules(factsOf(job, option, answer, stage));
  return { verdicts, doesNotApply, findings: verdicts.flatMap((v) => toFinding(job, v, stage.unit) ?? []) };
};

const finish = (stage: Stage, answer: RoutingAnswer, grade: Grade): Planned => {
  const { job, option, book, unit } = stage;
  const facts = factsOf(job, option, answer, stage);
  const { verdicts, doesNotApply } = runRules(facts);
  const findings = verdicts.flatMap((v) => toFinding(job, v, unit) ?? []);
  const electrode = electrodeMove(job, option);
  const afciAdded = facts.afci.filter((a) => a.required !== 'no').map((a) => a.circuit);
  const cures = verdicts.flatMap((v) => v.cure);
  const spdRequired = cures.some((w) => w.item === 'spd');
  const alternates: Alternate[] = [
    {
      id: SPD_ALTERNATE,
      required: spdRequired,
      taken: spdRequired || spdsIn(option, job) > 0,
      rule: cures.find((w) => w.item === 'spd')?.rule ?? null,
    },
  ];
  const spd: RequiredWork[] = spdRequired
    ? []
    : [{ item: 'spd', quantity: 1, homeRuns: [], rule: null, alternate: SPD_ALTERNATE }];
  const direct: RequiredWork[] = [
    ...answer.work,
    ...requiredWork(
      job,
      option,
      answer,
      { feeder: facts.feeder, electrode },
      breakersOf(job, facts.afci),
      afciAdded,
      facts.arrangement.spacesNeeded,
      cableItem(facts.feeder.cable),
    ),
    ...cures,
    ...spd,
  ];
  const slowed = conditionWork(direct, book, { occupied: job.house.occupied !== false, crowded: false });
  const timed = timePlan({
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
  const time = timePlan({ work: taken, book, runs: answer.runs, circuits: job.circuits.map((c) => c.id) });
  const priced = price({ work, book, practice: job.practice, surveyGrade: job.survey.grade, alternates });
  const cuts = cutList({
    runs: answer.runs,
    feeder: { cable: facts.feeder.cable, length: answer.feeder.cutLength, way: answer.feeder.way },
    book,
    stock: job.stock,
  });
  const blocked = answer.runs.some((r) => r.blockedBy.length > 0);
  const plan: Plan = {
    option: option.id,
    grade,
    tally: tallyOf({ findings, runs: answer.runs, boxes: answer.boxes, afci: facts.afci }, priceTotals(priced), time),
    electrode,
    spds: alternates[0]!.taken ? 1 : 0,
    connectors: connectorsIn(taken),
    knockoutsUsed: facts.knockoutsUsed,
    loadMethod: stage.load.method,
    runs: answer.runs,
    boxes: answer.boxes,
    rows: answer.rows,
    feeder: facts.feeder,
    afci: facts.afci,
    findings,
    doesNotApply,
    load: stage.load.worked,
    directory: facts.arrangement.directory,
    price: blocked ? { ...priced, complete: false } : priced,
    time: time.plan,
    cuts,
    order: orderList(needsOf(priced), cuts, book),
    proof: answer.proof,
  };
  return { plan, verdicts, answer };
};

/** What the lines take of each material, one figure a material. */
const needsOf = (priced: Price): Need[] => {
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

/** One option, start to end, without the solver: cold and deterministic. */
export const planOption = (job: Job, option: Option, grade: 'live' | 'final' = 'final'): Planned => {
  const stage = stageOf(job, option, grade);
  return finish(stage, route(stage.ask), grade);
};

/** The same with the choice of ways, spots and boxes proven, or bounded, by the solver. */
export const proveOption = async (job: Job, option: Option, solve: Solve): Promise<Planned> => {
  const stage = stageOf(job, option, 'final');
  return finish(stage, await prove(stage.ask, route(stage.ask), solve), 'proven');
};
