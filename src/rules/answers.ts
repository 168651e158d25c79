import type { Job } from '../job/schema';
import type { RuleId } from '../standards/sections';
import { compareText } from '../units/order';
import type { Id } from '../units/types';
import { rulesWords as say } from '../words/en/rules';
import { holds, type Says, stops } from './rule';

type Answer = Job['answers'][number];

const EVERYTHING: Id = 'job';

/** The last answer given to a rule about this subject, or about the whole job. */
export const answerTo = (job: Job, rule: RuleId, subject: Id): Answer | undefined =>
  job.answers
    .filter((a) => a.rule === rule && (a.subject === subject || a.subject === EVERYTHING))
    .sort((a, b) => compareText(b.on, a.on) || compareText(JSON.stringify(a), JSON.stringify(b)))
    .find((a) => a.subject === subject || !job.answers.some((b) => b.rule === rule && b.subject === subject));

const said = ({ answer }: Answer): boolean | null =>
  answer === true || answer === 'yes' ? true : answer === false || answer === 'no' ? false : null;

/**
 * An inspector's yes or no, or a look on site, settles what a rule could not tell. It never turns a failure: whoever
 * measured wrong corrects the measure.
 */
export const withAnswer = (job: Job, rule: RuleId, subject: Id, verdict: Says): Says => {
  if (verdict.outcome !== 'cannot be told') return verdict;
  const answer = answerTo(job, rule, subject);
  const yes = answer && said(answer);
  if (!answer || yes === null || yes === undefined) return verdict;
  if (verdict.effect === 'note' && !yes) return verdict; // a duty of the day is still a duty
  const amendment = `${rule} = ${yes ? 'yes' : 'no'} (${answer.by}, ${answer.on})`;
  const text = say.answered({ yes, by: answer.by, on: answer.on, note: answer.note });
  return yes
    ? holds(text, { measured: verdict.measured, required: verdict.required, unit: verdict.unit, amendment })
    : stops(text, {
        measured: verdict.measured,
        required: verdict.required,
        unit: verdict.unit,
        shape: verdict.shape,
        amendment,
      });
};
