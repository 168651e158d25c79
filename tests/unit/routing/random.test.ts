import { describe, expect, it } from 'vitest';
import type { RoutingAnswer } from '../../../src/facts/routing';
import type { Job } from '../../../src/job/schema';
import { codeLengthOf } from '../../../src/routing/cutLength';
import { route } from '../../../src/routing/route';
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
