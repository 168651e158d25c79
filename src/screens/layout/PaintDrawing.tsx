import { memo, useMemo } from 'react';
import type { Drawing } from '../../drawings/items';
import { settle } from '../../drawings/settle';
import css from '../drawing/drawing.module.css';
import { PaintLabel } from '../drawing/PaintLabel';
import { PaintLines } from '../drawing/PaintLines';
import { type Projection, pathData } from '../drawing/projection';
import { MarkAt } from '../parts/EffectMark';

interface Props {
  readonly drawing: Drawing;
  readonly on: Projection;
  readonly alt: string;
  /** The key note singled out. */
  readonly note: number | null;
}

/** A whole drawing. `data-frame` holds the matrix from its inches to the paper. */
export const PaintDrawing = memo(({ drawing, on, alt, note }: Props) => {
  const settled = useMemo(() => settle(drawing, on), [drawing, on]);
  const [x0, y0] = on.to([0, 0]);
  return (
    <svg width={on.width} height={on.height} role="img" aria-label={alt}>
      <g data-frame transform={`matrix(${on.scale} 0 0 ${-on.scale} ${x0} ${y0})`} />
      <PaintLines drawing={drawing} on={on} />
      {[...settled.labels, ...settled.marks].map(({ of, leader, x, y }) =>
        leader === null ? null : (
          <path key={`${of.item} ${of.id} ${x} ${y}`} d={pathData(leader, false)} className={css.leader} />
        ),
      )}
      {settled.labels.map((set) => (
        <PaintLabel key={`${set.of.id} ${set.x} ${set.y}`} set={set} />
      ))}
      {settled.marks.map(({ of: mark, x, y }) => (
        <g key={mark.number} transform={`translate(${x} ${y})`} data-mark={mark.number} className={css.mark}>
          {note === mark.number && <circle r={15} className={css.singled} />}
          <MarkAt effect={mark.effect} number={mark.number} />
        </g>
      ))}
    </svg>
  );
});
