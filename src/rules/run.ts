import type { RuleFacts, Verdict } from '../facts/ruling';
import type { Job } from '../job/schema';
import { isRequiredIn } from '../standards/sections';
import { compareText } from '../units/order';
import { EDITIONS, type Edition, type Id, isKnown } from '../units/types';
import { rulesWords as say } from '../words/en/rules';
import { withAnswer } from './answers';
import { RULES } from './list';
import { cannotBeTold, doesNotApply, type FactsInYear, type Rule, type Says } from './rule';

const EDITION_PATH = '/code/edition';

const inYear = (job: Job, edition: Edition): Job => ({ ...job, code: { ...job.code, edition } });

/** Facts in each code year in question: one, or all four where nobody knows it. */
const inEachYear = (facts: RuleFacts): FactsInYear[] => {
  const { edition } = facts.job.code;
  return (isKnown(edition) ? [edition] : EDITIONS).map((year) => ({
    ...facts,
    job: inYear(facts.job, year),
    edition: year,
  }));
};

const JOB: Id = 'job';

const broken = (fault: unknown): Says =>
  cannotBeTold(say.broken(), say.brokenLook({ fault: fault instanceof Error ? fault.message : String(fault) }), []);

/** A fault of the program in one rule is said of its subject, and the other rules still speak. */
const guarded = <T>(of: () => T, otherwise: (fault: unknown) => T): T => {
  try {
    return of();
  } catch (fault) {
    return otherwise(fault);
  }
};

/** What one rule says in one code year, subject by subject. */
const inEdition = (rule: Rule, facts: FactsInYear): Map<Id, Says> => {
  if (!isRequiredIn(rule.id, facts.edition))
    return new Map(
      guarded(
        () => rule.subjects(facts),
        () => [],
      ).map((subject) => [subject, doesNotApply()]),
    );
  return guarded(
    () =>
      new Map([...new Set(rule.subjects(facts))].map((s) => [s, guarded(() => rule.check(facts, s), broken)] as const)),
    (fault) => new Map([[JOB, broken(fault)]]),
  );
};

const EFFECTS: readonly Says['effect'][] = [null, 'note', 'verify in field', 'extra work', 'stops the job'];
/** Effect first, then how much cures it: fewer than a hundred items ever do. */
const weight = (says: Says): number => EFFECTS.indexOf(says.effect) * 100 + says.cure.length;

/** With the code year not known, what all four say alike; otherwise nobody can tell before it is. */
const common = (answers: readonly Says[]): Says => {
  const first = answers[0]!;
  if (answers.every((a) => a.outcome === first.outcome)) {
    // Alike in the outcome, they may differ in effect and cure: the heaviest is taken, the earliest year among equals.
    return answers.reduce((heaviest, a) => (weight(a) > weight(heaviest) ? a : heaviest));
  }
  const waits = answers.flatMap((a) => a.unknown);
  const spoken = answers.filter((a) => a.outcome !== 'does not apply');
  // A reminder that only some code years give is given.
  if (spoken.every((a) => a.effect === 'note')) return { ...spoken[0]!, unknown: [EDITION_PATH] };
  return cannotBeTold(say.editionUnknown(), say.editionLook(), [EDITION_PATH, ...waits]);
};

const judgeIn = (rule: Rule, job: Job, years: readonly FactsInYear[]): Verdict[] => {
  const answers = years.map((facts) => inEdition(rule, facts));
  const subjects = [...new Set(answers.flatMap((year) => [...year.keys()]))].sort(compareText);
  return subjects.map((subject) => ({
    rule: rule.id,
    subject,
    ...withAnswer(job, rule.id, subject, common(answers.map((year) => year.get(subject) ?? doesNotApply()))),
  }));
};

/** One rule asked of everything it looks at, what does not apply included. */
export const judge = (rule: Rule, facts: RuleFacts): Verdict[] => judgeAll([rule], facts);

/** Several rules, what they look at together being looked at once. */
export const judgeAll = (rules: readonly Rule[], facts: RuleFacts): Verdict[] => {
  const years = inEachYear(facts);
  return rules.flatMap((rule) => judgeIn(rule, facts.job, years));
};

/** Every rule asked of everything it looks at: verdicts sorted by rule and subject, and how often each had nothing to say. */
export const runRules = (facts: RuleFacts): { verdicts: Verdict[]; doesNotApply: Record<string, number> } => {
  const years = inEachYear(facts);
  const all = RULES.flatMap((rule) => judgeIn(rule, facts.job, years));
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
