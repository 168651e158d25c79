import { memo } from 'react';
import type { Job } from '../../../job/schema';
import { gridWords as say } from '../../../words/en/grid';
import { type BadCells, badKey } from './apply';
import { CellInput } from './CellInput';
import { COLUMNS } from './columns';
import css from './grid.module.css';
import type { Row } from './rows';
import type { CellEvents } from './useCells';

interface Props {
  readonly at: number;
  /** Undefined: the row that is not there yet. */
  readonly row: Row | undefined;
  readonly job: Job;
  readonly bad: BadCells;
  /** Column of the active cell, null in other rows. */
  readonly active: number | null;
  /** First selected column, null where none of this row is. */
  readonly from: number | null;
  readonly to: number;
  /** What is being typed into the active cell. */
  readonly typing: string | null;
  readonly on: CellEvents;
}

export const GridRow = memo(({ at, row, job, bad, active, from, to, typing, on }: Props) => (
  <tr aria-rowindex={at + 2} className={row ? undefined : css.newRow}>
    <th scope="row" aria-colindex={1} className={css.corner} onPointerDown={() => on.pickRow(at)}>
      {row ? at + 1 : say.newRowHead}
    </th>
    {COLUMNS.map((c, i) => {
      const wrong = row && bad.get(badKey(row, c.id));
      const text = wrong?.text ?? (row ? c.show(row.its, job) : '');
      const on_ = active === i;
      const picked = from !== null && i >= from && i <= to;
      return (
        <td
          key={c.id}
          // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: the ARIA grid pattern laid over a table
          role="gridcell"
          aria-colindex={i + 2}
          aria-selected={picked}
          aria-invalid={wrong ? true : undefined}
          aria-describedby={on_ ? 'grid-hint' : undefined}
          data-active={on_ || undefined}
          tabIndex={on_ ? 0 : -1}
          className={[
            c.right ? css.right : '',
            i === 0 ? css.first : '',
            picked ? css.picked : '',
            on_ ? css.active : '',
            wrong ? css.wrong : text === say.notKnown ? css.notKnown : '',
            text === say.asGroup || text === say.none ? css.quiet : '',
          ].join(' ')}
          onPointerDown={(e) => on.press(e, { row: at, column: i })}
          onPointerEnter={(e) => on.over(e, { row: at, column: i })}
          onFocus={() => on.focus({ row: at, column: i })}
          onDoubleClick={() => on.open({ row: at, column: i })}
        >
          {on_ && typing !== null ? <CellInput column={c} row={at} text={typing} on={on} /> : <span>{text}</span>}
        </td>
      );
    })}
  </tr>
));
GridRow.displayName = 'GridRow';
