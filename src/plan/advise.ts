import type { Advice, Plan, Result } from '../facts/result';
import type { Job } from '../job/schema';
import { optionById } from '../job/site';
import { formatWholeDollars } from '../units/money';
import type { Id } from '../units/types';
import { planWords as say } from '../words/en/plan';
import { confidenceOf } from './confidence';
import { decision, isOpen, recommended, titles } from './decision';
import { type Candidate, candidates } from './flips';
import { visibleOf } from './visible';

/** Plans options of a changed job: how a flip is found (live is enough to see that it is none) and checked. */
export type Replan = (job: Job, options: readonly Id[], grade?: 'live' | 'final') => readonly Plan[];

const whatStops = (plan: Plan): string =>
  [...new Set(plan.findings.filter((f) => f.effect === 'stops the job').map((f) => f.say))].join(' ');

/** Each reason names a figure of the result by its path. */
const reasonsFor = (job: Job, plans: readonly Plan[]): Advice['reasons'] => {
  const title = titles(job);
  return plans.flatMap((plan, i) => {
    const { tally } = plan;
    const at = (figure: string) => `plans/${i}/tally/${figure}`;
    const v = { title: title(plan.option) };
    return [
      ...(tally.stops > 0
        ? [
            {
              say: say.stops({ ...v, count: tally.stops, findings: whatStops(plan) }),
              figure: at('stops'),
              value: tally.stops,
            },
          ]
        : []),
      {
        say: say.price({ ...v, dollars: formatWholeDollars(tally.likelyCents) }),
        figure: at('likelyCents'),
        value: tally.likelyCents,
      },
      { say: say.afci({ ...v, count: tally.afciAdded }), figure: at('afciAdded'), value: tally.afciAdded },
      {
        say: say.splices({ ...v, count: tally.conductorsSpliced, boxes: tally.boxes }),
        figure: at('conductorsSpliced'),
        value: tally.conductorsSpliced,
      },
      { say: say.outage({ ...v, hours: tally.outageHours }), figure: at('outageHours'), value: tally.outageHours },
    ];
  });
};

/** A live plan is seldom above the final one by more: another option that is dearer even so is not planned whole. */
const LIVE_ABOVE = 0.05;

/** The option that comes out first when a change is made; undefined where nothing is free of stops. */
const winnerAfter = (candidate: Candidate, plans: readonly Plan[], best: Plan | undefined, replan: Replan) => {
  const { job, touches, by } = candidate;
  const seen = (again: readonly Plan[]) => recommended(plans.map((p) => again.find((a) => a.option === p.option) ?? p));
  if (best && by === 'best') {
    // a live plan is no better than the final one: where it stays first, so does that
    const stays = !touches.includes(best.option) || seen(replan(job, [best.option], 'live'))?.option === best.option;
    return stays ? best : seen(replan(job, [best.option]));
  }
  if (best && by === 'others') {
    const others = touches.filter((id) => id !== best.option);
    const may = replan(job, others, 'live').some(
      (p) => isOpen(p) && p.tally.likelyCents * (1 - LIVE_ABOVE) < best.tally.likelyCents,
    );
    if (!may) return best;
  }
  return seen(replan(job, touches));
};

/** What would change the answer: each candidate applied and planned again, kept only where another option comes out first. */
const flipsOf = (job: Job, plans: readonly Plan[], best: Plan | undefined, replan: Replan): Advice['flips'] => {
  const title = titles(job);
  return candidates(job, plans, best).flatMap((group) => {
    for (const candidate of group) {
      const winner = winnerAfter(candidate, plans, best, replan);
      if (winner?.option === best?.option) continue;
      const cents = (winner?.tally.likelyCents ?? 0) - (best?.tally.likelyCents ?? 0);
      const to = winner
        ? say.flipTo({ title: title(winner.option), dollars: formatWholeDollars(winner.tally.likelyCents) })
        : say.flipNone();
      return [{ say: candidate.say(to), change: candidate.change, option: winner?.option ?? null, cents }];
    }
    return [];
  });
};

/** The decision in one sentence, the figures behind it, and what would turn it. */
export const advise = (job: Job, plans: readonly Plan[], replan: Replan, unknown: Result['unknown'] = []): Advice => {
  const best = recommended(plans);
  return {
    option: best?.option ?? null,
    say: decision(job, plans, best),
    reasons: reasonsFor(job, plans),
    flips: flipsOf(job, plans, best, replan),
    visible: plans.flatMap((plan) => {
      const option = optionById(job, plan.option);
      return option ? [{ option: plan.option, things: visibleOf(job, option, plan) }] : [];
    }),
    confidence: confidenceOf(job, plans, unknown, replan),
  };
};
