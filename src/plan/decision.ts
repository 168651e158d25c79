import type { Plan } from '../facts/result';
import type { Job } from '../job/schema';
import { formatWholeDollars, roundHalfAway } from '../units/money';
import { compareText } from '../units/order';
import type { Id } from '../units/types';
import { planWords as say } from '../words/en/plan';

/** Fewest stops first, a complete price before one with holes, then the likely price, then the option's id. */
const order = (a: Plan, b: Plan): number =>
  a.tally.stops - b.tally.stops ||
  Number(b.price.complete) - Number(a.price.complete) ||
  a.tally.likelyCents - b.tally.likelyCents ||
  compareText(a.option, b.option);

/** Nothing stops it, and every cable has a way. */
export const isOpen = (plan: Plan): boolean =>
  plan.tally.stops === 0 && plan.runs.every((r) => r.blockedBy.length === 0);

/** The best plan that nothing stops, or undefined. */
export const recommended = (plans: readonly Plan[]): Plan | undefined => [...plans].filter(isOpen).sort(order)[0];

/** Options by their title. */
export const titles = (job: Pick<Job, 'options'>): ((id: Id) => string) => {
  const byOption = new Map(job.options.map((o) => [o.id, o.title]));
  return (id) => byOption.get(id) ?? id;
};

const dollarsOf = (plan: Plan): number => roundHalfAway(plan.tally.likelyCents / 100);

/**
 * The decision in a sentence or two, in whole dollars. A price is compared only with another of its kind: complete ones
 * with each other; where none is complete, what is priced so far, and said to be.
 */
export const decision = (job: Pick<Job, 'options'>, plans: readonly Plan[], best: Plan | undefined): string => {
  if (plans.length === 0) return say.noOptionAsked();
  if (!best) return say.noOption();
  const named = titles(job);
  const title = named(best.option);
  const others = plans.filter((p) => p.option !== best.option && isOpen(p)).sort(order);
  const { complete } = best.price;
  if (others.length === 0)
    return (plans.length === 1 ? say.onlyOption : say.recommendBarred)({ title }) + (complete ? '' : say.incomplete());
  const next = others.find((p) => p.price.complete === complete);
  if (!next) return say.onlyComplete({ title });
  const saves = dollarsOf(next) - dollarsOf(best);
  const v = { title, over: named(next.option), saves: formatWholeDollars(saves * 100) };
  if (!complete) return say.noneComplete() + (saves === 0 ? say.sameSoFar(v) : say.lessSoFar(v));
  const cheaper = others.find((p) => !p.price.complete && p.tally.likelyCents < best.tally.likelyCents);
  return (
    (saves === 0 ? say.recommendSame(v) : say.recommend(v)) +
    (cheaper ? say.cheaperWithHoles({ title: named(cheaper.option) }) : '')
  );
};
