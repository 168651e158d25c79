import { execFileSync } from 'node:child_process';
import type { Job } from '../src/job/schema';
import { planOption } from '../src/plan/planOption';
import { DEMOS, demoJob } from '../tests/support/demos';
import { basement } from './basement';
import type { Line } from './rounds';

const reversed = (job: Job): Job => ({
  ...job,
  circuits: [...job.circuits].reverse(),
  homeRuns: [...job.homeRuns].reverse(),
  site: { ...job.site, obstacles: [...job.site.obstacles].reverse() },
});

/** B13: the same input gives the same bytes, with circuits and obstacles in another order and in another process. */
export const sameLines = (): Line[] => {
  const jobs = [...DEMOS.map((name) => demoJob(name)), basement()];
  let plans = 0;
  let differ = 0;
  for (const job of jobs) {
    const other = reversed(job);
    job.options.forEach((option, i) => {
      plans++;
      const [a, b] = [planOption(job, option).plan, planOption(other, other.options[i]!).plan];
      if (JSON.stringify(a) !== JSON.stringify(b)) differ++;
    });
  }
  const inProcess = () =>
    execFileSync(process.execPath, [
      '--import',
      'tsx',
      'bin/plan.ts',
      'demo/small-house.job.json',
      '--json',
      '--quick',
    ]);
  const processes = inProcess().equals(inProcess());
  return [
    {
      id: 'B13',
      what: `${plans} plans with circuits and obstacles reversed, and one in two processes`,
      goal: 'identical bytes',
      measured: differ === 0 && processes ? 'identical' : `${differ} differ${processes ? '' : ', processes differ'}`,
      ok: differ === 0 && processes,
    },
  ];
};
