import type { RuleFacts, Verdict } from '../facts/ruling';
import type { Job } from '../job/schema';
import { isRequiredIn } from '../standards/sections';
import { compareText } from '../units/order';
import { EDITIONS, type Edition, type Id, isKnown } from '../units/types';
import { rulesWords as say } from '../words/en/rules';
import { withAnswer } from './answers';
import { RULES } from './list';
import { cannotBeTold, doesNotApply, type Rule, type Says } from './rule';

const EDITION_PATH = '/code/edition';

const inYear = (job: Job, edition: Edition): Job => ({ ...job, code: { ...job.code, edition } });

/** What one rule says in one code year, subject by subject. */
const inEdition = (rule: Rule, facts: RuleFacts, edition: Edition): Map<Id, Says> => {
  const asked = { ...facts, job: inYear(facts.job, edition), edition };
  const required = isRequiredIn(rule.id, edition);
  return new Map(
    [...new Set(rule.subjects(asked))].map((subject) => [
      subject,
      required ? rule.check(asked, subject) : doesNotApply(),
    ]),
  );
};

/** With the code year not known, what all four say alike; otherwise nobody can tell before it is. */
const common = (answers: readonly Says[]): Says => {
  const first = answers[0]!;
  if (answers.every((a) => a.outcome === first.outcome)) {
    // Alike in the outcome, they may differ in what cures it: the fullest is taken, the earliest year among equals.
    return answers.reduce((best, a) => (a.cure.length > best.cure.length ? a : best));
  }
  const waits = answers.flatMap((a) => a.unknown);
  return cannotBeTold(say.editionUnknown(), say.editionLook(), [EDITION_PATH, ...waits]);
};

const judge = (rule: Rule, facts: RuleFacts): Verdict[] => {
  const { edition } = facts.job.code;
  const years = (isKnown(edition) ? [edition] : EDITIONS).map((year) => inEdition(rule, facts, year));
  const subjects = [...new Set(years.flatMap((year) => [...year.keys()]))].sort(compareText);
  return subjects.map((subject) => ({
    rule: rule.id,
    subject,
    ...withAnswer(facts.job, rule.id, subject, common(years.map((year) => year.get(subject) ?? doesNotApply()))),
  }));
};

/** Every rule asked of everything it looks at: verdicts sorted by rule and subject, and how often each had nothing to say. */
export const runRules = (facts: RuleFacts): { verdicts: Verdict[]; doesNotApply: Record<string, number> } => {
  const all = RULES.flatMap((rule) => judge(rule, facts));
  const silent: Record<string, number> = {};
  for (const rule of [...RULES].sort((a, b) => compareText(a.id, b.id))) {
    const count = all.filter((v) => v.rule === rule.id && v.outcome === 'does not apply').length;
    if (count > 0) silent[rule.id] = count;
  }
  return {
    verdicts: all
      .filter((v) => v.outcome !== 'does not apply')
      .sort((a, b) => compareText(a.rule, b.rule) || compareText(a.subject, b.subject)),
    doesNotApply: silent,
  };
};
