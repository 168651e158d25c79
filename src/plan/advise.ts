import type { Advice, Plan } from '../facts/result';
import type { Job, Option } from '../job/schema';
import { formatWholeDollars } from '../units/money';
import { byId } from '../units/order';
import type { Id } from '../units/types';
import { planWords as say } from '../words/en/plan';
import { decision, recommended, titles } from './decision';

/** Plans options of a changed job: how a flip is found and checked. */
export type Replan = (job: Job, options: readonly Id[]) => readonly Plan[];

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

interface Candidate {
  readonly change: { readonly path: string; readonly value: unknown };
  readonly job: Job;
  /** The options whose plan the change can touch; the others stand. */
  readonly touches: readonly Id[];
  readonly say: (option: string) => string;
}

const withOption = (job: Job, at: number, option: Option): Job => ({
  ...job,
  options: job.options.map((o, i) => (i === at ? option : o)),
});

/** Things that could be carried out of the way of an option that is stopped, one at a time. */
const movesOf = (job: Job, plan: Plan): Candidate[] => {
  const at = job.options.findIndex((o) => o.id === plan.option);
  const option = job.options[at]!;
  const movable = byId(job.site.obstacles).filter(
    (o) => o.moveCents !== null && o.blocksSpace && !option.moves.some((m) => m.obstacle === o.id),
  );
  return movable.map((thing) => {
    const moves = [...option.moves, { obstacle: thing.id, to: 'away' as const }];
    return {
      change: { path: `/options/${at}/moves`, value: moves },
      job: withOption(job, at, { ...option, moves }),
      touches: [option.id],
      say: (to) => say.flipMove({ thing: thing.kind, option: to }),
    };
  });
};

/** The inspector's answers that decide money: each the other way round. */
const answersOf = (job: Job, touches: readonly Id[]): Candidate[] => {
  const amended = (key: string, value: string, sentence: Candidate['say']): Candidate[] =>
    job.code.amendments[key] === value
      ? []
      : [
          {
            change: { path: `/code/amendments/${key}`, value },
            job: { ...job, code: { ...job.code, amendments: { ...job.code.amendments, [key]: value } } },
            touches,
            say: sentence,
          },
        ];
  return [
    ...amended('spliceCan', 'yes', (to) => say.flipSpliceCan({ answer: 'yes', option: to })),
    ...amended('spliceCan', 'no', (to) => say.flipSpliceCan({ answer: 'no', option: to })),
    ...amended('afciOnPanelReplacement', 'none', (to) => say.flipAfci({ option: to })),
  ];
};

const candidates = (job: Job, plans: readonly Plan[]): Candidate[] => [
  ...plans.filter((p) => p.tally.stops > 0).flatMap((p) => movesOf(job, p)),
  ...answersOf(
    job,
    plans.map((p) => p.option),
  ),
];

/** What would change the answer: each candidate applied and planned again, kept only where another option comes out first. */
const flipsOf = (job: Job, plans: readonly Plan[], best: Plan | undefined, replan: Replan): Advice['flips'] => {
  const title = titles(job);
  return candidates(job, plans).flatMap((candidate) => {
    const again = replan(candidate.job, candidate.touches);
    const winner = recommended(plans.map((p) => again.find((a) => a.option === p.option) ?? p));
    if (winner?.option === best?.option) return [];
    const cents = (winner?.tally.likelyCents ?? 0) - (best?.tally.likelyCents ?? 0);
    const to = winner
      ? say.flipTo({ title: title(winner.option), dollars: formatWholeDollars(winner.tally.likelyCents) })
      : say.flipNone();
    return [{ say: candidate.say(to), change: candidate.change, option: winner?.option ?? null, cents }];
  });
};

/** The decision in one sentence, the figures behind it, and what would turn it. */
export const advise = (job: Job, plans: readonly Plan[], replan: Replan): Advice => {
  const best = recommended(plans);
  return {
    option: best?.option ?? null,
    say: decision(job, plans, best),
    reasons: reasonsFor(job, plans),
    flips: flipsOf(job, plans, best, replan),
  };
};
