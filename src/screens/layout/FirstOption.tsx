import { useMemo, useRef } from 'react';
import { settle } from '../../drawings/settle';
import { layoutWords as say } from '../../words/en/layout';
import paint from '../drawing/drawing.module.css';
import { PaintLabel } from '../drawing/PaintLabel';
import { PaintLines } from '../drawing/PaintLines';
import { pathData, projectionOf } from '../drawing/projection';
import { useJob } from '../selected';
import { surveyDrawing } from '../survey/surveyDrawing';
import css from './firstOption.module.css';
import { useNewOption } from './useNewOption';
import { useSize } from './useSize';

/** Below this width of the drawing the lengths of the walls are left out. */
const SMALL_PX = 600;
const MARGIN = { wide: 62, small: 30 } as const;

/** The room as surveyed, nothing new in it. */
const Room = () => {
  const job = useJob();
  const ref = useRef<HTMLDivElement>(null);
  const size = useSize(ref);
  const small = size.width < SMALL_PX;
  const drawing = useMemo(() => surveyDrawing(job, { small, extra: [] }), [job, small]);
  const on = size.width > 0 ? projectionOf(drawing, size, small ? MARGIN.small : MARGIN.wide, 1) : null;
  return (
    <div ref={ref} className={css.room}>
      {on && (
        <svg viewBox={`0 0 ${on.width} ${on.height}`} role="img" aria-label={say.roomAlt}>
          <PaintLines drawing={drawing} on={on} />
          {settle(drawing, on).labels.map((set) => (
            <g key={`${set.of.id} ${set.of.lines[0]?.say}`}>
              {set.leader && <path d={pathData(set.leader, false)} className={paint.leader} />}
              <PaintLabel set={set} />
            </g>
          ))}
        </svg>
      )}
    </div>
  );
};

/** While the job has no option: the two ways to begin one, over the room as surveyed. */
export const FirstOption = () => {
  const start = useNewOption();
  return (
    <section className={css.first} aria-labelledby="first-option">
      <h3 id="first-option">{say.firstTitle}</h3>
      {start === null ? (
        <p>{say.noPanelYet}</p>
      ) : (
        <div className={css.ways}>
          <button type="button" aria-describedby="says-in-place" onClick={start.inPlace}>
            {say.firstInPlace}
          </button>
          <p id="says-in-place">{say.firstInPlaceSays}</p>
          <button type="button" aria-describedby="says-relocate" onClick={start.relocate}>
            {say.firstRelocate}
          </button>
          <p id="says-relocate">{say.firstRelocateSays}</p>
        </div>
      )}
      <h3>{say.roomName}</h3>
      <Room />
    </section>
  );
};
