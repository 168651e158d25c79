import { readCsv, separatorOf, writeCsv } from '../../../documents/csv';
import type { Job } from '../../../job/schema';
import { err, ok, type Result } from '../../../units/result';
import { gridWords as say } from '../../../words/en/grid';
import type { CellText } from './apply';
import { cellsUnder, headsOf } from './block';
import { readCable, UNKNOWN_CABLE } from './cableText';
import { COLUMNS } from './columns';
import { type Row, rowsOf } from './rows';

/** A cable whose name does not say all of it leaves its name out: the columns of detail say it. */
const nameSaysAll = ({ circuit, homeRun }: Row['its'], text: string): boolean => {
  if (homeRun === null) return true;
  const read = readCable(text, circuit?.poles ?? 1, { ...UNKNOWN_CABLE, insulation: homeRun.cable.insulation });
  return read.ok && JSON.stringify(read.value) === JSON.stringify(homeRun.cable);
};

/** Every row and column of the grid, with their heads. */
export const gridCsv = (job: Job): string =>
  writeCsv([
    COLUMNS.map((c) => say.heads[c.id]),
    ...rowsOf(job).map((row) =>
      COLUMNS.map((c) => {
        const text = c.show(row.its, job);
        return c.id === 'cable' && !nameSaysAll(row.its, text) ? '' : text;
      }),
    ),
  ]);

export interface CsvRows {
  readonly cells: readonly CellText[];
  readonly rows: number;
  /** Heads that name no column. */
  readonly unknown: readonly string[];
  /** The line of the file a row of the grid came from. */
  readonly lineOf: (row: number) => number;
}

/**
 * A file's rows as cells. Rows with the tag and number of a row that is there change it; all others are new. Without
 * a row of heads the columns are taken in the order of the grid.
 */
export const csvRows = (job: Job, text: string): Result<CsvRows, string> => {
  const read = readCsv(text, separatorOf(text));
  if (!read.ok) return err(say.openQuote(read.error));
  const first = read.value[0];
  if (!first) return err(say.emptyFile);
  const headed = headsOf(first);
  const heads = headed ?? { columns: COLUMNS.map((c) => c.id), unknown: [] };
  const lines = read.value.map((cells, i) => ({ cells, line: i + 1 })).slice(headed ? 1 : 0);
  const filled = lines.filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
  const known = rowsOf(job);
  const valueIn = (cells: readonly string[], column: string): string =>
    cells[heads.columns.indexOf(column as never)]?.trim() ?? '';
  const taken = new Set<number>();
  let fresh = known.length;
  const lineOfRow = new Map<number, number>();
  const cells = filled.flatMap(({ cells: texts, line }) => {
    const tag = valueIn(texts, 'tag');
    const found =
      tag === ''
        ? -1
        : known.findIndex((r, i) => !taken.has(i) && r.homeRun === tag && sameNumber(r, valueIn(texts, 'number')));
    const row = found >= 0 ? found : fresh++;
    taken.add(row);
    lineOfRow.set(row, line);
    // no name of a cable says nothing: its details may be in columns of their own
    return cellsUnder(heads, [texts], row).filter((c) => c.column !== 'cable' || c.text.trim() !== '');
  });
  return ok({ cells, rows: filled.length, unknown: heads.unknown, lineOf: (row) => lineOfRow.get(row) ?? row + 1 });
};
const sameNumber = (row: Row, number: string): boolean => (row.its.circuit?.number ?? '') === number;
