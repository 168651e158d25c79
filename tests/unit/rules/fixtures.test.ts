import { describe, expect, test } from 'vitest';
import { jobSchema } from '../../../src/job/schema';
import { runRules } from '../../../src/rules/run';
import { FIXTURES } from './fixtures/all';
import type { Fixture } from './fixtures/fixture';
import { factsFor } from './support';

// Requirements and sections: the published rule table this program was written against, see docs/rules.md.
const run = (fixture: Fixture) => {
  const facts = factsFor(fixture.set, fixture.over);
  expect(jobSchema.safeParse(facts.job).success, 'the fixture is a valid job').toBe(true);
  return runRules(facts);
};

describe.each([...new Set(FIXTURES.map((f) => f.rule))])('%s', (rule) => {
  test.each(FIXTURES.filter((f) => f.rule === rule).map((f) => [f.name, f] as const))('%s', (_name, fixture) => {
    const { verdicts, doesNotApply } = run(fixture);
    const verdict = verdicts.find((v) => v.rule === rule && v.subject === fixture.subject);
    expect(verdict?.outcome ?? 'does not apply', verdict?.say).toBe(fixture.outcome);
    if (!verdict) {
      if (fixture.rule !== 'OLD-CAN' && fixture.rule !== 'HANG' && fixture.rule !== 'SOURCES')
        expect(doesNotApply[rule]).toBeGreaterThan(0);
      return;
    }
    expect(verdict.effect).toBe(fixture.effect);
    expect(verdict.say).not.toBe('');
    if (fixture.measured !== undefined) expect(verdict.measured).toBeCloseTo(fixture.measured, 9);
    if (fixture.cure) expect(verdict.cure.map((w) => w.item)).toEqual(fixture.cure);
    expect(verdict.unknown).toEqual(expect.arrayContaining([...(fixture.waits ?? [])]));
    if (verdict.outcome === 'cannot be told') expect(verdict.look).not.toBeNull();
  });
});
