import { expect, test } from 'vitest';
import type { Job } from '../../../src/job/schema';
import { planOption } from '../../../src/plan/planOption';
import { demoJob } from '../../support/demos';

const small = demoJob('small-house');
const planOf = (job: Job, id = 'relocate-a') => planOption(job, job.options.find((o) => o.id === id)!).plan;
const house = (over: Partial<Job['house']>): Job => ({ ...small, house: { ...small.house, ...over } });
const says = ({ price }: ReturnType<typeof planOf>, id: string) => price.assumed.find((a) => a.id === id)?.say ?? null;

// no source: a price that takes something for granted says so, and leaves nothing out for it
test('a house nobody told whether it is lived in: priced as lived in, and said to be', () => {
  const [untold, told] = [planOf(house({ occupied: 'unknown' })), planOf(house({ occupied: true }))];
  expect(untold.tally).toEqual(told.tally);
  expect(says(untold, '/house/occupied')).toContain('Priced as lived in.');
  expect(says(told, '/house/occupied')).toBeNull();
  expect(says(planOf(house({ occupied: false })), '/house/occupied')).toBeNull();
  expect(untold.price.complete).toBe(told.price.complete);
});
test('protection a circuit has today, where nobody read it', () => {
  const at = small.circuits.findIndex((c) => c.protection === 'unknown');
  expect(says(planOf(small), `/circuits/${at}/protection`)).toContain('Priced as having none.');
});
test('AFCI that cannot be told is counted apart from what is gained, and named with what it waits for, most first', () => {
  const serves = (n: number): Job => ({
    ...small,
    circuits: small.circuits.map((c, i) => (i < n ? { ...c, serves: 'unknown' } : c)),
  });
  const told = planOf(small);
  const open = (plan: typeof told) =>
    plan.afci.filter((a) => a.required === 'cannot be told' || a.required === 'inspector decides').length;
  const blind = planOf(serves(small.circuits.length));
  const waits = blind.afci.filter((a) => a.required === 'cannot be told');
  expect(waits.length).toBeGreaterThan(0);
  expect([told.afciOpen, blind.afciOpen]).toEqual([open(told), open(blind)]);
  expect(blind.tally.afciAdded).toBe(blind.afci.filter((a) => a.required === 'yes').length);
  for (const { circuit } of waits) {
    const at = small.circuits.findIndex((c) => c.id === circuit);
    expect(says(blind, `/circuits/${at}/serves`)).toContain('priced as if it does');
  }
  // with the code year unknown too, one answer decides for the most circuits and stands first
  const yearless = planOf({ ...small, code: { ...small.code, edition: 'unknown' } });
  const counts = yearless.price.assumed.filter((a) => a.say.includes('AFCI comes with'));
  if (yearless.afci.some((a) => a.required === 'cannot be told')) expect(counts[0]?.id).toBe('/code/edition');
});
test('a feeder outside the room is priced by its length alone, and said to be', () => {
  expect(says(planOf(small), '/feeder/outside')).toContain('no hole, opening or tubing');
  expect(says(planOf(small, 'in-place'), '/feeder/outside')).toBeNull();
});
test('things of an ordinary size nobody measured', () => {
  const [first, ...rest] = small.site.obstacles;
  const site = { ...small.site, obstacles: [{ ...first!, sizes: 'unknown' as const }, ...rest] };
  const plan = planOf({ ...small, site });
  expect(says(plan, '/site/obstacles/0/sizes')).toContain(
    `Not measured, but taken at an ordinary size: ${first!.kind}.`,
  );
  expect(plan.tally).toEqual(planOf(small).tally);
});
