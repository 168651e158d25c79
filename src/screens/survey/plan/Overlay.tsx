import type { Job } from '../../../job/schema';
import { type Projection, pathData } from '../../drawing/projection';
import { courseField, gripsOf } from '../drag';
import { shapeOf } from '../outlines';
import type { Ref } from '../ref';
import { GroupMarks } from './GroupMarks';
import css from './plan.module.css';

const GRIP = 5;
/** Room around a grip for a finger, points of the paper. */
const REACH = 22;

interface Props {
  readonly job: Job;
  readonly of: Ref;
  readonly on: Projection;
  /** Something is being placed: the selection is only shown. */
  readonly still: boolean;
}

/** The thing selected: a double line, and grips by which it is reshaped. */
export const Overlay = ({ job, of, on, still }: Props) => {
  const shape = shapeOf(job, of);
  if (!shape || shape.points.length < 2) return null;
  const points = shape.points.map(on.to);
  const d = pathData(points, shape.closed);
  const grips = gripsOf(job, of);
  const group = of.list === '/cableGroups' ? job.cableGroups.find((g) => g.id === of.id) : undefined;
  const moves = courseField(of) === undefined || of.list === '/site/areas' || of.list === '/site/bays';
  return (
    <g>
      <path d={d} className={css.selected} />
      <path d={d} className={css.between} />
      {group && <GroupMarks group={group} on={on} />}
      {!still && moves && of.list !== '/site/sleeves' && <path d={d} className={css.body} data-body="" />}
      {(grips.length > 0
        ? grips.map((g) => ({ key: g.key, at: on.to(g.at) }))
        : points.map((at, i) => ({ key: `corner ${i}`, at }))
      ).map(({ key, at: [x, y] }) => (
        <g
          key={key}
          {...(grips.length > 0 && !still ? { 'data-grip': key } : {})}
          className={grips.length > 0 ? css.reach : css.mute}
        >
          <rect x={x - REACH} y={y - REACH} width={2 * REACH} height={2 * REACH} fill="transparent" />
          <rect x={x - GRIP} y={y - GRIP} width={2 * GRIP} height={2 * GRIP} className={css.grip} />
        </g>
      ))}
    </g>
  );
};
