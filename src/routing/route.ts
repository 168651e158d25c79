import type { Proof } from '../facts/result';
import type { RoutingAnswer, RoutingAsk, Solve } from '../facts/routing';
import type { Mills } from '../units/money';
import { isKnown } from '../units/types';
import { answerFor, type Chosen } from './answer';
import { assign } from './assign';
import type { Candidate } from './candidate';
import { type Assignment, costOf, type Problem } from './choice';
import { feederOf } from './feeder';
import { hungAt } from './hung';
import { type Posed, pose, pruned, type Setting, settingOf } from './problem';
import { modelOf, picksFrom } from './proof';
import { rowsProof } from './rowsProof';
import type { Share } from './share';
import type { Assumed } from './types';
import { hiddenAssumption } from './waysNew';
import { spread, type Widened, widened } from './widen';

/** A tenth of a mill: below what prices are rounded to. */
const SAME_MILLS = 0.5;

/** How far the choice, with the width of its banks, can be above the best that boxes without width allow. */
const proofOf = ({ tried, widthMills }: Pick<Finished, 'tried' | 'widthMills'>, bound: number): Proof => {
  const mills = tried.found.mills + widthMills;
  return mills - bound <= SAME_MILLS
    ? { best: true }
    : { best: false, atMostAbove: bound > 0 ? (mills - bound) / bound : 1 };
};

/** What no choice can fall below: every home run at its own cheapest, boxes, spots and shared penalties for nothing. */
const floorOf = (problem: Problem): number =>
  problem.runs.reduce((sum, choices) => sum + Math.min(...choices.map((c) => c.mills)), 0);

/** Chosen without a solver; where pins force more spots than practice allows, as many as they force. */
const choose = (problem: Problem): Assignment =>
  assign(problem) ?? assign({ ...problem, maxSpots: problem.spots.length }) ?? fallback(problem);

/** Never needed while a box fits every offered cable; keeps the promise of an answer. */
const fallback = (problem: Problem): Assignment => {
  const picks = problem.runs.map(() => 0);
  return { picks, mills: costOf(problem, picks) };
};

const finish = ({ tried, posed, chosen, made: whole }: Finished, splices: Proof): RoutingAnswer => {
  const { ask } = posed;
  const { shared: _, ...made } = whole;
  return {
    ...made,
    feeder: feederOf(ask, posed.routes.network),
    workMills: posed.terms.pricer.exact(made.work),
    objectiveMills: tried.found.mills,
    proof: { splices, rows: ask.grade === 'live' ? { best: false, atMostAbove: 1 } : rowsProof(posed, chosen, made) },
    assumed: assumptions(posed, chosen),
  };
};

const assumptions = (posed: Posed, chosen: readonly Candidate[]): Assumed[] => {
  const list = [
    ...posed.assumed,
    ...posed.facts.flatMap((f, r) => {
      const c = chosen[r]!;
      const fresh = c.newCable === null ? [] : f.assumed;
      return c.way === 'new home run' && !isKnown(f.homeRun.wholeLength)
        ? [...fresh, hiddenAssumption(posed.ask.job, f)]
        : fresh;
    }),
  ];
  const once = new Map(list.map((a) => [a.path, a]));
  return [...once.values()].sort((a, b) => (a.path < b.path ? -1 : 1));
};

/** A question posed for one manner of sharing, answered, and what the answer comes to with everything counted once. */
export interface Tried {
  readonly posed: Posed;
  readonly problem: Problem;
  readonly candidates: readonly (readonly Candidate[])[];
  readonly found: Assignment;
  readonly made: Chosen;
  readonly trueMills: number;
}

const answered = (posed: Posed, problem: Problem, candidates: Tried['candidates'], found: Assignment): Tried => {
  const chosen = found.picks.map((i, r) => candidates[r]![i]!);
  const hung = hungAt(posed, problem, found.picks);
  const live = posed.ask.grade === 'live';
  const made = answerFor(posed, problem, found.picks, chosen, live ? spread(posed, hung) : hung);
  const alone = chosen.reduce((sum, c) => sum + c.sharedMills, 0);
  const trueMills = found.mills - alone + posed.terms.pricer.cost(made.shared);
  return { posed, problem, candidates, found, made, trueMills };
};

