import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Plan, Run } from '../../src/facts/result';
import { applyEdit } from '../../src/job/applyEdit';
import { openJob } from '../../src/job/parse';
import type { Job } from '../../src/job/schema';
import { planJob } from '../../src/plan/planJob';
import { afciFacts, feederFacts, newCableFacts, reuseFacts, stayFacts } from '../support/demoFacts';

// Source of the expected figures: demo/FACTS.md, worked by hand from the coordinates in the demo jobs.

const jobOf = (name: string): Job => {
  const opened = openJob(readFileSync(new URL(`../../demo/${name}.job.json`, import.meta.url), 'utf8'));
  if (!opened.ok) throw new Error(JSON.stringify(opened.error));
  return opened.value.job;
};
const plans = new Map<string, Plan>();
const planOf = (fact: { readonly job: string; readonly option: string }): Plan => {
  const key = `${fact.job} ${fact.option}`;
  const plan = plans.get(key) ?? planJob(jobOf(fact.job), { options: [fact.option] }).plans[0]!;
  plans.set(key, plan);
  return plan;
};
const runOf = (fact: { readonly job: string; readonly option: string; readonly homeRun: string }): Run =>
  planOf(fact).runs.find((r) => r.homeRun === fact.homeRun)!;

test.each(reuseFacts)(
  'drawn back: $job $option $homeRun',
  (fact) => {
    const run = runOf(fact);
    expect(fact.ways).toContain(run.way);
    expect(run.reach!.jacket).toBeGreaterThanOrEqual(fact.spareAtLeast);
    expect(run.reach!.jacket).toBeLessThanOrEqual(fact.spareAtMost);
    expect([run.codeLength, run.cutLength]).toEqual([0, 0]);
  },
  60_000,
);

test.each(stayFacts)(
  'stays: $job $option $homeRun',
  (fact) => {
    const run = runOf(fact);
    expect(fact.ways).toContain(run.way);
    expect(run.reach!.jacket).toBeCloseTo(fact.inside, 9);
    expect(run.codeLength).toBe(0);
  },
  60_000,
);

test.each(newCableFacts)(
  'new cable: $job $option $homeRun',
  (fact) => {
    const run = runOf(fact);
    const { practice } = jobOf(fact.job);
    expect(fact.ways).toContain(run.way);
    expect(run.codeLength).toBeGreaterThanOrEqual(fact.codeAtLeast);
    expect(run.codeLength).toBeLessThanOrEqual(fact.codeAtMost);
    const cut = run.codeLength + Math.max(run.codeLength * practice.slackShare, practice.slackMinimum) + fact.free;
    expect(run.cutLength).toBe(Math.ceil(cut / practice.cutStep - 1e-9) * practice.cutStep);
  },
  60_000,
);

test.each(feederFacts)(
  'new feeder: $job $option, within a step of the crew',
  (fact) => {
    const { feeder, price } = planOf(fact);
    expect([feeder.way, feeder.outside]).toEqual(['replaced', fact.outside]);
    expect(Math.abs(feeder.cutLength - fact.cutLength)).toBeLessThanOrEqual(jobOf(fact.job).practice.cutStep);
    expect(price.missing.filter((id) => id.startsWith('/feeder'))).toEqual([]);
  },
  60_000,
);

test('goods before the panel are a note with their remedy, and never stop the job', () => {
  // demo/small-house: cartons stand 12 in before the north wall, across the whole width of the panel (110.26(B))
  const { plans } = planJob(jobOf('small-house'));
  const store = (option: string) =>
    plans.find((p) => p.option === option)!.findings.filter((f) => f.rule === 'WS-STORE')[0]!;
  expect(store('in-place')).toMatchObject({ outcome: 'fails', effect: 'note' });
  expect(store('in-place').remedies.map((r) => r.cents)).toEqual([0]);
  expect(store('relocate-a')).toMatchObject({ outcome: 'holds', effect: null });
  expect(plans.map((p) => p.tally.stops)).toEqual([0, 0]);
}, 60_000);

test.each(afciFacts)(
  'AFCI by length with the new panel at $left along its wall',
  ({ left, circuits }) => {
    const path = `/options/${jobOf('washer').options.findIndex((o) => o.id === 'relocate-a')}/enclosure/on/left`;
    const moved = applyEdit(jobOf('washer'), { edit: 'set value', path, value: left });
    if (!moved.ok) throw new Error(JSON.stringify(moved.error));
    const plan = planJob(moved.value, { options: ['relocate-a'] }).plans[0]!;
    expect(plan.afci.filter((a) => a.required === 'yes').map((a) => a.circuit)).toEqual(circuits);
  },
  60_000,
);
