import { type BoxRow, boxSchedule } from '../../documents/boxPlaces';
import type { Plan } from '../../facts/result';
import { closeoutWords as say } from '../../words/en/closeout';
import { Figure } from '../parts/Figure';
import { Length } from '../parts/Length';
import { figurePath, useJob } from '../selected';
import css from './papers.module.css';

/** Nearer than this a box is at the wall, not off it. */
const AT_WALL_IN = 6;
const Place = ({ row: { from, box } }: { readonly row: BoxRow }) => {
  if (from === null) return say.boxOn[box.on];
  const v = { wall: say.spoken(from.wall) };
  const along = (
    <>
      <Length inches={from.along} /> {say.fromLeft}
    </>
  );
  if (from.off > AT_WALL_IN)
    return (
      <>
        {say.boxOn[box.on]}, <Length inches={from.off} /> {say.offWall(v)} {along}
      </>
    );
  return (
    <>
      {box.on === 'wall' ? say.onWall(v) : `${say.boxOn[box.on]}, ${say.atWall(v)}`} {along}
    </>
  );
};

/** Splice boxes: size, where a tape finds them, fill, and the label of the cover. */
export const BoxTable = ({ plan, at }: { readonly plan: Plan; readonly at: number }) => {
  const job = useJob();
  const boxes = boxSchedule(job, plan);
  if (boxes.length === 0) return <p className={css.none}>{say.noBoxes}</p>;
  return (
    <table className={css.table}>
      <caption>{say.boxesTitle}</caption>
      <thead>
        <tr>
          {[say.box, say.size, say.material, say.where].map((text) => (
            <th scope="col" key={text}>
              {text}
            </th>
          ))}
          {[say.above, say.volume, say.fill, say.conductors].map((text) => (
            <th scope="col" key={text} className={css.right}>
              {text}
            </th>
          ))}
          <th scope="col">{say.label}</th>
        </tr>
      </thead>
      <tbody>
        {boxes.map((row) => {
          const path = (key: string) => figurePath(at, `boxes/${row.at}/${key}`);
          const { box } = row;
          const name = row.name || say.boxOn[box.on];
          return (
            <tr key={box.id}>
              <th scope="row">{row.name || '–'}</th>
              <td className={css.noWrap}>
                <Figure path={path('size')}>{box.size}</Figure>
              </td>
              <td>
                <Figure path={path('material')}>{box.material}</Figure>
              </td>
              <td className={css.where}>
                <Place row={row} />
              </td>
              <td className={css.right}>
                <Figure path={path('at/2')}>
                  <Length inches={box.at[2]} />
                </Figure>
              </td>
              {(['volumeIn3', 'fillIn3', 'conductorsSpliced'] as const).map((key) => (
                <td key={key} className={css.right}>
                  <Figure path={path(key)}>{String(Math.round(box[key] * 100) / 100)}</Figure>
                </td>
              ))}
              <td className={css.serves}>{say.labelOf({ name, numbers: row.numbers.join(', ') })}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
};
