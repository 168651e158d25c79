import type { Circuit, HomeRun, Job } from '../../../job/schema';
import type { Id } from '../../../units/types';

/** One circuit on one cable. A cable of two circuits has two rows, a circuit on two cables too; either may be missing. */
export interface RowRef {
  readonly circuit: Id | null;
  readonly homeRun: Id | null;
}
export interface Row extends RowRef {
  readonly its: { readonly circuit: Circuit | null; readonly homeRun: HomeRun | null };
}

export const NO_ROW: RowRef = { circuit: null, homeRun: null };
/** JSON, so that no id can be mistaken for two. */
export const keyOf = ({ circuit, homeRun }: RowRef): string => JSON.stringify([circuit, homeRun]);

/** Circuits in the order of the job, each once for every cable of its; cables without a circuit last. */
export const rowsOf = (job: Job): Row[] => [
  ...job.circuits.flatMap((circuit): Row[] => {
    const cables = job.homeRuns.filter((h) => h.circuits.includes(circuit.id));
    return cables.length === 0
      ? [{ circuit: circuit.id, homeRun: null, its: { circuit, homeRun: null } }]
      : cables.map((homeRun) => ({ circuit: circuit.id, homeRun: homeRun.id, its: { circuit, homeRun } }));
  }),
  ...job.homeRuns
    .filter((h) => h.circuits.length === 0)
    .map((homeRun) => ({ circuit: null, homeRun: homeRun.id, its: { circuit: null, homeRun } })),
];

/** What a reference leads to in a job that may have changed since. */
export const rowAt = (job: Job, { circuit, homeRun }: RowRef): Row['its'] => ({
  circuit: job.circuits.find((c) => c.id === circuit) ?? null,
  homeRun: job.homeRuns.find((h) => h.id === homeRun) ?? null,
});
