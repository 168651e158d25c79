import { readCsv, type Separator, writeCsv } from '../../../documents/csv';
import type { CellText } from './apply';
import type { ColumnId } from './column';
import { COLUMNS, columnHeaded } from './columns';

/** A rectangle of text from the clipboard or a file. */
export type Block = readonly (readonly string[])[];

const WIDE = 3; // columns a text without tabs must agree on to be taken for comma-separated

/**
 * The clipboard's text as cells. Spreadsheets put tabs there; commas or semicolons separate only where every line has
 * the same number of them, so that "bath, hall" stays one cell.
 */
export const blockOf = (text: string): Block => {
  const body = text.replace(/(\r\n|\r|\n)$/, '');
  const read = (separator: Separator): Block => {
    const cells = readCsv(body, separator);
    // a quote that is never closed is then a plain character
    return cells.ok ? cells.value : body.split(/\r\n|\r|\n/).map((line) => line.split(separator));
  };
  if (body.includes('\t')) return read('\t');
  for (const separator of [',', ';'] as const) {
    const cells = read(separator);
    const width = cells[0]?.length ?? 0;
    const even = cells.length > 1 && cells.every((row) => row.length === width);
    if (even && (width >= WIDE || (width > 1 && headsOf(cells[0]!) !== null))) return cells;
  }
  return read('\t');
};

export interface Heads {
  readonly columns: readonly (ColumnId | null)[];
  readonly unknown: readonly string[];
}
/** The first row as heads: at least two cells name columns, and more than half do. Else null. */
export const headsOf = (row: readonly string[]): Heads | null => {
  const columns = row.map((cell) => columnHeaded(cell) ?? null);
  const named = columns.filter((c) => c !== null).length;
  const filled = row.filter((cell) => cell.trim() !== '').length;
  if (named < 2 || named * 2 <= filled) return null;
  return { columns, unknown: row.filter((cell, i) => columns[i] === null && cell.trim() !== '') };
};

/** A block laid down with its upper left cell at a row and column; what hangs over the right edge is left out. */
export const cellsAt = (block: Block, row: number, column: number): CellText[] =>
  block.flatMap((cells, r) =>
    cells.flatMap((text, c): CellText[] => {
      const at = COLUMNS[column + c];
      return at ? [{ row: row + r, column: at.id, text }] : [];
    }),
  );

/** A block under heads of its own, from a row on; empty lines are no rows. */
export const cellsUnder = (heads: Heads, block: Block, row: number): CellText[] =>
  block
    .filter((cells) => cells.some((text) => text.trim() !== ''))
    .flatMap((cells, r) =>
      cells.flatMap((text, c): CellText[] => {
        const column = heads.columns[c];
        return column ? [{ row: row + r, column, text }] : [];
      }),
    );

/** Cells for the clipboard, as a spreadsheet reads them. */
export const clipboardText = (block: Block): string => writeCsv(block, '\t').replace(/\r\n$/, '');
