import { describe, expect, test } from 'vitest';
import type { Plan } from '../../src/facts/result';
import type { Job, Option } from '../../src/job/schema';
import { planOption } from '../../src/plan/planOption';
import { bookOf } from '../../src/plan/stages';
import { directMills } from '../../src/pricing/assemblies';
import { DEMOS, demoJob } from '../support/demos';
import { randomJob } from '../support/randomJob';
import { recount } from '../support/recount';
import { legLength, newLength, walkRun } from '../support/walkLegs';

const faultsOf = (job: Job, option: Option, plan: Plan) => [
  ...recount(job, option, plan, bookOf(job)),
  ...plan.runs.flatMap((run) => walkRun(job, option, run)),
];

describe('a plan counted again from its legs by code that shares nothing with routing or pricing', () => {
  test.each(DEMOS)('demo %s', (name) => {
    const job = demoJob(name);
    for (const option of job.options) expect(faultsOf(job, option, planOption(job, option).plan)).toEqual([]);
  });

  const rooms = Array.from({ length: 10 }, (_, i) => i * 20);
  test.each(rooms)(
    'random rooms %i to +19',
    (first) => {
      for (let seed = first; seed < first + 20; seed++) {
        const job = randomJob(seed);
        for (const option of job.options) {
          const { plan, answer } = planOption(job, option);
          expect({ seed, option: option.id, faults: faultsOf(job, option, plan) }).toEqual({
            seed,
            option: option.id,
            faults: [],
          });
          // routing's own total of its own work, to the mill
          expect(answer.workMills).toBe(directMills(answer.work, bookOf(job), job.practice));
          for (const run of plan.runs) {
            const fresh = run.legs.filter((l) => l.cable === 'new' && !l.by.startsWith('inside'));
            const [from, to] = [fresh[0]?.from, fresh.at(-1)?.to];
            if (!from || !to) continue;
            const d = [0, 1, 2].map((k) => Math.abs(from[k]! - to[k]!));
            expect(newLength(run)).toBeGreaterThanOrEqual(Math.hypot(...d) - 1e-9);
            const square = job.site.outline.every((c, i, all) =>
              c.at.some((x, k) => x === all[(i + 1) % all.length]!.at[k]),
            );
            if (square) expect(newLength(run)).toBeGreaterThanOrEqual(d[0]! + d[1]! + d[2]! - 1e-9);
          }
        }
      }
    },
    120_000,
  );
});

describe('what is planted is caught', () => {
  const job = demoJob('washer');
  const option = job.options.find((o) => o.id === 'relocate-b')!;
  const { plan } = planOption(job, option);
  const clean = faultsOf(job, option, plan);

  test('the plan without a plant is clean, and has cable, holes and boxes to plant in', () => {
    expect(clean).toEqual([]);
    expect(plan.boxes.length).toBeGreaterThan(0);
    expect(plan.runs.some((r) => r.holes > 0 && r.newCable)).toBe(true);
  });
  test.each([1, -1])('%i cent on any line', (cent) => {
    for (const line of plan.price.lines) {
      const lines = plan.price.lines.map((l) => (l.id === line.id ? { ...l, likelyCents: l.likelyCents + cent } : l));
      expect(faultsOf(job, option, { ...plan, price: { ...plan.price, lines } }).length).toBeGreaterThan(0);
    }
  });
  test.each([1, -1])('%i hole in any run', (hole) => {
    for (const run of plan.runs.filter((r) => r.legs.length > 0 && r.way !== 'new home run')) {
      const runs = plan.runs.map((r) => (r === run ? { ...r, holes: r.holes + hole } : r));
      expect(faultsOf(job, option, { ...plan, runs }).length).toBeGreaterThan(0);
    }
  });
  test('a leg moved an inch', () => {
    for (const run of plan.runs.filter((r) => r.legs.length > 1)) {
      const at = run.legs.findIndex((l) => !l.by.startsWith('inside') && legLength(l) > 2);
      const leg = run.legs[at]!;
      const moved = { ...leg, to: [leg.to[0] + 1, leg.to[1] + 1, leg.to[2]] as const };
      const runs = plan.runs.map((r) => (r === run ? { ...r, legs: r.legs.map((l, i) => (i === at ? moved : l)) } : r));
      expect(faultsOf(job, option, { ...plan, runs }).length).toBeGreaterThan(0);
    }
  });
  test('a leg through a thing in the way, one out of the room, a box too few', () => {
    const run = plan.runs.find((r) => r.newCable && r.legs.some((l) => l.by === 'joist side'))!;
    const leg = run.legs.find((l) => l.by === 'joist side')!;
    const wall: Job = {
      ...job,
      site: {
        ...job.site,
        obstacles: [
          ...job.site.obstacles,
          {
            ...job.site.obstacles[0]!,
            id: 'planted',
            corner: [Math.min(leg.from[0], leg.to[0]) - 4, Math.min(leg.from[1], leg.to[1]) - 4],
            turn: 0,
            size: { width: 200, depth: 200, height: 300 },
            bottom: -50,
            blocksCable: true,
            exists: { now: true, after: true },
          },
        ],
      },
    };
    expect(faultsOf(wall, option, plan).some((f) => 'say' in f && f.say.includes('planted'))).toBe(true);
    const outside = plan.runs.map((r) => ({
      ...r,
      legs: r.legs.map((l) => ({
        ...l,
        from: [l.from[0] + 5000, l.from[1], l.from[2]] as const,
        to: [l.to[0] + 5000, l.to[1], l.to[2]] as const,
      })),
    }));
    expect(
      faultsOf(job, option, { ...plan, runs: outside }).some((f) => 'say' in f && f.say.includes('leaves the room')),
    ).toBe(true);
    expect(faultsOf(job, option, { ...plan, boxes: plan.boxes.slice(1) }).length).toBeGreaterThan(0);
  });
});
