import highs from 'highs';
import { describe, expect, it } from 'vitest';
import type { Solve } from '../../../src/facts/routing';
import { assign } from '../../../src/routing/assign';
import { costOf, type Problem } from '../../../src/routing/choice';
import { prove, route, tryBoth } from '../../../src/routing/route';
import { askFor, homeRun, penaltyFor, room } from './smallRoom';

const solve: Solve = async ({ lp, nodeLimit }) => {
  const solver = await highs();
  const answer = solver.solve(lp, { mip_max_nodes: nodeLimit, mip_rel_gap: 0, mip_abs_gap: 1e-6, output_flag: false });
  if (answer.Status !== 'Optimal') return { status: 'failed', say: answer.Status };
  return {
    status: 'optimal',
    objective: answer.ObjectiveValue,
    values: Object.fromEntries(Object.entries(answer.Columns).map(([name, c]) => [name, 'Primal' in c ? c.Primal : 0])),
  };
};

const mixed = [
  homeRun('h0'),
  homeRun('h1'),
  homeRun('h2', { circuits: ['a'] }),
  homeRun('h3', { circuits: ['a'] }),
  homeRun('h4', {
    ownPath: [
      [0, 67.25, 68],
      [0, 67.25, 96.625],
      [80, 67.25, 96.625],
      [80, 20, 96.625],
    ],
  }),
];
const ask = (pivot: number, mills: number) =>
  askFor(
    room({ homeRuns: mixed, group: { pivot, reachable: [[0, 140.625]], tails: { hot: 14, neutral: 14, ground: 14 } } }),
    [penaltyFor(['h0'], mills), penaltyFor(['h2', 'h3'], mills), penaltyFor(['h4'], mills)],
  );

/** Every choice of every run: only for problems small enough. */
const exhaustive = (p: Problem): number => {
  let best = Number.POSITIVE_INFINITY;
  const go = (picks: number[]) => {
    if (picks.length === p.runs.length) best = Math.min(best, costOf(p, picks));
    else for (const i of p.runs[picks.length]!.keys()) go([...picks, i]);
  };
  go([]);
  return best;
};

describe('proof by a solver', () => {
  it.each([
    [60, 65_000],
    [60, 0],
    [110, 120_000],
  ])(
    'pivot %i, AFCI %i mills: the bound is never above the exhaustive optimum, "best" only where it is met',
    async (pivot, mills) => {
      const a = ask(pivot, mills);
      const { problem } = tryBoth(a);
      const size = problem.runs.reduce((n, c) => n * c.length, 1);
      expect(size).toBeLessThan(300_000);
      const least = exhaustive(problem);
      const answer = route(a);
      const proven = await prove(a, answer, solve);
      expect(answer.objectiveMills).toBe(assign(problem)!.mills);
      expect(proven.objectiveMills).toBeLessThanOrEqual(answer.objectiveMills);
      expect(proven.objectiveMills).toBeGreaterThanOrEqual(least);
      const { splices } = proven.proof;
      if (splices.best) expect(proven.objectiveMills).toBe(least);
      else expect(proven.objectiveMills / (1 + splices.atMostAbove)).toBeLessThanOrEqual(least + 1);
    },
  );
  it('a worse or failing solver changes nothing', async () => {
    const a = ask(60, 65_000);
    const answer = route(a);
    expect(await prove(a, answer, async () => ({ status: 'failed', say: 'no' }))).toBe(answer);
    const stopped = await prove(a, answer, async () => ({ status: 'stopped', bound: answer.objectiveMills / 2 }));
    expect(stopped.runs).toEqual(answer.runs);
    // half of it is a poorer bound than every home run at its own cheapest, which is known without the solver
    expect(stopped.proof.splices).toEqual(answer.proof.splices);
    const between = await prove(a, answer, async () => ({ status: 'stopped', bound: answer.objectiveMills - 1_000 }));
    const { splices } = between.proof;
    expect(splices.best ? 0 : splices.atMostAbove).toBeCloseTo(1_000 / (answer.objectiveMills - 1_000), 9);
  });
});
