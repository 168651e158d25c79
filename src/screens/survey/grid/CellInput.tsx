import { useLayoutEffect, useRef } from 'react';
import { gridWords as say } from '../../../words/en/grid';
import type { Column } from './column';
import css from './grid.module.css';
import type { CellEvents } from './useCells';

interface Props {
  readonly column: Column;
  readonly row: number;
  readonly text: string;
  readonly on: CellEvents;
}

/** The cell being typed into. Enter and Tab take it and move on, Escape leaves the cell as it was. */
export const CellInput = ({ column, row, text, on }: Props) => {
  const input = useRef<HTMLInputElement>(null);
  useLayoutEffect(() => {
    const field = input.current;
    field?.focus();
    field?.setSelectionRange(field.value.length, field.value.length);
  }, []);
  return (
    <input
      ref={input}
      className={css.input}
      aria-label={`${say.heads[column.id]}, ${row + 1}`}
      value={text}
      list={column.choices || column.id === 'group' ? `grid-${column.id}` : undefined}
      autoComplete="off"
      spellCheck={false}
      onChange={(e) => on.type(e.target.value)}
      onBlur={() => on.take(null)}
      onKeyDown={(e) => {
        if (e.nativeEvent.isComposing) return;
        e.stopPropagation();
        if (e.key === 'Enter') on.take({ rows: e.shiftKey ? -1 : 1, columns: 0 });
        else if (e.key === 'Tab') on.take({ rows: 0, columns: e.shiftKey ? -1 : 1 });
        else if (e.key === 'Escape') on.leave();
        else return;
        e.preventDefault();
      }}
    />
  );
};