const attempt = (setting: Setting, share: Share): Tried => {
  const posed = pose(setting, share);
  const { problem, candidates } = pruned(posed);
  return answered(posed, problem, candidates, choose(problem));
};

/** A choice carried out: its boxes hung side by side, every cable led to its own. */
interface Finished extends Pick<Widened, 'posed' | 'chosen'> {
  readonly setting: Setting;
  readonly tried: Tried;
  readonly made: Chosen;
  /** What the width of its banks costs beyond the search, which takes every spot for a point; never less than 0. */
  readonly widthMills: Mills;
}

const carriedOut = (setting: Setting, tried: Tried): Finished => {
  const { posed, problem, candidates, found } = tried;
  const chosen = found.picks.map((i, r) => candidates[r]![i]!);
  const plain = { setting, tried, posed, chosen, made: tried.made, widthMills: 0 };
  if (posed.ask.grade === 'live') return plain;
  const wide = widened(setting, posed, problem, found, chosen);
  if (wide === null) return plain;
  const made = answerFor(wide.posed, problem, found.picks, wide.chosen, wide.hung);
  return { ...plain, posed: wide.posed, chosen: wide.chosen, made, widthMills: wide.mills };
};

const finishedByAsk = new WeakMap<RoutingAsk, Finished>();

/**
 * The cheapest of all manners of sharing (cables that go alone, cables that go together), everything counted once. Kept,
 * since `prove` asks what `route` has asked.
 */
const finished = (ask: RoutingAsk): Finished => {
  const known = finishedByAsk.get(ask);
  if (known) return known;
  const setting = settingOf(ask);
  const tried = setting.shares.map((share) => attempt(setting, share));
  const best = carriedOut(
    setting,
    tried.reduce((a, b) => (b.trueMills < a.trueMills ? b : a)),
  );
  finishedByAsk.set(ask, best);
  return best;
};

/** What was chosen, before its boxes are hung. */
export const tryBoth = (ask: RoutingAsk): Tried => finished(ask).tried;

/** Every home run's way to the new panel, boxes, rows and work of one option: cold and deterministic, no solver. */
export const route = (ask: RoutingAsk): RoutingAnswer => {
  const done = finished(ask);
  return finish(done, proofOf(done, floorOf(done.tried.problem)));
};

/**
 * The same choice put to a solver, stopped by node count. A strictly cheaper choice, judged by the true objective,
 * replaces the answer; otherwise the answer stays and the bound is added. 'Best' only where the bound meets it.
 */
export const prove = async (ask: RoutingAsk, answer: RoutingAnswer, solve: Solve): Promise<RoutingAnswer> => {
  const done = finished(ask);
  const { setting, tried } = done;
  const { posed, problem, candidates, found } = tried;
  if (found.mills - floorOf(problem) <= SAME_MILLS) return answer;
  const solved = await solve(modelOf(problem, ask.boxes, posed.fill, posed.boxPrice));
  if (solved.status === 'failed') return answer;
  const solverBound = solved.status === 'optimal' ? Math.floor(solved.objective + 1e-6) : solved.bound;
  const bound = Math.max(solverBound, floorOf(problem));
  const picks = solved.status === 'optimal' ? picksFrom(problem, solved.values) : null;
  const mills = picks ? costOf(problem, picks) : Number.POSITIVE_INFINITY;
  if (picks && mills < answer.objectiveMills) {
    const theirs = answered(posed, problem, candidates, { picks, mills });
    const carried = carriedOut(setting, theirs);
    if (theirs.trueMills + carried.widthMills <= tried.trueMills + done.widthMills)
      return finish(carried, proofOf(carried, bound));
  }
  return { ...answer, proof: { ...answer.proof, splices: proofOf(done, bound) } };
};
