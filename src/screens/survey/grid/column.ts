import type { Circuit, HomeRun, Job } from '../../../job/schema';
import { err, ok, type Result } from '../../../units/result';
import type { Id } from '../../../units/types';
import { gridWords as say } from '../../../words/en/grid';
import { blankCircuit, blankHomeRun, freeCircuitId, freeHomeRunId } from './blank';
import type { Read } from './read';
import { type Row, type RowRef, rowAt } from './rows';

export type ColumnId = keyof typeof say.heads;

/** The job with what a cell said in it, and the row it stands in: writing may give it a circuit, a cable, or another's. */
export interface Written {
  readonly job: Job;
  readonly row: RowRef;
}
export type Write = Result<Written, string>;
/** What else was written into the row in the same breath. */
export type Beside = (column: ColumnId) => string | undefined;

export interface Column {
  readonly id: ColumnId;
  readonly of: 'circuit' | 'cable';
  /** Cells of a lower pass are written first: a cable's group before its kind, all numbers before what refers to them. */
  readonly pass: number;
  /** Width in characters. */
  readonly width: number;
  readonly right?: boolean;
  readonly choices?: readonly string[];
  readonly show: (row: Row['its'], job: Job) => string;
  readonly write: (job: Job, row: RowRef, text: string, beside: Beside) => Write;
}

const withCircuit = (job: Job, circuit: Circuit): Job => ({
  ...job,
  circuits: job.circuits.map((c) => (c.id === circuit.id ? circuit : c)),
});
const withHomeRun = (job: Job, homeRun: HomeRun): Job => ({
  ...job,
  homeRuns: job.homeRuns.map((h) => (h.id === homeRun.id ? homeRun : h)),
});

/** The row's circuit, made where it has none. */
export const needCircuit = (job: Job, row: RowRef): Written => {
  if (row.circuit !== null) return { job, row };
  const id = freeCircuitId(job);
  return {
    row: { ...row, circuit: id },
    job: {
      ...job,
      circuits: [...job.circuits, blankCircuit(id)],
      homeRuns: job.homeRuns.map((h) => (h.id === row.homeRun ? { ...h, circuits: [...h.circuits, id] } : h)),
    },
  };
};

/** The row's cable, made in `group` where it has none; without a word on the group only where there is just one. */
export const needHomeRun = (job: Job, row: RowRef, group?: Id, tag?: Id): Write => {
  if (row.homeRun !== null) return ok({ job, row });
  const groups = job.cableGroups.map((g) => g.id);
  if (groups.length === 0) return err(say.noGroupYet);
  const its = group ?? (groups.length === 1 ? groups[0]! : null);
  if (its === null) return err(say.whichGroup({ groups }));
  const id = tag ?? freeHomeRunId(job);
  const homeRun = blankHomeRun(id, its, row.circuit === null ? [] : [row.circuit]);
  return ok({ job: { ...job, homeRuns: [...job.homeRuns, homeRun] }, row: { ...row, homeRun: id } });
};

/** A column that is a field of the circuit. Nothing typed where there is no circuit makes none. */
export const circuitColumn = <T>(
  column: Pick<Column, 'id' | 'width' | 'right' | 'choices'>,
  show: (circuit: Circuit) => string,
  read: (text: string) => Read<T>,
  put: (circuit: Circuit, value: T) => Circuit,
): Column => ({
  ...column,
  of: 'circuit',
  pass: 2,
  show: ({ circuit }) => (circuit ? show(circuit) : ''),
  write: (before, ref, text) => {
    if (ref.circuit === null && text.trim() === '') return ok({ job: before, row: ref });
    const value = read(text);
    if (!value.ok) return value;
    const { job, row } = needCircuit(before, ref);
    return ok({ job: withCircuit(job, put(rowAt(job, row).circuit!, value.value)), row });
  },
});

/** A column that is a field of the cable; the reader may look at the row's circuit and at the cable as it is. */
export const cableColumn = <T>(
  column: Pick<Column, 'id' | 'width' | 'right' | 'choices'> & { readonly pass?: number },
  show: (homeRun: HomeRun) => string,
  read: (text: string, its: { readonly circuit: Circuit | null; readonly homeRun: HomeRun }) => Read<T>,
  put: (homeRun: HomeRun, value: T) => HomeRun,
): Column => ({
  pass: 4,
  ...column,
  of: 'cable',
  show: ({ homeRun }) => (homeRun ? show(homeRun) : ''),
  write: (before, ref, text) => {
    if (ref.homeRun === null && text.trim() === '') return ok({ job: before, row: ref });
    const made = needHomeRun(before, ref);
    if (!made.ok) return made;
    const { job, row } = made.value;
    const { circuit, homeRun } = rowAt(job, row);
    const value = read(text, { circuit, homeRun: homeRun! });
    return value.ok ? ok({ job: withHomeRun(job, put(homeRun!, value.value)), row }) : value;
  },
});
