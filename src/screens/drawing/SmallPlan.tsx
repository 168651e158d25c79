import { useMemo } from 'react';
import { planDrawing } from '../../drawings/planDrawing';
import { screenWords as say } from '../../words/en/screens';
import { useJob, useSelected, useStale } from '../selected';
import css from './drawing.module.css';
import { PaintArc, PaintLine } from './paint';
import { projectionOf } from './projection';

const SIZE = { width: 256, height: 140 } as const;
const MARGIN = 4;

/** The room and the option's work as one sees them at arm's length: no lettering. */
export const SmallPlan = () => {
  const job = useJob();
  const selected = useSelected();
  const stale = useStale();
  const option = selected?.option;
  const plan = stale ? null : (selected?.plan ?? null);
  const drawing = useMemo(
    () => (option ? planDrawing(job, option, plan, { homeRun: null, small: true }) : null),
    [job, option, plan],
  );
  if (!drawing || !option) return null;
  const on = projectionOf(drawing, SIZE, MARGIN, 1);
  return (
    <svg
      className={css.arm}
      viewBox={`0 0 ${on.width} ${on.height}`}
      role="img"
      aria-label={say.planAlt({ option: option.title })}
    >
      {drawing.items.map((item, i) => {
        const key = `${i} ${item.id}`;
        if (item.item === 'line') return <PaintLine key={key} line={item} on={on} />;
        if (item.item === 'arc') return <PaintArc key={key} arc={item} on={on} />;
        return null;
      })}
    </svg>
  );
};
