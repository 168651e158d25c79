import { expect, test } from 'vitest';
import type { Plan } from '../../src/facts/result';
import type { Job } from '../../src/job/schema';
import { planJob } from '../../src/plan/planJob';
import { planOption } from '../../src/plan/planOption';
import { demoJob } from '../support/demos';
import { cases } from '../support/effort';
import { random } from '../support/random';
import { randomJob } from '../support/randomJob';
import { mirrored, quarterTurned, shifted } from '../support/turned';

const SEEDS = Array.from({ length: cases(24, 240) }, (_, i) => i + 500);

const shuffled = <T>(list: readonly T[], seed: number): T[] => {
  const r = random(seed);
  const out = [...list];
  for (let i = out.length - 1; i > 0; i--) {
    const j = r.int(0, i);
    [out[i], out[j]] = [out[j]!, out[i]!];
  }
  return out;
};
/** Every list whose order means nothing. Outline corners, paths and options' pins keep theirs. */
const permuted = (job: Job, seed: number): Job => ({
  ...job,
  circuits: shuffled(job.circuits, seed),
  homeRuns: shuffled(job.homeRuns, seed + 1),
  cableGroups: shuffled(job.cableGroups, seed + 2),
  enclosures: shuffled(job.enclosures, seed + 3),
  site: {
    ...job.site,
    obstacles: shuffled(job.site.obstacles, seed + 4),
    areas: shuffled(job.site.areas, seed + 5),
    openings: shuffled(job.site.openings, seed + 6),
    partitions: shuffled(job.site.partitions, seed + 7),
    framing: shuffled(job.site.framing, seed + 8),
    bays: shuffled(job.site.bays, seed + 9),
  },
});
/** Paths into lists name a position; they follow the permutation and are not part of the comparison. */
const bytes = (of: unknown) => JSON.stringify(of).replace(/("\/[a-zA-Z/]+\/)\d+\//g, '$1*/');

test.each([...SEEDS.slice(0, cases(4, 60))])('permuting lists changes no byte: random room %i', (seed) => {
  const job = randomJob(seed);
  for (const option of job.options) {
    const plain = planOption(job, option).plan;
    const mixed = permuted(job, seed);
    expect(bytes([planOption(mixed, mixed.options.find((o) => o.id === option.id)!).plan])).toBe(bytes([plain]));
  }
});
test('permuting lists changes no byte: demo washer, result and advice', () => {
  const job = demoJob('washer');
  const mixed = planJob(permuted(job, 7));
  const plain = planJob(job);
  expect(bytes({ ...mixed, unknown: [] })).toBe(bytes({ ...plain, unknown: [] }));
  expect(mixed.unknown.map((u) => u.path.replace(/\/\d+\//g, '/*/')).sort()).toEqual(
    plain.unknown.map((u) => u.path.replace(/\/\d+\//g, '/*/')).sort(),
  );
});

/** Everything that is not a position. */
const figures = (plan: Plan) => ({
  tally: plan.tally,
  runs: plan.runs.map((r) => [r.homeRun, r.way, r.codeLength.toFixed(6), r.cutLength, r.holes, r.supports]),
  lines: plan.price.lines.map((l) => [l.id, l.likelyCents]),
  findings: plan.findings.map((f) => [f.rule, f.subject, f.outcome, f.effect]),
  cuts: plan.cuts.map((c) => [c.cable, c.cents]),
});
test.each(SEEDS.slice(0, cases(8, 120)))('moving the whole job changes no figure: room %i', (seed) => {
  const job = randomJob(seed);
  const moved = shifted(job, 37 + 3 / 64, -112.5);
  job.options.forEach((option, i) => {
    expect(figures(planOption(moved, moved.options[i]!).plan)).toEqual(figures(planOption(job, option).plan));
  });
});

/** Ties between ways of one price may fall differently, so a turned house is held to each single route's cost, not to the choice among equals. */
const alone = (job: Job, homeRun: string): Job => ({
  ...job,
  homeRuns: job.homeRuns.filter((h) => h.id === homeRun),
  circuits: job.circuits.filter((c) => job.homeRuns.find((h) => h.id === homeRun)!.circuits.includes(c.id)),
});
const PLACE = /^(WS-|DEDICATED|HANDLE|CLOSET|BATH|STAIRS|DAMP|ORIENT)/;
const placeVerdicts = (plan: Plan) =>
  plan.findings.filter((f) => PLACE.test(f.rule)).map((f) => [f.rule, f.subject, f.outcome, f.effect]);
const cheapest = (job: Job, i: number) => {
  const { plan, answer } = planOption(job, job.options[i]!);
  return { mills: answer.objectiveMills, place: placeVerdicts(plan) };
};
test.each(SEEDS)('mirroring and quarter-turning change no route cost and no verdict on place: room %i', (seed) => {
  const full = randomJob(seed);
  for (const { id } of full.homeRuns.slice(0, 3)) {
    const job = alone(full, id);
    job.options.forEach((_, i) => {
      const plain = cheapest(job, i);
      expect(cheapest(quarterTurned(job), i)).toEqual(plain);
      expect(cheapest(mirrored(job), i)).toEqual(plain);
    });
  }
});
test('mirroring changes no verdict on place: demo washer', () => {
  const job = demoJob('washer');
  const seen = mirrored(job);
  job.options.forEach((o, i) => {
    expect(placeVerdicts(planOption(seen, seen.options[i]!).plan)).toEqual(placeVerdicts(planOption(job, o).plan));
  });
});

test.each(SEEDS)("one more obstacle never cheapens a home run's own best route: room %i", (seed) => {
  const full = randomJob(seed);
  const r = random(seed);
  const more = {
    ...full.site.obstacles[0],
    id: 'one-more',
    kind: 'duct',
    corner: [r.int(40, 120), r.int(20, 100)] as [number, number],
    turn: 0,
    size: { width: r.int(10, 60), depth: r.int(10, 60), height: 20 },
    sizes: 'measured' as const,
    bottom: 88,
    blocksCable: true,
    blocksSpace: true,
    foreign: false,
    clearance: 1,
    exists: { now: true, after: true },
    stored: false,
    moveCents: null,
  };
  for (const { id } of full.homeRuns.slice(0, 3)) {
    const job = alone(full, id);
    const blocked: Job = { ...job, site: { ...job.site, obstacles: [...job.site.obstacles, more] } };
    job.options.forEach((_, i) => {
      const after = planOption(blocked, blocked.options[i]!);
      if (after.plan.runs.some((run) => run.blockedBy.length > 0)) return; // dearer than any price
      expect(after.answer.objectiveMills).toBeGreaterThanOrEqual(cheapest(job, i).mills);
    });
  }
});
