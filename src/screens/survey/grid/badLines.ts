import { gridWords as say } from '../../../words/en/grid';
import type { ColumnId } from './column';

/** A cell the job could not take, by the number people see at its row, and why. */
export interface Untaken {
  readonly row: number;
  readonly column: ColumnId;
  readonly say: string;
}

/** 1, 2, 3, 7 as "1–3, 7". */
const rowsText = (rows: readonly number[]): string => {
  const runs: [number, number][] = [];
  for (const row of [...new Set(rows)].sort((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last && last[1] === row - 1) last[1] = row;
    else runs.push([row, row]);
  }
  return runs.map(([from, to]) => (from === to ? `${from}` : `${from}–${to}`)).join(', ');
};

/** What could not be taken, told once for all cells of one reason: a pasted block that waits for its group is one line. */
export const badLines = <T extends Untaken>(cells: readonly T[]): { readonly line: string; readonly of: T[] }[] => {
  const reasons = [...new Set(cells.map((cell) => cell.say))];
  return reasons.map((reason) => {
    const of = cells.filter((cell) => cell.say === reason);
    const columns = [...new Set(of.map((cell) => say.heads[cell.column]))].join(', ');
    const rows = of.map((cell) => cell.row);
    const v = { column: columns, say: reason };
    return {
      of,
      line:
        new Set(rows).size === 1 ? say.badCell({ ...v, row: rows[0]! }) : say.badCells({ ...v, rows: rowsText(rows) }),
    };
  });
};
