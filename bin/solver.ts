import highs from 'highs';
import type { Solve } from '../src/facts/routing';

/** HiGHS in Node, loaded once. Stopped by node count and never by time, so that an answer repeats. */
export const createSolver = async (): Promise<Solve> => {
  const solver = await highs();
  return async ({ lp, nodeLimit }) => {
    const found = solver.solve(lp, {
      mip_rel_gap: 0,
      mip_abs_gap: 1e-6,
      mip_max_nodes: nodeLimit,
      output_flag: false,
      random_seed: 0,
      threads: 1,
    });
    if (found.Status !== 'Optimal') return { status: 'failed', say: found.Status };
    const values = Object.fromEntries(
      Object.entries(found.Columns).map(([name, column]) => [name, (column as { Primal: number }).Primal]),
    );
    return { status: 'optimal', objective: found.ObjectiveValue, values };
  };
};
