import { useMemo } from 'react';
import type { Plan } from '../facts/result';
import type { Job, Option } from '../job/schema';
import type { Live } from '../state/jobState';
import { byId } from '../units/order';
import { screenWords as say } from '../words/en/screens';
import { useJobState } from './session';

/** An option with its place among the options in the order of the result, and its plan as far as there is one. */
export interface OptionView {
  readonly option: Option;
  readonly at: number;
  /** In place, A, B …: short enough for a tab. */
  readonly letter: string;
  readonly plan: Plan | null;
  /** Its panel is being dragged, or was just let go: the plan is a live one. */
  readonly live: boolean;
}

/** Options that stay are numbered, those that move are lettered, in the order of the result. */
export const optionViews = (job: Job, plans: readonly Plan[]): OptionView[] => {
  const options = byId(job.options);
  const staying = options.filter((o) => o.kind === 'in place');
  const moving = options.filter((o) => o.kind === 'relocate');
  return options.map((option, at) => ({
    option,
    at,
    letter:
      option.kind === 'in place'
        ? say.inPlace({ nth: staying.length > 1 ? staying.indexOf(option) + 1 : null })
        : letterOf(moving.indexOf(option)),
    plan: plans.find((p) => p.option === option.id) ?? null,
    live: false,
  }));
};
/** A … Z, AA, AB …. */
const letterOf = (n: number): string =>
  (n >= 26 ? letterOf(Math.floor(n / 26) - 1) : '') + String.fromCharCode(65 + (n % 26));

/** Path of a plan's figure in the result. */
export const figurePath = (at: number, path: string): string => `plans/${at}/${path}`;

/** The open job; only for screens shown with a job. */
export const useJob = (): Job => {
  const job = useJobState((s) => s.history?.now);
  if (!job) throw new Error('No job is open');
  return job;
};

/** The option with its panel where it is held, and the live plan as far as there is one. */
const held = (view: OptionView, live: Live): OptionView => ({
  ...view,
  option: { ...view.option, enclosure: { ...view.option.enclosure, on: live.on } },
  plan: live.plan ?? view.plan,
  live: live.plan !== null,
});

const NO_PLANS: readonly Plan[] = [];
/** Plans that have been made for an earlier state of the job are still shown, and said to be. */
export const useStale = (): boolean => useJobState((s) => s.answer !== null && s.answer.revision !== s.revision);

export const useOptions = (): readonly OptionView[] => {
  const job = useJob();
  const plans = useJobState((s) => s.answer?.plans ?? NO_PLANS);
  const live = useJobState((s) => s.live);
  const views = useMemo(() => optionViews(job, plans), [job, plans]);
  return useMemo(() => views.map((view) => (live?.option === view.option.id ? held(view, live) : view)), [views, live]);
};

export const useSelected = (): OptionView | undefined => {
  const id = useJobState((s) => s.option);
  return useOptions().find((o) => o.option.id === id);
};
