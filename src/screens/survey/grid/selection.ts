import type { Job } from '../../../job/schema';
import { type BadCells, type CellText, cellText } from './apply';
import type { Block } from './block';
import { COLUMNS } from './columns';
import { rowsOf } from './rows';

/** A cell by its place in the grid. */
export interface Place {
  readonly row: number;
  readonly column: number;
}
/** A rectangle of cells, its ends included. */
export interface Area {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}
export const areaOf = (a: Place, b: Place): Area => ({
  top: Math.min(a.row, b.row),
  bottom: Math.max(a.row, b.row),
  left: Math.min(a.column, b.column),
  right: Math.max(a.column, b.column),
});
const span = (from: number, to: number): number[] => Array.from({ length: to - from + 1 }, (_, k) => from + k);

/** What stands in an area, bad cells as typed. */
export const blockIn = (job: Job, bad: BadCells, area: Area): Block => {
  const rows = rowsOf(job);
  return span(area.top, area.bottom).map((r) =>
    span(area.left, area.right).map((c) => (rows[r] ? cellText(job, bad, rows[r], COLUMNS[c]!.id) : '')),
  );
};

const each = (area: Area, text: (row: number, column: number) => string): CellText[] =>
  span(area.top, area.bottom).flatMap((row) =>
    span(area.left, area.right).map((c) => ({ row, column: COLUMNS[c]!.id, text: text(row, c) })),
  );

/** The area's first row into those below it; one row alone takes what stands over it. */
export const filledDown = (job: Job, bad: BadCells, area: Area): CellText[] => {
  const single = area.top === area.bottom;
  const from = single ? area.top - 1 : area.top;
  if (from < 0) return [];
  const first = blockIn(job, bad, { ...area, top: from, bottom: from })[0]!;
  return each({ ...area, top: single ? area.top : area.top + 1 }, (_, c) => first[c - area.left]!);
};

/** One cell pasted into an area fills it; a larger block lies at its corner. */
export const spread = (block: Block, area: Area): Block => {
  if (block.length !== 1 || block[0]!.length !== 1) return block;
  const text = block[0]![0]!;
  return span(area.top, area.bottom).map(() => span(area.left, area.right).map(() => text));
};

export const emptied = (area: Area): CellText[] => each(area, () => '');
