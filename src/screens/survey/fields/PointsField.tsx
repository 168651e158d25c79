import type { Pt3 } from '../../../units/types';
import { surveyWords as say } from '../../../words/en/survey';
import css from './fields.module.css';
import { length } from './spec';
import { TypedField } from './TypedField';

interface Props {
  readonly points: readonly (readonly number[])[];
  /** Fewest the record can do with. */
  readonly least: number;
  readonly deep: boolean;
  readonly onSet: (points: readonly (readonly number[])[]) => string | null;
}
const AXES = [say.f.x, say.f.y, say.f.z] as const;

/** The points of an outline or a run, each typed; one more is added where the last one is. */
export const PointsField = ({ points, least, deep, onSet }: Props) => {
  const axes = deep ? AXES : AXES.slice(0, 2);
  const last: readonly number[] = points.at(-1) ?? ([0, 0, 0] satisfies Pt3);
  return (
    <>
      <table className={css.points}>
        <thead>
          <tr>
            <td />
            {axes.map((axis) => (
              <th key={axis} scope="col">
                {axis.split(',')[0]}
              </th>
            ))}
            <td />
          </tr>
        </thead>
        <tbody>
          {points.map((point, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a point has no name but its place in the run
            <tr key={i}>
              <th scope="row">{i + 1}</th>
              {axes.map((axis, k) => (
                <td key={axis}>
                  <TypedField
                    spec={length('', `${say.point({ n: i + 1 })}, ${axis}`)}
                    value={point[k]}
                    onSet={(value) => onSet(points.with(i, point.with(k, value as number)))}
                  />
                </td>
              ))}
              <td>
                {points.length > least && (
                  <button
                    type="button"
                    className={css.cross}
                    aria-label={say.removePoint({ n: i + 1 })}
                    onClick={() => onSet(points.toSpliced(i, 1))}
                  >
                    ×
                  </button>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <button type="button" className={css.more} onClick={() => onSet([...points, last.with(0, last[0]! + 12)])}>
        {say.addPoint}
      </button>
    </>
  );
};
