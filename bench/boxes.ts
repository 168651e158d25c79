import { createSolver } from '../bin/solver';
import type { Job } from '../src/job/schema';
import { stageOf } from '../src/plan/stages';
import { prove, route } from '../src/routing/route';
import { DEMOS, demoJob } from '../tests/support/demos';
import { randomJob } from '../tests/support/randomJob';
import { basement } from './basement';
import type { Line } from './rounds';

const ROOMS = 40;

/** B8: ways, spots and boxes as chosen without a solver, beside the optimum or the bound that HiGHS proves. */
export const boxLines = async (): Promise<Line[]> => {
  const solve = await createSolver();
  const jobs: Job[] = [
    ...DEMOS.map((name) => demoJob(name)),
    basement(),
    ...Array.from({ length: ROOMS }, (_, i) => randomJob(900 + i)),
  ];
  const above: number[] = [];
  let proven = 0;
  for (const job of jobs)
    for (const option of job.options) {
      const { ask } = stageOf(job, option, 'final');
      const answer = route(ask);
      if (answer.objectiveMills === 0) continue;
      const better = await prove(ask, answer, solve);
      const { splices } = better.proof;
      const least = splices.best ? better.objectiveMills : better.objectiveMills / (1 + splices.atMostAbove);
      if (splices.best) proven++;
      above.push((answer.objectiveMills - least) / least);
    }
  const worst = Math.max(...above);
  const mean = above.reduce((sum, x) => sum + x, 0) / above.length;
  const percent = (x: number) => `${(100 * x).toFixed(2)} %`;
  return [
    {
      id: 'B8',
      what: `splice boxes of ${above.length} options without a solver, above what HiGHS proves (${proven} proven best, else its bound)`,
      goal: '≤ 1.2 % worst, ≤ 0.4 % mean',
      measured: `${percent(worst)} worst, ${percent(mean)} mean`,
      ok: worst <= 0.012 && mean <= 0.004,
    },
  ];
};
