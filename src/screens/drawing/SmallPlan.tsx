import { useMemo } from 'react';
import { planDrawing } from '../../drawings/planDrawing';
import type { Plan } from '../../facts/result';
import type { Job, Option } from '../../job/schema';
import { screenWords as say } from '../../words/en/screens';
import { useJob, useSelected, useStale } from '../selected';
import css from './drawing.module.css';
import { PaintArc, PaintLine } from './paint';
import { projectionOf } from './projection';

const SIZE = { width: 256, height: 140 } as const;
const MARGIN = 4;

interface Props {
  readonly job: Job;
  readonly option: Option;
  readonly plan: Plan | null;
  readonly size: { readonly width: number; readonly height: number };
}
/** The room and the option's work as one sees them at arm's length: no lettering. Decoration where nothing names it. */
export const PlanFromAfar = ({ job, option, plan, size }: Props) => {
  const drawing = useMemo(() => planDrawing(job, option, plan, { homeRun: null, small: true }), [job, option, plan]);
  const on = projectionOf(drawing, size, MARGIN, 1);
  return (
    <svg className={css.afar} viewBox={`0 0 ${on.width} ${on.height}`} aria-hidden="true">
      {drawing.items.map((item, i) => {
        const key = `${i} ${item.id}`;
        if (item.item === 'line') return <PaintLine key={key} line={item} on={on} />;
        if (item.item === 'arc') return <PaintArc key={key} arc={item} on={on} />;
        return null;
      })}
    </svg>
  );
};

/** The selected option's plan in the right column of a sheet without a drawing. */
export const SmallPlan = () => {
  const job = useJob();
  const selected = useSelected();
  const stale = useStale();
  if (!selected) return null;
  return (
    <figure className={css.arm} aria-label={say.planOf({ option: selected.option.title })}>
      <PlanFromAfar job={job} option={selected.option} plan={stale ? null : selected.plan} size={SIZE} />
    </figure>
  );
};
