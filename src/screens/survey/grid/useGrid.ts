import { useMemo, useState } from 'react';
import type { Job } from '../../../job/schema';
import { gridWords as say } from '../../../words/en/grid';
import { useJob } from '../../selected';
import { useActions } from '../../session';
import { type Applied, applyCells, type BadCell, type BadCells, badKey, type CellText } from './apply';
import { badLines } from './badLines';
import { keepBadCells, useAskBack, useBadCells } from './badStore';
import { needCircuit, needHomeRun } from './column';
import { removeRow } from './columnsShared';
import { csvRows } from './csvRows';
import { gridEdit } from './gridEdit';
import { keyOf, NO_ROW, type Row, rowsOf } from './rows';

/** What reading a file or a block came to, until it is closed. */
export interface Report {
  readonly title: string;
  readonly lines: readonly string[];
}
export interface Grid {
  readonly job: Job;
  readonly rows: readonly Row[];
  readonly bad: BadCells;
  /** Bad cells of rows that are there, with their place. */
  readonly badHere: readonly { readonly at: number; readonly cell: BadCell }[];
  readonly report: Report | null;
  dismiss(): void;
  /** Cells into the job as one step; what is refused stays as typed. */
  set(cells: readonly CellText[], name: string): Applied;
  /** Empties cells; those that must hold something keep it. */
  clear(cells: readonly CellText[], name: string): void;
  /** Cells show what the job has again. */
  discard(cells: readonly BadCell[]): void;
  addRow(): void;
  remove(rows: readonly number[]): void;
  readFile(file: string, text: string): void;
  tell(report: Report): void;
}

/** The name of a row in an undo list. */
export const rowName = (row: Row | undefined): string => {
  if (!row) return say.newRow;
  const { circuit, homeRun } = row.its;
  if (circuit) return say.circuitName({ number: circuit.number, label: circuit.label });
  return say.cableNamed({ tag: homeRun?.id ?? '' });
};

/** The grid's rows, its bad cells and everything that changes them. */
export const useGrid = (): Grid => {
  const job = useJob();
  const { edit } = useActions();
  const bad = useBadCells(job.id);
  const [report, tell] = useState<Report | null>(null);
  const rows = useMemo(() => rowsOf(job), [job]);
  const badHere = useMemo(() => {
    const at = new Map(rows.map((row, i) => [keyOf(row), i]));
    return [...bad.values()]
      .flatMap((cell) => {
        const row = at.get(keyOf(cell.row));
        return row === undefined ? [] : [{ at: row, cell }];
      })
      .sort((a, b) => a.at - b.at);
  }, [rows, bad]);
  useAskBack(job.id, badHere.length > 0);

  const change = (after: Job, name: string): boolean => {
    const step = gridEdit(job, after, name);
    return step === null || edit(step);
  };
  const set: Grid['set'] = (cells, name) => {
    const applied = applyCells(job, bad, cells);
    if (change(applied.job, name)) keepBadCells(job.id, applied.bad);
    return applied;
  };
  return {
    job,
    rows,
    bad,
    badHere,
    report,
    dismiss: () => tell(null),
    tell,
    set,
    clear(cells, name) {
      const applied = applyCells(job, bad, cells);
      const left = new Map([...applied.bad].filter(([, cell]) => cell.text !== ''));
      if (change(applied.job, name)) keepBadCells(job.id, left);
    },
    discard(cells) {
      const left = new Map(bad);
      for (const cell of cells) left.delete(badKey(cell.row, cell.column));
      keepBadCells(job.id, left);
    },
    addRow() {
      const circuit = needCircuit(job, NO_ROW);
      const cable = needHomeRun(circuit.job, circuit.row);
      if (cable.ok) change(cable.value.job, say.addRow);
      else change(circuit.job, say.addCircuit);
    },
    remove(indices) {
      const gone = indices.flatMap((i) => rows[i] ?? []);
      if (gone.length > 0) change(gone.reduce(removeRow, job), say.removeRows({ rows: gone.length }));
    },
    readFile(file, text) {
      const read = csvRows(job, text);
      if (!read.ok) return tell({ title: file, lines: [read.error] });
      const { cells, rows: count, unknown, lineOf } = read.value;
      const { refused } = set(cells, say.importRows({ rows: count }));
      tell({
        title: say.readOf({ rows: count, file }),
        lines: [
          ...unknown.map((head) => say.unknownColumn({ head })),
          ...badLines(refused.map((cell) => ({ ...cell, row: lineOf(cell.row) }))).map(({ line }) => line),
          ...(refused.length + unknown.length === 0 ? [say.allTaken] : []),
        ],
      });
    },
  };
};
