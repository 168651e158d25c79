import { useId, useMemo } from 'react';
import { DETAIL_RADIUS, DETAIL_TIMES, detailOf, detailPlace, tooSmall } from '../../drawings/detail';
import type { Drawing } from '../../drawings/items';
import { settle } from '../../drawings/settle';
import { intrusions } from '../../drawings/spaces';
import { middle } from '../../drawings/things';
import type { Plan } from '../../facts/result';
import type { Job, Option } from '../../job/schema';
import { formatFeetInches } from '../../units/length';
import { drawingWords } from '../../words/en/drawings';
import { layoutWords as say } from '../../words/en/layout';
import { PaintLines } from '../drawing/PaintLines';
import type { Projection } from '../drawing/projection';
import css from './layout.module.css';

interface Props {
  readonly job: Job;
  readonly option: Option;
  readonly plan: Plan;
  readonly drawing: Drawing;
  readonly on: Projection;
}

/** A conflict too small to be seen in the plan, drawn again six times as large in a circle where there is room. */
export const Detail = ({ job, option, plan, drawing, on }: Props) => {
  const clip = useId();
  const conflict = useMemo(() => tooSmall(intrusions(job, option, plan), on.scale), [job, option, plan, on.scale]);
  const found = useMemo(() => {
    if (!conflict) return null;
    const at = middle(conflict.outline);
    const place = detailPlace(drawing, on, settle(drawing, on), at);
    return place && { at, place, part: detailOf(drawing, at, on.scale) };
  }, [conflict, drawing, on]);
  const large = useMemo((): Projection | null => {
    if (!found) return null;
    const scale = on.scale * DETAIL_TIMES;
    const [ax, ay] = found.at;
    const [px, py] = found.place;
    return {
      ...on,
      scale,
      to: ([x, y]) => [px + (x - ax) * scale, py - (y - ay) * scale],
      from: ([x, y]) => [ax + (x - px) / scale, ay - (y - py) / scale],
    };
  }, [found, on]);
  if (!conflict || !found || !large) return null;
  const [x, y] = found.place;
  const [tx, ty] = on.to(found.at);
  const far = Math.hypot(tx - x, ty - y) || 1;
  const small = DETAIL_RADIUS / DETAIL_TIMES;
  const [ux, uy] = [(tx - x) / far, (ty - y) / far];
  return (
    <svg className={css.over} width={on.width} height={on.height} aria-hidden="true">
      <clipPath id={clip}>
        <circle cx={x} cy={y} r={DETAIL_RADIUS} />
      </clipPath>
      <circle cx={tx} cy={ty} r={small} className={css.circle} />
      <line
        x1={tx - ux * small}
        y1={ty - uy * small}
        x2={x + ux * DETAIL_RADIUS}
        y2={y + uy * DETAIL_RADIUS}
        className={css.leader}
      />
      <circle cx={x} cy={y} r={DETAIL_RADIUS} className={css.detailPaper} />
      <g clipPath={`url(#${clip})`}>
        <PaintLines drawing={found.part} on={large} />
      </g>
      <circle cx={x} cy={y} r={DETAIL_RADIUS} className={css.circle} />
      <text x={x} y={y + DETAIL_RADIUS + 15} textAnchor="middle" className={css.detailText}>
        {say.detailScale}
      </text>
      <text x={x} y={y + DETAIL_RADIUS + 30} textAnchor="middle" className={css.detailText}>
        {drawingWords.intrudes({ thing: conflict.kind, by: formatFeetInches(conflict.by) })}
      </text>
    </svg>
  );
};
