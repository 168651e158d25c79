import type { Finding } from '../facts/result';
import type { Remedy, Verdict } from '../facts/ruling';
import type { UnitMills } from '../facts/work';
import type { Job } from '../job/schema';
import { type RuleId, sectionOf } from '../standards/sections';
import { roundHalfAway } from '../units/money';
import type { Cents } from '../units/types';

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

/** A verdict with its section, the standing of that section, and priced remedies. */
export const toFinding = (job: Job, verdict: Verdict, unit: UnitMills): Finding | null => {
  if (verdict.outcome === 'does not apply') return null;
  const { section, standing } = sectionOf(verdict.rule as RuleId, job.code.edition);
  return {
    rule: verdict.rule,
    subject: verdict.subject,
    outcome: verdict.outcome,
    effect: verdict.effect,
    measured: verdict.measured,
    required: verdict.required,
    unit: verdict.unit,
    section,
    standing,
    amendment: verdict.amendment,
    say: verdict.say,
    look: verdict.look,
    remedies: verdict.remedies.map((r) => ({ say: r.say, cents: remedyCents(r, unit) })),
    shape: verdict.shape,
  };
};
