import { newTrunks } from '../../drawings/newWork';
import { canOutline } from '../../drawings/oldWork';
import type { Plan } from '../../facts/result';
import { bounds } from '../../geometry/polygon';
import type { Job, Option } from '../../job/schema';
import type { Pt } from '../../units/types';
import css from './price.module.css';

const SIZE = { width: 64, height: 44 } as const;
const MARGIN = 3;
const MARK = 5;

/** The room at a glance: its outline, the old panels, where the new one hangs and the rows that lead there. */
export const OptionThumb = ({
  job,
  option,
  plan,
}: {
  readonly job: Job;
  readonly option: Option;
  readonly plan: Plan | null;
}) => {
  const corners = job.site.outline.map((c) => c.at);
  const box = bounds(corners);
  const scale = Math.min(
    (SIZE.width - 2 * MARGIN) / Math.max(1, box.maxX - box.minX),
    (SIZE.height - 2 * MARGIN) / Math.max(1, box.maxY - box.minY),
  );
  const to = ([x, y]: Pt): string =>
    `${(MARGIN + (x - box.minX) * scale).toFixed(1)} ${(MARGIN + (box.maxY - y) * scale).toFixed(1)}`;
  const middle = (points: readonly Pt[] | null): Pt | null =>
    points && [
      points.reduce((n, p) => n + p[0], 0) / points.length,
      points.reduce((n, p) => n + p[1], 0) / points.length,
    ];
  const square = (at: Pt | null, className: string | undefined, key: string) =>
    at && <path key={key} d={`M${to(at)}m${-MARK / 2} ${-MARK / 2}h${MARK}v${MARK}h${-MARK}z`} className={className} />;
  return (
    <svg className={css.thumb} viewBox={`0 0 ${SIZE.width} ${SIZE.height}`} aria-hidden="true">
      <path d={`M${corners.map(to).join('L')}Z`} className={css.thumbWall} />
      {plan && (
        <path
          d={newTrunks(plan)
            .map((t) => `M${to(t.from)}L${to(t.to)}`)
            .join('')}
          className={css.thumbRow}
        />
      )}
      {job.enclosures.map((e) => square(middle(canOutline(job, e)), css.thumbOld, e.id))}
      {square(middle(canOutline(job, option.enclosure)), css.thumbNew, 'new')}
    </svg>
  );
};
