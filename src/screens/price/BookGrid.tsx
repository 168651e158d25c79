import { useState } from 'react';
import { bookWords as say } from '../../words/en/book';
import parts from '../parts/parts.module.css';
import { BookCell } from './BookCell';
import css from './book.module.css';
import {
  COLUMNS,
  type ColumnName,
  cellText,
  isText,
  LISTS,
  type ListName,
  rowsOf,
  withCell,
  withEntry,
  withoutEntry,
} from './bookRows';
import { useBook } from './useBook';

/** So many rows are drawn; the others are found by typing. */
const MOST_ROWS = 120;

/** The entries of the book, one list at a time. */
export const BookGrid = () => {
  const { book, change } = useBook();
  const [list, setList] = useState<ListName>('materials');
  const [find, setFind] = useState('');
  const [fresh, setFresh] = useState('');
  const rows = rowsOf(book, list, find);
  const shown = rows.slice(0, MOST_ROWS);

  const take = (at: number, name: string, column: ColumnName, text: string): string | null => {
    const next = withCell(book, list, at, column, text);
    if (!next.ok) return next.error;
    change(next.value, `${say[column].toLowerCase()} of ${name}`);
    return null;
  };
  /** A column out of a spreadsheet, into the rows shown from here on; all of it or nothing. */
  const paste = (from: number, column: ColumnName, texts: readonly string[]): boolean => {
    let next = book;
    for (const [k, text] of texts.entries()) {
      const row = rows[from + k];
      const one = row && withCell(next, list, row.at, column, text.split('\t')[0]!);
      if (!one?.ok) return false;
      next = one.value;
    }
    return change(next, say.pasted({ count: texts.length }));
  };
  const add = (): void => {
    const next = withEntry(book, list, fresh);
    if (!next) return;
    change(next, fresh.trim());
    setFind(fresh.trim());
    setFresh('');
  };

  return (
    <section className={css.grid} aria-label={say.lists[list]}>
      <div className={css.bar}>
        {LISTS.map((name) => (
          <button
            key={name}
            type="button"
            className={parts.tool}
            aria-pressed={name === list}
            onClick={() => setList(name)}
          >
            {say.lists[name]}
          </button>
        ))}
        <label className={css.find}>
          <span>{say.find}</span>
          <input value={find} type="search" onChange={(e) => setFind(e.target.value)} />
        </label>
        <small>{say.count({ shown: rows.length, of: book[list].length })}</small>
      </div>
      <table className={css.table}>
        <thead>
          <tr>
            <th scope="col">{say.name}</th>
            {COLUMNS[list].map((column) => (
              <th key={column} scope="col" className={isText(column) ? undefined : css.right}>
                {say[column]}
              </th>
            ))}
            <th scope="col">
              <span className={parts.hidden}>{say.remove({ name: say.entry })}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {shown.map((row, k) => (
            <tr key={`${list} ${row.id}`}>
              <th scope="row">
                {row.name}
                <small>{row.id}</small>
              </th>
              {COLUMNS[list].map((column) => (
                <BookCell
                  key={column}
                  label={say.cell({ column: say[column], name: row.name })}
                  text={cellText(book, list, row.at, column)}
                  numeric={!isText(column)}
                  take={(text) => take(row.at, row.name, column, text)}
                  onPaste={(texts) => paste(k, column, texts)}
                />
              ))}
              <td>
                <button
                  type="button"
                  className={css.remove}
                  aria-label={say.remove({ name: row.name })}
                  title={say.remove({ name: row.name })}
                  onClick={() => change(withoutEntry(book, list, row.at), say.remove({ name: row.name }))}
                >
                  <svg viewBox="0 0 12 12" width="12" height="12" aria-hidden="true">
                    <path d="M2 2l8 8M10 2l-8 8" />
                  </svg>
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {rows.length > shown.length && <p className={css.note}>{say.more({ count: rows.length - shown.length })}</p>}
      <form
        className={css.bar}
        onSubmit={(e) => {
          e.preventDefault();
          add();
        }}
      >
        <label className={css.find}>
          <span>{say.addId}</span>
          <input value={fresh} onChange={(e) => setFresh(e.target.value)} />
        </label>
        <button type="submit" className={parts.button} disabled={withEntry(book, list, fresh) === null}>
          {say.add}
        </button>
      </form>
    </section>
  );
};
