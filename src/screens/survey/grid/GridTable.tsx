import { useEffect, useRef } from 'react';
import { gridWords as say } from '../../../words/en/grid';
import { COLUMNS } from './columns';
import { GridRow } from './GridRow';
import css from './grid.module.css';
import { HeadRow } from './HeadRow';
import { useCells } from './useCells';
import { type Grid, rowName } from './useGrid';

/** Circuits and cables as a spreadsheet: one cell has the focus, an area may be selected. */
export const GridTable = ({ grid }: { readonly grid: Grid }) => {
  const cells = useCells(grid);
  const { active, area, typing } = cells;
  const table = useRef<HTMLTableElement>(null);
  const held = cells.held;

  const { row, column: col } = active;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the focus follows the active cell, also when its row was made anew
  useEffect(() => {
    if (!held || typing !== null) return;
    const cell = table.current?.querySelector<HTMLElement>('[data-active]');
    cell?.focus();
    cell?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [held, typing, row, col, grid.rows]);

  const column = COLUMNS[active.column]!;
  const bad = grid.badHere.find((b) => b.at === active.row && b.cell.column === column.id);
  const count = area.bottom - area.top + 1;
  const rowsThere = Math.min(area.bottom + 1, grid.rows.length) - area.top;
  return (
    <>
      <div className={css.bar}>
        <p id="grid-hint" aria-live="polite">
          <b>{say.heads[column.id]}</b> {bad ? say.cellRefused({ say: bad.cell.say }) : say.hints[column.id]}
        </p>
        {rowsThere > 0 && (
          <button type="button" className={css.small} onClick={cells.removeSelected}>
            {count > 1
              ? say.remove({ rows: rowsThere })
              : `${say.remove({ rows: 1 })}: ${rowName(grid.rows[active.row])}`}
          </button>
        )}
      </div>
      <div className={css.scroll}>
        <table
          ref={table}
          // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: the ARIA grid pattern laid over a table
          role="grid"
          aria-label={say.title}
          aria-rowcount={grid.rows.length + 2}
          aria-colcount={COLUMNS.length + 1}
          aria-multiselectable
          className={css.grid}
          onKeyDown={cells.onKeyDown}
          onCopy={cells.onCopy}
          onCut={cells.onCut}
          onPaste={cells.onPaste}
          onBlur={(e) => {
            // an input taken away leaves the focus to nobody: its cell gets it back
            const toNobody = e.relatedTarget === null && e.target instanceof HTMLInputElement;
            if (!toNobody && !e.currentTarget.contains(e.relatedTarget)) cells.letGo();
          }}
        >
          <HeadRow active={active.column} />
          <tbody>
            {[...grid.rows, undefined].map((row, r) => (
              <GridRow
                key={row ? `${row.circuit} ${row.homeRun}` : 'new'}
                at={r}
                row={row}
                job={grid.job}
                bad={grid.bad}
                active={active.row === r ? active.column : null}
                from={r >= area.top && r <= area.bottom ? area.left : null}
                to={area.right}
                typing={active.row === r ? typing : null}
                on={cells.on}
              />
            ))}
          </tbody>
        </table>
      </div>
      <details className={css.keys}>
        <summary>{say.keysTitle}</summary>
        <p>{say.keys}</p>
      </details>
      {COLUMNS.map((c) => {
        const choices = c.id === 'group' ? grid.job.cableGroups.map((g) => g.id) : c.choices;
        return (
          choices && (
            <datalist key={c.id} id={`grid-${c.id}`}>
              {choices.map((choice) => (
                <option key={choice} value={choice} />
              ))}
            </datalist>
          )
        );
      })}
    </>
  );
};
