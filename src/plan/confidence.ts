import type { Confidence, Plan, Result } from '../facts/result';
import { setValue } from '../job/change';
import { possibleAt } from '../job/possible';
import type { Job } from '../job/schema';
import { compareText } from '../units/order';
import type { Cents } from '../units/types';
import { confidenceWords as say } from '../words/en/confidence';
import type { Replan } from './advise';
import { recommended, titles } from './decision';

/** Fields tried, those first for which most waits, and values of each: a walk-through is decided on the spot. */
const MOST_FIELDS = 6;
const MOST_VALUES = 3;

/** How much the likely price of an option may move, whichever way. */
const swing = (before: Plan | undefined, after: Plan | undefined): Cents =>
  before && after ? Math.abs(after.tally.likelyCents - before.tally.likelyCents) : 0;

const written = (value: unknown): string =>
  typeof value === 'boolean' ? (value ? say.yes : say.no) : typeof value === 'object' ? say.otherwise : String(value);

/** One unknown, settled each way: the first value that turns the advice, else the one that moves its price most. */
const tryField = (
  job: Job,
  plans: readonly Plan[],
  field: Result['unknown'][number],
  replan: Replan,
): Confidence['unknowns'][number] | null => {
  const best = recommended(plans);
  const title = titles(job);
  const ids = plans.map((p) => p.option);
  let most: Confidence['unknowns'][number] | null = null;
  for (const value of possibleAt(field.path).slice(0, MOST_VALUES)) {
    const changed = setValue(job, field.path, value);
    if (!changed.ok) continue;
    const settled = changed.value as Job;
    const live = recommended(replan(settled, ids, 'live'));
    // live only raises the question: what is told is planned whole
    const again = live?.option === best?.option ? null : recommended(replan(settled, ids));
    const winner = again ?? live;
    const turns = again !== null && again?.option !== best?.option;
    const cents = swing(best, winner);
    const v = { what: field.say, value: written(value) };
    if (turns)
      return {
        path: field.path,
        value,
        turns,
        cents,
        option: winner?.option ?? null,
        say: winner ? say.turns({ ...v, option: title(winner.option) }) : say.none(v),
      };
    if (most === null || cents > most.cents)
      most = { path: field.path, value, turns, cents, option: best?.option ?? null, say: say.moves(v) };
  }
  return most;
};

/**
 * How sure the advice of a walk-through is: what is not known, settled one thing at a time, ranked by whether it turns
 * the advice and then by how far it moves the price. Null for a full survey.
 */
export const confidenceOf = (
  job: Job,
  plans: readonly Plan[],
  unknown: Result['unknown'],
  replan: Replan,
): Confidence | null => {
  if (job.survey.grade !== 'walk-through') return null;
  const fields = [...unknown].sort((a, b) => b.blocks.length - a.blocks.length || compareText(a.path, b.path));
  const askable = fields.filter((f) => possibleAt(f.path).length > 0);
  const tried = askable
    .slice(0, MOST_FIELDS)
    .flatMap((field) => tryField(job, plans, field, replan) ?? [])
    .sort((a, b) => Number(b.turns) - Number(a.turns) || b.cents - a.cents || compareText(a.path, b.path));
  const turning = tried.filter((t) => t.turns).length;
  const v = { tried: tried.length, unknown: unknown.length, turning };
  return { say: turning > 0 ? say.open(v) : say.firm(v), unknowns: tried };
};
