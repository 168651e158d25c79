import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src/job/schema';
import { advise, type Replan } from '../../../src/plan/advise';
import { isBarredByPlace } from '../../../src/plan/barred';
import { planJob } from '../../../src/plan/planJob';
import { planOption } from '../../../src/plan/planOption';
import { stageOf } from '../../../src/plan/stages';
import { route } from '../../../src/routing/route';
import { isSameQuestion, ROUTING_AMENDMENTS } from '../../../src/routing/sameQuestion';
import { PLACE_RULES } from '../../../src/rules/placeRules';
import { byId } from '../../../src/units/order';
import { demoJob } from '../../support/demos';
import { randomJob } from '../../support/randomJob';

/** Every change planned again from nothing: what the shorter ways must come to. */
const fromNothing: Replan = (changed, options) =>
  byId(changed.options)
    .filter((o) => options.includes(o.id))
    .map((o) => planOption(changed, o).plan);

/** A freezer that can be moved, and a bench that can be moved, in front of a panel. */
const crowded = (job: Job): Job => {
  const thing = job.site.obstacles[0]!;
  const [x, y] = [job.site.outline[0]!.at[0] + 30, job.site.outline[0]!.at[1] + 12];
  const put = (id: string, kind: string, at: readonly [number, number]) => ({
    ...thing,
    id,
    kind,
    corner: at,
    turn: 0,
    size: { width: 60, depth: 60, height: 70 },
    bottom: 0,
    blocksSpace: true,
    stored: false,
    moveCents: 5000,
    exists: { now: true, after: true },
  });
  const obstacles = [...job.site.obstacles, put('put-1', 'freezer', [x, y]), put('put-2', 'workbench', [x + 8, y + 8])];
  return { ...job, site: { ...job.site, obstacles } };
};
const inBath = (job: Job): Job => ({
  ...job,
  site: {
    ...job.site,
    areas: job.site.areas.map((a) => ({
      ...a,
      state: { now: a.state.now, after: { ...a.state.after, use: 'bath' as const } },
    })),
  },
});

describe('what is not planned again could not have changed the advice', () => {
  const jobs: readonly (readonly [string, Job])[] = [
    ['small house', demoJob('small-house')],
    ['washer', demoJob('washer')],
    ...[3, 11, 24].flatMap((seed) => [
      [`room ${seed}`, randomJob(seed)] as const,
      [`room ${seed}, things in the way`, crowded(randomJob(seed))] as const,
      [`room ${seed}, a bathroom, things in the way`, inBath(crowded(randomJob(seed)))] as const,
    ]),
  ];
  test.each(jobs)(
    '%s',
    (_what, job) => {
      const result = planJob(job);
      expect(result.advice).toEqual(advise(job, result.plans, fromNothing, result.unknown));
    },
    60_000,
  );
});

describe('one search for two questions', () => {
  const job = demoJob('small-house');
  const option = job.options.find((o) => o.id === 'relocate-a')!;
  const asked = (change: Job['code']['amendments']) => {
    const code = { ...job.code, amendments: { ...job.code.amendments, ...change } };
    return stageOf({ ...job, code }, option, 'final').ask;
  };
  test('routing looks at no local rule but the ones that are compared', () => {
    const seen = new Set<string>();
    const amendments = new Proxy(
      { ...job.code.amendments },
      {
        get: (target, key) => {
          seen.add(String(key));
          return Reflect.get(target, key);
        },
      },
    );
    const ask = stageOf({ ...job, code: { ...job.code, amendments } }, option, 'final').ask;
    seen.clear();
    route(ask);
    const compared = new Set<string>([...ROUTING_AMENDMENTS, 'spliceCan']);
    expect([...seen].filter((key) => !compared.has(key))).toEqual([]);
    expect(seen.has('spliceCan')).toBe(true);
  });
  test('a rule that only judges asks nothing new; one that takes a can away, or changes what AFCI costs, does', () => {
    expect(isSameQuestion(asked({}), asked({ spliceCan: 'yes' }))).toBe(true);
    expect(isSameQuestion(asked({}), asked({ handleMaxIn: 70 }))).toBe(true);
    expect(isSameQuestion(asked({}), asked({ spliceCan: 'no' }))).toBe(false);
    expect(isSameQuestion(asked({}), asked({ afciOnPanelReplacement: 'none' }))).toBe(false);
    expect(isSameQuestion(asked({}), asked({ nmAllowed: false }))).toBe(false);
    const other = { ...job, notes: 'other', circuits: [...job.circuits] };
    expect(isSameQuestion(asked({}), stageOf(other, option, 'final').ask)).toBe(false);
  });
});

test('what bars a place before any cable is laid bars it in every plan', () => {
  let barred = 0;
  for (const job of [1, 2, 5, 8].flatMap((seed) => [crowded(randomJob(seed)), inBath(randomJob(seed))]))
    for (const option of job.options) {
      const { plan, facts } = planOption(job, option);
      if (!isBarredByPlace(facts)) continue;
      barred += 1;
      const rules = new Set<string>(PLACE_RULES.map((r) => r.id));
      expect(plan.findings.filter((f) => f.effect === 'stops the job' && rules.has(f.rule)).length).toBeGreaterThan(0);
    }
  expect(barred).toBeGreaterThan(0);
});
