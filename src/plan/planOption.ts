import { type CutListAsk, cutList, proveCutList, uncut } from '../cutlist/cutList';
import { type Need, orderList } from '../cutlist/order';
import type { Grade, Plan, Price } from '../facts/result';
import type { RoutingAnswer, RoutingAsk, Solve } from '../facts/routing';
import type { RuleFacts, Verdict } from '../facts/ruling';
import type { Job, Option } from '../job/schema';
import { indexBook } from '../pricing/assemblies';
import { conditionWork } from '../pricing/conditions';
import { takesOldPlace } from '../pricing/oldPlace';
import { likelyHours, price, takenWork } from '../pricing/price';
import { quoteOf } from '../pricing/quote';
import { rollOverWork, type TimeAsk, timePlan, workingDay } from '../pricing/time';
import { priceTotals } from '../pricing/totals';
import { unitChanges } from '../pricing/unitChanges';
import { prove, route } from '../routing/route';
import { isSameQuestion } from '../routing/sameQuestion';
import { compareText } from '../units/order';
import { afciPriced, alternatesOf } from './alternates';
import { assumedIn } from './assumed';
import { electrodeMove } from './electrode';
import { feederChoices } from './feederChoices';
import { toFinding } from './findings';
import { forgettingAfci } from './forgettingAfci';
import { missingCoils, missingFeeder, missingFields, missingItems, missingWays, sortedMissing } from './missing';
import { packagesOf } from './offers';
import { openMatters } from './openMatters';
import { isOldWiring } from './penalties';
import { boughtSpaces, type RequiredWork, requiredWork } from './required';
import { settle } from './settle';
import { type Stage, stageOf } from './stages';
import { afciOpenIn, tallyOf } from './tally';

/** A plan with what the job-wide lists are made of. */
export interface Planned {
  readonly plan: Plan;
  readonly verdicts: readonly Verdict[];
  readonly answer: RoutingAnswer;
  readonly facts: RuleFacts;
  /** What routing was asked and said without the solver, so that the same question is not searched twice. */
  readonly ask: RoutingAsk;
  readonly routed: RoutingAnswer;
  /** What the cut list was asked. */
  readonly cutAsk: CutListAsk;
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
  const spaces = boughtSpaces(option, facts.arrangement.directory.length, book);
  const { alternates, work: alternateWork } = alternatesOf({ job, book, afci, breakers, gfci, spdRule, spaces });
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
  const asked: Omit<TimeAsk, 'work'> = {
    inOldPlace: takesOldPlace(job, option),
    feederKept: facts.feeder.way === 'kept',
    spaceAtSource: job.feeder.from.spaceFree,
    book,
    runs: answer.runs,
    circuits: job.circuits.map((c) => c.id),
    circuitsOf: (id) => job.homeRuns.find((h) => h.id === id)?.circuits ?? [],
    terms: job.terms,
  };
  const rolling = rollOverWork(asked);
  const base: RequiredWork[] = [...direct, ...slowed, ...rolling];
  const hours = likelyHours(takenWork(base, alternates), indexBook(book));
  const days = Math.max(1, Math.ceil(hours / (job.terms.people * workingDay(job.terms))));
  const work: RequiredWork[] = [
    ...base,
    { item: 'load in', quantity: days, homeRuns: [], rule: null, alternate: null },
  ];
  const taken = takenWork(work, alternates);
  const time = timePlan({ ...asked, work: taken });
  const priced = price({
    work,
    book,
    practice: job.practice,
    surveyGrade: job.survey.grade,
    alternates,
    packages: grade === 'live' ? [] : packagesOf(alternates),
  });
  const cutAsk: CutListAsk = {
    runs: answer.runs,
    feeder: { cable: facts.feeder.cable, length: answer.feeder.cutLength, way: answer.feeder.way },
    book,
    stock: job.stock,
  };
  const cuts = cutList(cutAsk);
  const open = sortedMissing([
    ...missingItems(job, book, taken, priced.missing),
    ...missingFields(job, openMatters(job, option, verdicts)),
    ...missingCoils(book, uncut(cutAsk, cuts)),
    ...missingWays(job, answer),
    ...missingFeeder(job, option, answer),
  ]);
  const totals = priceTotals(priced);
  const plan: Plan = {
    option: option.id,
    grade,
    tally: tallyOf({ findings, runs: answer.runs, boxes: answer.boxes, afci }, totals, time),
    electrode,
    spds: facts.spds,
    connectors: connectorsIn(taken),
    knockoutsUsed: facts.knockoutsUsed,
    loadMethod: stage.load.method,
    runs: answer.runs,
    boxes: answer.boxes,
    rows: answer.rows,
    feeder: { ...facts.feeder, choices: feederChoices(stage, facts.feeder, answer.feeder) },
    afci,
    afciOpen: afciOpenIn(afci),
    findings,
    doesNotApply,
    load: stage.load.worked,
    directory: facts.arrangement.directory,
    price: {
      ...priced,
      unitChanges: grade === 'live' ? [] : unitChanges(book, job.practice),
      forgettingAfci: forgettingAfci(job, book, breakers, afciPriced(afci), gfci, isOldWiring(job)),
      quote: quoteOf({
        terms: job.terms,
        surveyGrade: job.survey.grade,
        price: { complete: open.length === 0 },
        likelyCents: totals.likely,
        book,
      }),
      complete: open.length === 0,
      missing: open.map((m) => m.id),
      missingSay: open.map((m) => m.say),
      assumed: assumedIn(job, afci, verdicts, taken, facts.feeder),
    },
    time: time.plan,
    cuts,
    order: orderList(needsOf(priced), cuts, book),
    proof: answer.proof,
    pins: [],
  };
  return { plan, verdicts, answer, facts, ask: stage.ask, routed, cutAsk };
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
  const planned = finish(stage, routed, 'proven', await prove(stage.ask, routed, solve));
  const cuts = await proveCutList(planned.cutAsk, planned.plan.cuts, solve);
  if (cuts === planned.plan.cuts) return planned;
  const order = orderList(needsOf(planned.plan.price), cuts, stage.book);
  return { ...planned, plan: { ...planned.plan, cuts, order } };
};
