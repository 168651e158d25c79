import { describe, expect, test } from 'vitest';
import type { RuleFacts, Verdict } from '../../../src/facts/ruling';
import { RULES } from '../../../src/rules/list';
import { judge } from '../../../src/rules/run';
import type { RuleId } from '../../../src/standards/sections';
import { EDITIONS } from '../../../src/units/types';
import { EDITION_CHANGES, STEPS, type Step } from './editionChanges';
import { FIXTURES } from './fixtures/all';
import { factsFor } from './support';

const said = ({ outcome, effect, measured, required, cure, say }: Verdict) =>
  JSON.stringify([outcome, effect, measured, required, cure, say]);

/** What one rule says of everything it looks at, in one code year. */
const inYear = (rule: RuleId, facts: RuleFacts): string =>
  judge(RULES.find((r) => r.id === rule)!, facts)
    .filter((v) => v.outcome !== 'does not apply')
    .map((v) => `${v.subject} ${said(v)}`)
    .sort()
    .join('\n');

/** Rules of one family look at the same things: AFCI-AREA is asked in the situations of AFCI-EXT too. */
const family = (rule: RuleId): RuleId[] =>
  RULES.map((r) => r.id).filter((id) => id.split('-')[0] === rule.split('-')[0]);

/** Rules that say something else in the later of two code years, in any fixture of their family. */
const changed: Record<Step, Set<RuleId>> = {
  '2017 → 2020': new Set(),
  '2020 → 2023': new Set(),
  '2023 → 2026': new Set(),
};
for (const fixture of FIXTURES) {
  const years = EDITIONS.map((edition) => factsFor({ ...fixture.set, '/code/edition': edition }, fixture.over));
  for (const rule of family(fixture.rule)) {
    const answers = years.map((facts) => inYear(rule, facts));
    for (const [i, step] of STEPS.entries()) if (answers[i] !== answers[i + 1]) changed[step].add(rule);
  }
}

describe('a change of code year', () => {
  test.each(STEPS)('%s changes what these rules say, and no others', (step) => {
    expect([...changed[step]].sort()).toEqual(Object.keys(EDITION_CHANGES[step]).sort());
  });
});
