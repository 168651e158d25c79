import { gridWords as say } from '../../../words/en/grid';
import { COLUMNS } from './columns';
import css from './grid.module.css';

/** The heads; the one over the active cell stands out. */
export const HeadRow = ({ active }: { readonly active: number }) => (
  <thead>
    <tr aria-rowindex={1}>
      <th scope="col" aria-colindex={1} className={css.corner}>
        <span className={css.quiet}>#</span>
      </th>
      {COLUMNS.map((c, i) => (
        <th
          key={c.id}
          scope="col"
          aria-colindex={i + 2}
          className={[c.right ? css.right : '', i === active ? css.headOn : '', i === 0 ? css.first : ''].join(' ')}
          style={{ minWidth: `${c.width}ch` }}
        >
          {say.heads[c.id]}
        </th>
      ))}
    </tr>
  </thead>
);
