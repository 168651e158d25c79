import { inPlan, piece } from '../../../drawings/courses';
import type { CableGroup } from '../../../job/schema';
import { isKnown } from '../../../units/types';
import { surveyWords as say } from '../../../words/en/survey';
import { type Projection, pathData } from '../../drawing/projection';
import css from './plan.module.css';

/** Of a group that is selected: where a hand gets at it, and the last staple that can stay. */
export const GroupMarks = ({ group, on }: { readonly group: CableGroup; readonly on: Projection }) => {
  const pivot = isKnown(group.pivot) ? piece(group.path, 0, Math.max(group.pivot, 1 / 64)).at(-1) : undefined;
  const at = pivot && on.to([pivot[0], pivot[1]]);
  return (
    <g>
      {group.reachable.map(([from, to]) => {
        const points = inPlan(piece(group.path, from, to));
        return points.length < 2 ? null : (
          <path key={`${from} ${to}`} d={pathData(points.map(on.to), false)} className={css.reachable} />
        );
      })}
      {at && (
        <g className={css.mute}>
          <path d={`M${at[0]} ${at[1]}l-6 -10h12z`} className={css.pivot} />
          <text x={at[0] + 9} y={at[1] - 3} className={css.pivotText}>
            {say.pivotMark}
          </text>
        </g>
      )}
    </g>
  );
};
