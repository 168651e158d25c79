import highs from 'highs';
import type { Solve, SolverAnswer } from '../src/facts/routing';

/**
 * HiGHS in Node, loaded once. Stopped by node count and never by time, so that an answer repeats. A search that was
 * stopped hands over the least that any answer could still cost; one stopped before it knew anything has failed.
 */
export const createSolver = async (): Promise<Solve> => {
  const solver = await highs();
  const { optimal, solutionLimit } = solver.constants.modelStatus;
  return async ({ lp, nodeLimit }) =>
    solver.withModel({ format: 'lp', data: lp }, (model): SolverAnswer => {
      model.options.set({
        mip_rel_gap: 0,
        mip_abs_gap: 1e-6,
        mip_max_nodes: nodeLimit,
        output_flag: false,
        random_seed: 0,
      });
      const { modelStatus } = model.run();
      if (modelStatus === optimal) {
        const { colValue } = model.getSolution();
        const values = Object.fromEntries([...colValue].map((value, column) => [model.getColName(column), value]));
        return { status: 'optimal', objective: model.getObjectiveValue(), values };
      }
      const bound = Number(model.info.get('mip_dual_bound'));
      if (modelStatus === solutionLimit && Number.isFinite(bound)) return { status: 'stopped', bound };
      return { status: 'failed', say: `HiGHS ended with model status ${modelStatus}` };
    });
};
