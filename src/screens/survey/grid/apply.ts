import type { Job } from '../../../job/schema';
import type { ColumnId } from './column';
import { needCircuit } from './column';
import { COLUMNS, columnById } from './columns';
import { keyOf, NO_ROW, type Row, type RowRef, rowAt, rowsOf } from './rows';

/** A text for a cell; rows past the last are new ones. */
export interface CellText {
  readonly row: number;
  readonly column: ColumnId;
  readonly text: string;
}
/** What was typed where the job could not take it. */
export interface BadCell {
  readonly row: RowRef;
  readonly column: ColumnId;
  readonly text: string;
  readonly say: string;
}
/** Bad cells by row and column. */
export type BadCells = ReadonlyMap<string, BadCell>;
export const badKey = (row: RowRef, column: ColumnId): string => `${keyOf(row)} ${column}`;

export interface Applied {
  /** The job with every cell it could take; the same job when nothing changed. */
  readonly job: Job;
  readonly bad: BadCells;
  /** What this application could not take, by the row it was meant for. */
  readonly refused: readonly { readonly row: number; readonly column: ColumnId; readonly say: string }[];
  /** Where the rows written to are now, by the row they were meant for. */
  readonly rows: ReadonlyMap<number, RowRef>;
}

/** A cell of an existing row that still says what it said. */
const unchanged = (job: Job, row: Row | undefined, { column, text }: CellText, bad: BadCells): boolean =>
  row !== undefined && !bad.has(badKey(row, column)) && columnById(column).show(row.its, job) === text;

/**
 * Cells into the job, as one change. Every cell is tried by itself: one that cannot be taken stays as typed and stops
 * no other. What had been refused in a row is tried again with it, since what it waited for may have come.
 */
export const applyCells = (job: Job, bad: BadCells, cells: readonly CellText[]): Applied => {
  const rows = rowsOf(job);
  const left = new Map(bad);
  const wanted = new Map<string, CellText>();
  for (const cell of cells) {
    if (unchanged(job, rows[cell.row], cell, bad)) continue;
    // a row that is not there yet is not made by nothing
    if (cell.row >= rows.length && cell.text.trim() === '') continue;
    wanted.set(`${cell.row} ${cell.column}`, cell);
  }
  for (const row of new Set([...wanted.values()].map((c) => c.row)))
    for (const { id: column } of COLUMNS) {
      const key = rows[row] ? badKey(rows[row], column) : '';
      const before = left.get(key);
      if (!before) continue;
      left.delete(key);
      if (!wanted.has(`${row} ${column}`)) wanted.set(`${row} ${column}`, { row, column, text: before.text });
    }

  const refs = new Map<number, RowRef>();
  const refused: { row: number; column: ColumnId; say: string; text: string }[] = [];
  const inOrder = [...wanted.values()].sort(
    (a, b) => columnById(a.column).pass - columnById(b.column).pass || a.row - b.row,
  );
  let now = job;
  for (const { row, column, text } of inOrder) {
    const ref = refs.get(row) ?? rows[row] ?? NO_ROW;
    const written = columnById(column).write(now, ref, text, (other) => wanted.get(`${row} ${other}`)?.text);
    if (written.ok) {
      now = written.value.job;
      refs.set(row, written.value.row);
    } else {
      refs.set(row, ref);
      refused.push({ row, column, say: written.error, text });
    }
  }
  // a new row of which nothing could be taken still stands, with what was typed
  for (const [row, ref] of refs) {
    if (ref.circuit !== null || ref.homeRun !== null) continue;
    const made = needCircuit(now, ref);
    now = made.job;
    refs.set(row, made.row);
  }
  for (const { row, column, say, text } of refused) {
    const { circuit, homeRun } = refs.get(row)!;
    left.set(badKey({ circuit, homeRun }, column), { row: { circuit, homeRun }, column, text, say });
  }
  return { job: now, bad: left, refused: refused.map(({ row, column, say }) => ({ row, column, say })), rows: refs };
};

/** What a cell shows: what was typed and refused, else what the job has. */
export const cellText = (job: Job, bad: BadCells, row: Row, column: ColumnId): string =>
  bad.get(badKey(row, column))?.text ?? columnById(column).show(rowAt(job, row), job);
