import { describe, expect, it } from 'vitest';
import type { RoutingAnswer } from '../../../src/facts/routing';
import type { Job } from '../../../src/job/schema';
import { codeLengthOf } from '../../../src/routing/cutLength';
import { route } from '../../../src/routing/route';
import type { Pt, Pt3 } from '../../../src/units/types';
import { randomJob } from '../../support/randomJob';
import { holesOf, newLength, walkRun } from '../../support/walkLegs';
import { askFor, penaltyFor } from './smallRoom';

const penalties = (job: Job) =>
  job.circuits.map((c) => {
    const ids = job.homeRuns.filter((h) => h.circuits.includes(c.id)).map((h) => h.id);
    return { ...penaltyFor(ids), id: c.id, circuits: [c.id] };
  });
const answers = (job: Job): RoutingAnswer[] =>
  job.options.map((option) => route(askFor({ job, option }, penalties(job))));

const notFinite = (value: unknown, at = ''): string[] => {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [at];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, v]) => notFinite(v, `${at}/${key}`));
};

describe('random rooms', () => {
  it.each(Array.from({ length: 25 }, (_, i) => i + 1))('seed %i: routed clear, counted alike, finite', (seed) => {
    const job = randomJob(seed);
    answers(job).forEach((answer, i) => {
      const option = job.options[i]!;
      expect(answer.runs.map((r) => r.homeRun)).toEqual(job.homeRuns.map((h) => h.id).sort());
      expect(notFinite(answer)).toEqual([]);
      for (const run of answer.runs) {
        expect(walkRun(job, option, run)).toEqual([]);
        const hidden = run.way === 'new home run' ? run.codeLength - codeLengthOf(run.legs) : 0;
        if (run.blockedBy.length === 0 && run.newCable && run.way !== 'splice in new panel')
          expect(run.codeLength).toBeCloseTo(newLength(run) + hidden, 6);
        const holes = holesOf(job, run);
        if (Number.isFinite(holes)) expect(run.holes).toBe(holes);
        if (run.blockedBy.length === 0 && ['cut-in', 'splice can', 'reuse'].includes(run.way))
          expect(run.legs.length).toBeGreaterThan(0);
      }
      for (const box of answer.boxes) expect(box.fillIn3).toBeLessThanOrEqual(box.volumeIn3 + 1e-9);
      const boxed = answer.runs.filter((r) => r.way === 'cut-in').map((r) => r.homeRun);
      expect(
        answer.boxes
          .filter((b) => b.on !== 'splice can')
          .flatMap((b) => b.homeRuns)
          .sort(),
      ).toEqual(boxed);
    });
  });
});

describe('what must not matter', () => {
  const figures = (a: RoutingAnswer) => ({
    runs: a.runs.map((r) => [r.homeRun, r.way, r.codeLength, r.cutLength, r.holes, r.supports, r.conductorsSpliced]),
    boxes: a.boxes.map((b) => [b.id, b.size, b.homeRuns]),
    rows: a.rows.map((r) => [r.id, r.by, r.length, r.homeRuns, r.holes.length]),
    mills: [a.workMills, a.objectiveMills],
    feeder: [a.feeder.way, a.feeder.cutLength],
  });
  it.each([2, 5, 9, 14])('seed %i: the order of lists', (seed) => {
    const job = randomJob(seed);
    const flip = <T>(list: readonly T[]) => [...list].reverse();
    const flipped: Job = {
      ...job,
      homeRuns: flip(job.homeRuns),
      circuits: flip(job.circuits),
      cableGroups: flip(job.cableGroups),
      enclosures: flip(job.enclosures),
      site: { ...job.site, obstacles: flip(job.site.obstacles), areas: flip(job.site.areas) },
    };
    const strip = ({ assumed: _, ...rest }: RoutingAnswer) => rest; // pointers name list positions
    expect(JSON.stringify(answers(flipped).map(strip))).toBe(JSON.stringify(answers(job).map(strip)));
  });
  it.each([3, 7, 12])('seed %i: where the origin is', (seed) => {
    const job = randomJob(seed);
    const by = [37, -1204.5] as const;
    const move2 = ([x, y]: Pt): Pt => [x + by[0], y + by[1]];
    const move3 = ([x, y, z]: Pt3): Pt3 => [x + by[0], y + by[1], z];
    const [f] = job.site.framing;
    const first = f!.firstJoist;
    const moved: Job = {
      ...job,
      site: {
        ...job.site,
        outline: job.site.outline.map((c) => ({ ...c, at: move2(c.at) })),
        areas: job.site.areas.map((a) => ({ ...a, outline: a.outline.map(move2) })),
        framing: [
          {
            ...f!,
            firstJoist:
              first === 'unknown' || f!.direction === 'unknown' ? first : first + by[f!.direction === 90 ? 0 : 1],
          },
        ],
        obstacles: job.site.obstacles.map((o) => ({ ...o, corner: move2(o.corner) })),
      },
      feeder: { ...job.feeder, entersAt: move3(job.feeder.entersAt), path: job.feeder.path.map(move3) },
      cableGroups: job.cableGroups.map((g) => ({ ...g, path: g.path.map(move3) })),
    };
    expect(answers(moved).map(figures)).toEqual(answers(job).map(figures));
  });
});
