import { useState } from 'react';
import { gridWords as say } from '../../../words/en/grid';
import parts from '../../parts/parts.module.css';
import { badKey, cellText } from './apply';
import type { Column } from './column';
import { COLUMNS } from './columns';
import css from './forms.module.css';
import type { Row } from './rows';
import { type Grid, rowName } from './useGrid';

/** On a phone: a list of rows, and one row at a time as a plain form. */
export const RowForms = ({ grid }: { readonly grid: Grid }) => {
  const [open, setOpen] = useState<number | null>(null);
  const row = open === null ? undefined : grid.rows[open];
  if (open !== null && row) return <RowForm key={open} grid={grid} row={row} at={open} go={setOpen} />;
  return (
    <ul className={css.list} aria-label={say.rowsTitle}>
      {grid.rows.length === 0 && <li className={css.none}>{say.empty}</li>}
      {grid.rows.map((r, i) => {
        const bad = grid.badHere.filter((b) => b.at === i).length;
        return (
          <li key={`${r.circuit} ${r.homeRun}`}>
            <button
              type="button"
              className={css.open}
              onClick={() => setOpen(i)}
              aria-label={say.openRow({ row: rowName(r) })}
            >
              <b>{r.its.circuit?.number || r.homeRun}</b>
              <span>{r.its.circuit?.label}</span>
              <span className={css.facts}>
                {r.its.circuit && amps(r)} {r.its.homeRun && shown(grid, r, 'cable')}
                {bad > 0 && ` · ${say.notTakenShort({ count: bad })}`}
              </span>
            </button>
          </li>
        );
      })}
    </ul>
  );
};

const shown = (grid: Grid, row: Row, column: Column['id']): string => cellText(grid.job, grid.bad, row, column);
const amps = ({ its }: Row): string => (its.circuit?.amps === 'unknown' ? say.notKnown : `${its.circuit?.amps} A`);

interface Props {
  readonly grid: Grid;
  readonly row: Row;
  readonly at: number;
  readonly go: (row: number | null) => void;
}
const RowForm = ({ grid, row, at, go }: Props) => {
  const of = (kind: Column['of'], detail: boolean) =>
    COLUMNS.filter((c) => c.of === kind && DETAIL.has(c.id) === detail).map((c) => (
      <CellField key={c.id} grid={grid} row={row} at={at} column={c} />
    ));
  return (
    <form className={css.form} aria-label={rowName(row)} onSubmit={(e) => e.preventDefault()}>
      <div className={css.nav}>
        <button type="button" className={parts.button} onClick={() => go(null)}>
          {say.backToRows}
        </button>
        <button type="button" className={parts.button} disabled={at === 0} onClick={() => go(at - 1)}>
          {say.previous}
        </button>
        <button
          type="button"
          className={parts.button}
          disabled={at === grid.rows.length - 1}
          onClick={() => go(at + 1)}
        >
          {say.next}
        </button>
      </div>
      <h3>{say.ofCircuit}</h3>
      {of('circuit', false)}
      <h3>{say.ofCable}</h3>
      {of('cable', false)}
      <details>
        <summary>{say.more}</summary>
        {of('cable', true)}
      </details>
      <button
        type="button"
        className={parts.button}
        onClick={() => {
          grid.remove([at]);
          go(null);
        }}
      >
        {say.removeRow}
      </button>
    </form>
  );
};
const DETAIL: ReadonlySet<string> = new Set(['kind', 'size', 'metal', 'hots', 'neutral', 'ground', 'insulation']);
/** Columns that take one of their choices and nothing else. */
const CLOSED: ReadonlySet<string> = new Set([
  'poles',
  'protection',
  'traced',
  'continuous',
  'hardWired',
  'addsOutlet',
  'group',
  'kind',
  'metal',
  'hots',
  'neutral',
  'ground',
  'insulation',
]);

const CellField = ({
  grid,
  row,
  at,
  column,
}: {
  readonly grid: Grid;
  readonly row: Row;
  readonly at: number;
  readonly column: Column;
}) => {
  const text = shown(grid, row, column.id);
  const bad = grid.bad.get(badKey(row, column.id));
  const [typed, setTyped] = useState<string | null>(null);
  const id = `row-${column.id}`;
  const take = (value: string): void => {
    setTyped(null);
    if (value === text) return;
    const name = say.setCell({ column: say.heads[column.id], row: rowName(row) });
    grid.set([{ row: at, column: column.id, text: value }], name);
  };
  const given = column.id === 'group' ? grid.job.cableGroups.map((g) => g.id) : (column.choices ?? []);
  const choices = given.includes(text) ? given : [text, ...given];
  return (
    <div className={bad ? css.refused : css.field}>
      <label htmlFor={id}>{say.heads[column.id]}</label>
      {CLOSED.has(column.id) ? (
        <select id={id} value={text} aria-describedby={`${id}-hint`} onChange={(e) => take(e.target.value)}>
          {choices.map((choice) => (
            <option key={choice} value={choice}>
              {choice}
            </option>
          ))}
        </select>
      ) : (
        <input
          id={id}
          value={typed ?? text}
          autoComplete="off"
          spellCheck={false}
          inputMode={column.right && column.id !== 'tails' ? 'decimal' : undefined}
          aria-invalid={bad !== undefined}
          aria-describedby={`${id}-hint`}
          onFocus={(e) => e.target.select()}
          onChange={(e) => setTyped(e.target.value)}
          onBlur={(e) => take(e.target.value)}
          onKeyDown={(e) => {
            if (e.key === 'Enter') take(e.currentTarget.value);
            if (e.key === 'Escape') setTyped(null);
          }}
        />
      )}
      <small id={`${id}-hint`}>{bad ? say.cellRefused({ say: bad.say }) : say.hints[column.id]}</small>
    </div>
  );
};
