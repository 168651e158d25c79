import { describe, expect, test } from 'vitest';
import type { Plan } from '../../src/facts/result';
import type { Job, Option } from '../../src/job/schema';
import { planOption } from '../../src/plan/planOption';
import { bookOf } from '../../src/plan/stages';
import { directMills } from '../../src/pricing/assemblies';
import { DEMOS, demoJob } from '../support/demos';
import { cases } from '../support/effort';
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

  const rooms = Array.from({ length: cases(10, 100) }, (_, i) => i * 20);
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

describe('joists that lie askew are counted by their own direction', () => {
  // what the survey may write: any angle, and the same joists turned half round
  const bored = new Map<number, number>();
  const DIRECTIONS = [17, 35, 45, 62, 118, 135, 163, 180, 200, 270, 305];
  test.each(DIRECTIONS)('%i degrees', (direction) => {
    for (let seed = direction; seed < direction + 4; seed++) {
      const straight = randomJob(seed);
      const framing = straight.site.framing.map((f) => ({ ...f, direction }));
      const job: Job = { ...straight, site: { ...straight.site, framing } };
      for (const option of job.options) {
        const { plan } = planOption(job, option);
        expect({ seed, faults: faultsOf(job, option, plan) }).toEqual({ seed, faults: [] });
        bored.set(direction, (bored.get(direction) ?? 0) + plan.runs.reduce((n, r) => n + r.holes, 0));
      }
    }
  });
  test('and most of these houses have joists bored', () => {
    expect([...bored.values()].filter((n) => n > 0).length).toBeGreaterThan(DIRECTIONS.length / 2);
  });
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
  describe('in a new feeder', () => {
    const beside = job.options.find((o) => o.id === 'relocate-a')!;
    const fed = { o: beside, plan: planOption(job, beside).plan };
    const isTubing = (item: string) => item.startsWith('sleeve:') && item !== 'sleeve:3/4';
    const caught = (feeder: Plan['feeder'], lines = fed.plan.price.lines) =>
      faultsOf(job, fed.o, { ...fed.plan, feeder, price: { ...fed.plan.price, lines } }).length;
    test('it goes through joists and in tubing, and as planned nothing is found', () => {
      expect(fed.plan.feeder.holes.length).toBeGreaterThan(0);
      expect(fed.plan.feeder.legs.map((l) => l.by)).toContain('sleeve');
      expect(caught(fed.plan.feeder)).toBe(0);
    });
    test('a hole too few or too many', () => {
      const { feeder } = fed.plan;
      expect(caught({ ...feeder, holes: feeder.holes.slice(1) })).toBeGreaterThan(0);
      expect(caught({ ...feeder, holes: [...feeder.holes, feeder.holes[0]!] })).toBeGreaterThan(0);
    });
    test.each([1, -1])('%i inch of cable or staple', (by) => {
      const { feeder } = fed.plan;
      expect(caught({ ...feeder, cutLength: feeder.cutLength + by })).toBeGreaterThan(0);
      expect(caught({ ...feeder, supports: feeder.supports + by })).toBeGreaterThan(0);
    });
    test('its holes, its tubing or its pulling left out of the price', () => {
      for (const [kind, item, least] of [
        ['labor', (x: string) => x === 'hole', 0.06],
        ['material', isTubing, 0.1],
        ['labor', (x: string) => x === 'feeder ft', 0.04],
      ] as const) {
        const lines = fed.plan.price.lines.map((l) =>
          l.kind === kind && item(l.item) ? { ...l, quantity: l.quantity - least } : l,
        );
        expect(lines, kind).not.toEqual(fed.plan.price.lines);
        expect(caught(fed.plan.feeder, lines), kind).toBeGreaterThan(0);
      }
    });
    test('a leg moved an inch', () => {
      const { feeder } = fed.plan;
      const at = feeder.legs.findIndex((l) => !l.by.startsWith('inside') && legLength(l) > 2);
      const moved = feeder.legs.map((l, i) =>
        i === at ? { ...l, to: [l.to[0] + 7, l.to[1] + 7, l.to[2]] as const } : l,
      );
      expect(caught({ ...feeder, legs: moved })).toBeGreaterThan(0);
    });
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
            sizes: 'measured',
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
