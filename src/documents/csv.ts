import { err, ok, type Result } from '../units/result';

/** Comma-separated text as RFC 4180 has it, and the tab-separated text a spreadsheet puts on the clipboard. */

export type Separator = ',' | ';' | '\t';
/** Where reading stopped: a quoted cell that is never closed, or a table without end. Row and column count from 1. */
export interface CsvFault {
  readonly row: number;
  readonly column: number;
}

/** A spreadsheet takes a cell that starts so for a formula; a leading apostrophe makes it text. */
const FORMULA = /^'*[=+\-@\t\r]/;
export const guard = (cell: string): string => (FORMULA.test(cell) ? `'${cell}` : cell);
export const unguard = (cell: string): string => (cell.startsWith("'") && FORMULA.test(cell) ? cell.slice(1) : cell);

const quoted = (cell: string, separator: Separator): string =>
  cell.includes(separator) || /["\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;

/** Cells → text, safe to open in a spreadsheet; lines end as RFC 4180, section 2, has them. */
export const writeCsv = (rows: readonly (readonly string[])[], separator: Separator = ','): string =>
  rows.map((row) => `${row.map((cell) => quoted(guard(cell), separator)).join(separator)}\r\n`).join('');

/** A table longer than this is none of a job's: reading stops there. */
export const MOST_LINES = 20_000;

/** Text → cells. A quote means something only at the start of a cell: 10'-6" is read as it stands. */
export const readCsv = (text: string, separator: Separator): Result<string[][], CsvFault> => {
  const source = text.replace(/^\uFEFF/, '');
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  while (at < source.length || row.length > 0) {
    if (rows.length >= MOST_LINES) return err({ row: rows.length + 1, column: 1 });
    let cell = '';
    if (source[at] === '"') {
      const read = quotedCell(source, at);
      if (!read) return err({ row: rows.length + 1, column: row.length + 1 });
      cell = read.cell;
      at = read.next;
    }
    // what follows a closing quote up to the next separator belongs to the cell
    const end = endOfCell(source, at, separator);
    row.push(unguard(cell + source.slice(at, end)));
    at = end;
    if (source[at] === separator) {
      at++;
      if (at < source.length) continue;
      row.push('');
    } else if (source[at] === '\r' && source[at + 1] === '\n') at += 2;
    else at++;
    rows.push(row);
    row = [];
  }
  return ok(rows);
};

const endOfCell = (source: string, from: number, separator: Separator): number => {
  let at = from;
  while (at < source.length && source[at] !== separator && source[at] !== '\n' && source[at] !== '\r') at++;
  return at;
};

/** A cell in quotes, from its opening one; undefined when it is never closed. A doubled quote is one quote. */
const quotedCell = (source: string, from: number): { cell: string; next: number } | undefined => {
  let cell = '';
  for (let at = from + 1; at < source.length; at++) {
    if (source[at] !== '"') cell += source[at];
    else if (source[at + 1] === '"') {
      cell += '"';
      at++;
    } else return { cell, next: at + 1 };
  }
  return undefined;
};

const SEPARATORS: readonly Separator[] = ['\t', ',', ';'];
/** The separator a file was written with: the one its first line has most of. */
export const separatorOf = (text: string): Separator => {
  const line = /^[^\r\n]*/.exec(text)![0];
  const count = (s: Separator) => line.split(s).length;
  return [...SEPARATORS].sort((a, b) => count(b) - count(a))[0]!;
};
