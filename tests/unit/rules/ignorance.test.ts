import { describe, expect, test } from 'vitest';
import type { Verdict } from '../../../src/facts/ruling';
import type { Job } from '../../../src/job/schema';
import { RULES } from '../../../src/rules/list';
import { holds, type Rule, stops } from '../../../src/rules/rule';
import { judge } from '../../../src/rules/run';
import { FIXTURES } from './fixtures/all';
import type { Fixture } from './fixtures/fixture';
import { baseJob, changed, factsFor, factsOf } from './support';
import { unknowable } from './unknowable';

/**
 * House rule: ignorance never helps. With the routes kept, a field nobody knows makes no new 'holds', turns a failure
 * into nothing but 'cannot be told', and lifts no effect that stops the job from what still fails.
 */
const FIELDS = unknowable(baseJob);

const helped = (before: readonly Verdict[], after: readonly Verdict[]): string[] =>
  after.flatMap((now) => {
    const was = before.find((v) => v.subject === now.subject);
    const outcome = was?.outcome ?? 'does not apply';
    const wrong =
      (now.outcome === 'holds' && outcome !== 'holds') ||
      (outcome === 'fails' && now.outcome !== 'fails' && now.outcome !== 'cannot be told') ||
      (was?.effect === 'stops the job' && now.outcome === 'fails' && now.effect !== 'stops the job');
    return wrong ? [`${now.rule} ${now.subject}: ${outcome} → ${now.outcome} (${now.effect})`] : [];
  });

/** Fields of the things a situation adds to the basement: its partitions, doors, attached devices. */
const addedFields = (fixture: Fixture, job: Job): string[] => {
  const lists = Object.keys(fixture.set ?? {}).filter((pointer) => pointer.endsWith('/-'));
  return lists.length === 0
    ? []
    : unknowable(
        job,
        lists.map((pointer) => pointer.slice(0, -1)),
      ).filter((field) => !FIELDS.includes(field));
};

const helpedBy = (rule: Rule, fixture: Fixture): string[] => {
  const { job } = factsFor(fixture.set, fixture.over);
  const before = judge(rule, factsOf(job, fixture.over));
  return [...FIELDS, ...addedFields(fixture, job)].flatMap((field) =>
    helped(before, judge(rule, factsOf(changed(job, { [field]: 'unknown' }), fixture.over))).map(
      (say) => `${field}: ${say}`,
    ),
  );
};

test('the schema names the fields', () => {
  expect(FIELDS.length).toBeGreaterThan(150);
  for (const known of ['/code/edition', '/circuits/0/serves', '/homeRuns/0/cable/size', '/options/0/enclosure/role'])
    expect(FIELDS).toContain(known);
});

test('a rule that takes the unknown for granted is caught', () => {
  const careless: Rule = {
    id: 'WS-LIGHT',
    subjects: () => ['new'],
    check: ({ job }) => (job.house.panelLit === false ? stops('dark') : holds('lit')),
  };
  const dark = FIXTURES.find((f) => f.rule === 'WS-LIGHT' && f.outcome === 'fails')!;
  expect(helpedBy(careless, dark)).toEqual(['/house/panelLit: WS-LIGHT new: fails → holds (null)']);
});

describe.each([...new Set(FIXTURES.map((f) => f.rule))])('%s', (rule) => {
  test('no unknown field helps in any of its situations', () => {
    const asked = RULES.find((r) => r.id === rule)!;
    const found = FIXTURES.filter((f) => f.rule === rule).flatMap((f) =>
      helpedBy(asked, f).map((say) => `${f.name}: ${say}`),
    );
    expect(found).toEqual([]);
  });
});
