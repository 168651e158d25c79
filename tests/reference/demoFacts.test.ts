import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openJob } from '../../src/job/parse';
import type { Job } from '../../src/job/schema';
import { visibleRun } from '../../src/job/site';
import { feederFacts, newCableFacts, pathOf, reuseFacts, stayFacts, stepFacts, sum } from '../support/demoFacts';

// Source of the figures: demo/FACTS.md, worked by hand from the coordinates in the demo jobs.

const jobs = new Map<string, Job>();
const jobOf = (name: string): Job => {
  const known = jobs.get(name);
  if (known) return known;
  const opened = openJob(readFileSync(new URL(`../../demo/${name}.job.json`, import.meta.url), 'utf8'));
  if (!opened.ok) throw new Error(JSON.stringify(opened.error));
  jobs.set(name, opened.value.job);
  return opened.value.job;
};

test('three home runs or more are worked by hand for every demo job', () => {
  for (const name of ['washer', 'l-shaped', 'small-house']) {
    const runs = [...reuseFacts, ...stayFacts, ...newCableFacts].filter((f) => f.job === name).map((f) => f.homeRun);
    expect(new Set(runs).size).toBeGreaterThanOrEqual(3);
  }
});

test.each(reuseFacts)('reuse: $job $option $homeRun adds up', (fact) => {
  const job = jobOf(fact.job);
  expect(job.options.map((o) => o.id)).toContain(fact.option);
  expect(visibleRun(job, fact.homeRun)!.pivot).toBe(sum(fact.pivot));
  expect(sum(fact.path)).toBe(fact.sum);
  expect(sum(fact.pivot) - fact.sum - 1 / 4).toBe(fact.spare);
  expect(fact.spareAtLeast).toBeLessThanOrEqual(fact.spare);
  expect(fact.spareAtMost).toBeGreaterThanOrEqual(fact.spare);
});

test.each(stayFacts)('stays: $job $option $homeRun adds up', (fact) => {
  const job = jobOf(fact.job);
  const panel = job.options.find((o) => o.id === fact.option)!.enclosure;
  const { path, group } = visibleRun(job, fact.homeRun)!;
  const old = job.enclosures.find((e) => e.id === group.enclosure)!;
  expect(panel.on.wall).toBe(old.on.wall);
  expect(old.on.bottom + old.size.height).toBe(fact.oldTop);
  expect(path[0]![2]).toBe(fact.oldTop);
  expect(panel.on.bottom + panel.size.height).toBe(fact.newTop);
  expect(fact.newTop - fact.oldTop).toBe(fact.inside);
});

test.each(newCableFacts)('new cable: $job $option $homeRun adds up', (fact) => {
  const { practice } = jobOf(fact.job);
  expect(visibleRun(jobOf(fact.job), fact.homeRun)).toBeDefined();
  expect(sum(fact.path)).toBe(fact.codeLength);
  expect(fact.slack).toBeCloseTo(Math.max(fact.codeLength * practice.slackShare, practice.slackMinimum), 9);
  expect(fact.free).toBe(practice.freeInBox + practice.tailInPanel);
  const cut = fact.codeLength + fact.slack + fact.free;
  expect(fact.cutLength % practice.cutStep).toBe(0);
  expect(fact.cutLength).toBeGreaterThanOrEqual(cut);
  expect(fact.cutLength - practice.cutStep).toBeLessThan(cut);
  expect(fact.codeAtLeast).toBeLessThanOrEqual(fact.codeLength);
  expect(fact.codeAtMost).toBeGreaterThanOrEqual(fact.codeLength);
});

test.each(feederFacts)('new feeder: $job $option adds up', (fact) => {
  const { practice, feeder } = jobOf(fact.job);
  expect(feeder.outside).toBe(fact.outside);
  expect(fact.outside + sum(fact.path)).toBe(fact.way);
  expect(fact.slack).toBeCloseTo(Math.max(fact.way * practice.slackShare, practice.slackMinimum), 9);
  expect(fact.ends).toBe(2 * practice.tailOfFeeder);
  const cut = fact.way + fact.slack + fact.ends;
  expect(fact.cutLength % practice.cutStep).toBe(0);
  expect(fact.cutLength).toBeGreaterThanOrEqual(cut);
  expect(fact.cutLength - practice.cutStep).toBeLessThan(cut);
});

test.each(stepFacts)('6 ft along the wall: $homeRuns', (fact) => {
  const job = jobOf('washer');
  for (const homeRun of fact.homeRuns) {
    const { path } = visibleRun(job, homeRun)!;
    // the sheath from the leaving place to the old can, and that place, are on the cable's own run
    const leaves = pathOf(path).find((p) => Math.abs(p.chain - fact.sheath) < 1e-9 && p.point[0] === fact.leavesAtX);
    expect([homeRun, leaves?.chain]).toEqual([homeRun, fact.sheath]);
    const top = 72;
    const corner = (left: number) =>
      left - leaves!.point[0] + (168 - leaves!.point[1]) + (leaves!.point[2] - top) - fact.sheath + 1 / 4;
    expect(corner(fact.farthestByCorner)).toBe(72);
    expect(corner(fact.farthestByMiddle) + 14.5 / 2).toBe(72);
  }
});
