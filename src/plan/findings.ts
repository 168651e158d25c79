import type { Finding } from '../facts/result';
import type { Remedy, Verdict } from '../facts/ruling';
import type { UnitMills } from '../facts/work';
import { answerOf } from '../job/questions';
import type { Job, Option } from '../job/schema';
import { type RuleId, sectionOf } from '../standards/sections';
import { type SplitRule, splitOf } from '../standards/splits';
import { roundHalfAway } from '../units/money';
import { type Cents, isKnown } from '../units/types';
import { splitWords } from '../words/en/splits';

/** Direct cost of a remedy's work, or the sum the survey gave; null where a price is missing. */
const remedyCents = (remedy: Remedy, unit: UnitMills): Cents | null => {
  if (remedy.work.length === 0) return remedy.cents;
  let mills = 0;
  for (const work of remedy.work) {
    const each = unit(work.item);
    if (each === undefined) return null;
    mills += each * work.quantity;
  }
  return roundHalfAway(mills / 10) + (remedy.cents ?? 0);
};

/** The two sides where practice is split on an open finding, until an answer settles it. */
const splitFor = (job: Job, option: Option, verdict: Verdict): string | null => {
  const split = splitOf(verdict.rule);
  if (!split || verdict.effect === null || verdict.amendment !== null) return null;
  if (!split.shownOn.includes(verdict.effect)) return null;
  if (split.only !== undefined && split.only !== option.kind) return null;
  const { edition } = job.code;
  if (isKnown(edition) && !split.years.includes(edition)) return null;
  if (split.question !== null && answerOf(job, split.question)) return null;
  return splitWords[verdict.rule as SplitRule];
};

/** A verdict with its section, the standing of that section, and priced remedies. */
export const toFinding = (job: Job, option: Option, verdict: Verdict, unit: UnitMills): Finding | null => {
  if (verdict.outcome === 'does not apply') return null;
  const { section, standing } = sectionOf(verdict.rule as RuleId, job.code.edition);
  // with the code year not known only the rule's own sections hold for all of them
  const decided = isKnown(job.code.edition) ? verdict.section : null;
  return {
    rule: verdict.rule,
    subject: verdict.subject,
    outcome: verdict.outcome,
    effect: verdict.effect,
    measured: verdict.measured,
    required: verdict.required,
    unit: verdict.unit,
    section: decided ?? section,
    standing,
    amendment: verdict.amendment,
    say: verdict.say,
    look: verdict.look,
    split: splitFor(job, option, verdict),
    remedies: verdict.remedies.map((r) => ({ say: r.say, cents: remedyCents(r, unit) })),
    shape: verdict.shape,
  };
};
