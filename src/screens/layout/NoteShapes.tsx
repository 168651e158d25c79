import type { KeyNote } from '../../drawings/keyNotes';
import drawing from '../drawing/drawing.module.css';
import { type Projection, pathData } from '../drawing/projection';
import css from './layout.module.css';

/** The shapes the findings of a note judge, over the plan: a double line of ink. */
export const NoteShapes = ({ note, on }: { readonly note: KeyNote; readonly on: Projection }) => (
  <svg className={css.over} width={on.width} height={on.height} aria-hidden="true">
    {note.findings.map(({ at, finding }) =>
      finding.shape && finding.shape.length > 1 ? (
        <path
          key={at}
          d={pathData(
            finding.shape.map(([x, y]) => on.to([x, y])),
            true,
          )}
          className={drawing.singled}
        />
      ) : null,
    )}
  </svg>
);
