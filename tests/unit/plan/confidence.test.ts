import { expect, test } from 'vitest';
import { possibleAt } from '../../../src/job/possible';
import type { Job } from '../../../src/job/schema';
import { planJob } from '../../../src/plan/planJob';
import { washerCase } from './map/washerCase';

test('what an unknown may be is read from the schema of the job', () => {
  expect(possibleAt('/enclosures/0/role')).toEqual(['service', 'feeder-fed']);
  expect(possibleAt('/code/edition')).toEqual([2017, 2020, 2023, 2026]);
  expect(possibleAt('/house/occupied')).toEqual([true, false]);
  expect(possibleAt('/site/outline/0/face/after/build')).toContain('block');
  expect(possibleAt('/circuits/3/serves')).toEqual([['bedroom'], ['garage']]);
  expect(possibleAt('/no/such/place')).toEqual([]);
});

/** The washer before the near place, to be moved for $200, seen with the cover on. */
const walkThrough = (change: (job: Job) => Job): Job => {
  const job = change(washerCase(20_000));
  return { ...job, survey: { ...job.survey, grade: 'walk-through' } };
};

test('a full survey has no confidence to tell; a walk-through ranks what is not known', () => {
  expect(planJob(washerCase(20_000)).advice.confidence).toBeNull();
  const job = walkThrough((j) => ({ ...j, enclosures: j.enclosures.map((e) => ({ ...e, role: 'unknown' })) }));
  const { advice, unknown } = planJob(job);
  const found = advice.confidence!;
  expect(unknown.map((u) => u.path)).toContain('/enclosures/0/role');
  expect(found.unknowns.map((u) => u.path)).toContain('/enclosures/0/role');
  // those that turn the advice come first, then by how far the price moves
  const rank = found.unknowns.map((u) => [u.turns ? 0 : 1, -u.cents] as const);
  expect([...rank].sort((a, b) => a[0] - b[0] || a[1] - b[1])).toEqual(rank);
  expect(found.say).toContain(`${found.unknowns.length} were tried`);
});

test('what is said to turn the advice turns it, planned from nothing', () => {
  const job = walkThrough((j) => ({
    ...j,
    site: {
      ...j.site,
      areas: j.site.areas.map((a) => ({ ...a, state: { ...a.state, after: { ...a.state.after, use: 'unknown' } } })),
    },
  }));
  const { advice } = planJob(job);
  const use = advice.confidence!.unknowns.find((u) => u.path === '/site/areas/0/state/after/use');
  expect(use).toBeDefined();
  const settled = {
    ...job,
    site: {
      ...job.site,
      areas: job.site.areas.map((a) => ({
        ...a,
        state: { ...a.state, after: { ...a.state.after, use: use!.value as 'bath' } },
      })),
    },
  };
  expect(planJob(settled).advice.option === advice.option).toBe(!use!.turns);
});
