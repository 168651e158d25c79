import { RULES } from '../rules/list';
import { reminders } from '../rules/panel/reminders';
import { NOT_COVERED } from '../standards/coverage';
import { QUESTION_KEYS, questionOf } from '../standards/questions';
import { RULE_SOURCE } from '../standards/ruleSources';
import { isRequiredIn, RULE_IDS, type RuleId, type SectionText, sectionOf } from '../standards/sections';
import { type SplitRule, splitOf } from '../standards/splits';
import { EDITIONS, type Edition } from '../units/types';
import { coverageWords } from '../words/en/coverage';
import { questionWords } from '../words/en/questions';
import { ruleTitles } from '../words/en/ruleTitles';
import { splitWords } from '../words/en/splits';

export type CoverageStatus = 'judged' | 'reminder' | 'not covered';

/** One rule on the coverage page. */
export interface CoverageRow {
  readonly rule: RuleId;
  readonly asks: string;
  readonly sections: readonly (SectionText & { readonly edition: Edition; readonly asked: boolean })[];
  readonly status: CoverageStatus;
  /** Why it is not checked. */
  readonly why: string | null;
  /** Where its facts were read. */
  readonly source: string;
  /** The two sides where practice is split, and the questions of the sheet that bear on it. */
  readonly split: string | null;
  readonly questions: readonly string[];
}

const JUDGED = new Set<RuleId>(RULES.map((r) => r.id));
const REMINDERS = new Set<RuleId>(reminders.map((r) => r.id));

const statusOf = (rule: RuleId): CoverageStatus =>
  REMINDERS.has(rule) ? 'reminder' : JUDGED.has(rule) ? 'judged' : 'not covered';

/** Every rule id the program knows, in the order of the alphabet: nothing else makes the page. */
export const coverageRows = (): CoverageRow[] =>
  RULE_IDS.map((rule) => ({
    rule,
    asks: ruleTitles[rule],
    sections: EDITIONS.map((edition) => ({
      edition,
      asked: isRequiredIn(rule, edition),
      ...sectionOf(rule, edition),
    })),
    status: statusOf(rule),
    why: NOT_COVERED.find((n) => n.rule === rule)?.why ?? null,
    source: coverageWords.sources[RULE_SOURCE[rule]],
    split: splitOf(rule) ? splitWords[rule as SplitRule] : null,
    questions: QUESTION_KEYS.filter((key) => questionOf(key).rules.includes(rule)).map(
      (key) => questionWords.of[key].name,
    ),
  }));

/** How many rules have each status. */
export const coverageCounts = (rows: readonly CoverageRow[]): Readonly<Record<CoverageStatus, number>> => {
  const count = (status: CoverageStatus) => rows.filter((r) => r.status === status).length;
  return { judged: count('judged'), reminder: count('reminder'), 'not covered': count('not covered') };
};
