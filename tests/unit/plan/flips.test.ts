import { expect, test } from 'vitest';
import { setValue } from '../../../src/job/change';
import type { Job } from '../../../src/job/schema';
import { recommended } from '../../../src/plan/decision';
import { planJob } from '../../../src/plan/planJob';
import { planOption } from '../../../src/plan/planOption';
import { byId } from '../../../src/units/order';
import { demoJob } from '../../support/demos';
import { washerCase } from './map/washerCase';

/** The job after a flip, planned from nothing. */
const after = (job: Job, { path, value }: { readonly path: string; readonly value: unknown }) => {
  const key = path.match(/^\/code\/amendments\/(.+)$/)?.[1];
  const changed = key
    ? { ...job, code: { ...job.code, amendments: { ...job.code.amendments, [key]: value as string } } }
    : (() => {
        const set = setValue(job, path, value);
        if (!set.ok) throw new Error(set.error.error.say);
        return set.value as Job;
      })();
  return recommended(byId(changed.options).map((o) => planOption(changed, o).plan));
};

const cases: readonly (readonly [string, Job])[] = [
  ['small house', demoJob('small-house')],
  ['washer demo', demoJob('washer')],
  ['washer before the near place', washerCase(20_000)],
  ['washer before the near place, dear to move', washerCase(40_000)],
];

test.each(cases)(
  'every flip, applied and planned from nothing, gives the option and the difference it says: %s',
  (_name, job) => {
    const { plans, advice } = planJob(job);
    const best = recommended(plans);
    for (const flip of advice.flips) {
      const winner = after(job, flip.change);
      expect([flip.say, winner?.option ?? null]).toEqual([flip.say, flip.option]);
      expect((winner?.tally.likelyCents ?? 0) - (best?.tally.likelyCents ?? 0)).toBe(flip.cents);
    }
  },
  60_000,
);

test('flips by price, by a foot and by the inspector are found where they are', () => {
  const { flips } = planJob(washerCase(20_000)).advice;
  expect(flips.map((f) => f.change.path).sort()).toEqual([
    '/code/amendments/afciOnPanelReplacement',
    '/options/1/enclosure/on/left',
    '/priceBook',
  ]);
});
