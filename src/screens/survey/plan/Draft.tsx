import { distance } from '../../../geometry/vector';
import type { Pt } from '../../../units/types';
import { PaintDimension } from '../../drawing/PaintDimension';
import { type Projection, pathData } from '../../drawing/projection';
import { dimensionLine } from '../surveyDrawing';
import css from './plan.module.css';

interface Props {
  readonly points: readonly Pt[];
  /** Draws the way that is still missing back to the first point. */
  readonly missing: boolean;
  readonly on: Projection;
}

/** What is typed or clicked and not drawn yet: each part with its length, and what is missing to the start. */
export const Draft = ({ points, missing, on }: Props) => {
  const first = points[0];
  const last = points.at(-1);
  if (!first || !last) return null;
  return (
    <g>
      <path d={pathData(points.map(on.to), false)} className={css.draft} />
      {missing && distance(first, last) > 0.02 && (
        <path d={pathData([on.to(last), on.to(first)], false)} className={css.missing} />
      )}
      {points.slice(1).map((p, i) =>
        distance(points[i]!, p) < 0.02 ? null : (
          // biome-ignore lint/suspicious/noArrayIndexKey: a wall typed has no name but its place
          <PaintDimension key={i} dimension={{ ...dimensionLine(`draft ${i}`, points[i]!, p), off: 24 }} on={on} />
        ),
      )}
      {points.map((p, i) => {
        const [x, y] = on.to(p);
        // biome-ignore lint/suspicious/noArrayIndexKey: as above
        return <circle key={i} cx={x} cy={y} r={i === 0 ? 5 : 3} className={css.point} />;
      })}
    </g>
  );
};
