import { scheduleOf } from '../../documents/schedule';
import type { Plan } from '../../facts/result';
import { cableName } from '../../standards/cableNames';
import { closeoutWords as say } from '../../words/en/closeout';
import { Figure } from '../parts/Figure';
import { Length } from '../parts/Length';
import { homeRunTag, thingName } from '../parts/names';
import { figurePath, useJob } from '../selected';
import css from './papers.module.css';
import { WayMark } from './WayMark';

const HEADS = [say.tag, say.serves, say.cable, say.way, say.box, say.row] as const;
const TICKS = [say.tagged, say.landed, say.tested] as const;

/** Every home run for the crew: way, box, row, lengths; boxes to tick on paper. */
export const RunsTable = ({
  plan,
  at,
  ticks,
}: {
  readonly plan: Plan;
  readonly at: number;
  readonly ticks: boolean;
}) => {
  const job = useJob();
  return (
    <table className={`${css.table} ${css.runs}`}>
      <caption>{say.runsTitle}</caption>
      <thead>
        <tr>
          {HEADS.map((text) => (
            <th scope="col" key={text}>
              {text}
            </th>
          ))}
          {[say.codeLength, say.cutLength].map((text) => (
            <th scope="col" key={text} className={css.right}>
              {text}
            </th>
          ))}
          <th scope="col">{say.afci}</th>
          {ticks &&
            TICKS.map((text) => (
              <th scope="col" key={text} className={css.tickHead}>
                {text}
              </th>
            ))}
        </tr>
      </thead>
      <tbody>
        {scheduleOf(job, plan).map((row, k, all) => {
          const path = (key: string) => figurePath(at, `runs/${row.at}/${key}`);
          const { run } = row;
          const fresh = run.newCable !== null;
          return (
            <tr key={run.homeRun} className={k > 0 && all[k - 1]?.run.way !== run.way ? css.nextWay : undefined}>
              <th scope="row">{homeRunTag(job, run.homeRun)}</th>
              <td className={css.serves}>{row.serves}</td>
              <td className={css.noWrap}>
                {row.cable}
                {run.newCable && run.way === 'new home run' && cableName(run.newCable) !== row.cable && (
                  <small> → {cableName(run.newCable)}</small>
                )}
              </td>
              <td className={css.way}>
                <WayMark way={run.way} /> <Figure path={path('way')}>{run.way}</Figure>
                {run.blockedBy.length > 0 && (
                  <small>{say.blocked({ things: run.blockedBy.map((id) => thingName(job, id)).join(', ') })}</small>
                )}
              </td>
              <td className={css.noWrap}>{row.box}</td>
              <td className={css.noWrap}>{row.rows}</td>
              <td className={css.right}>
                {fresh && (
                  <>
                    <span className={css.narrow}>{say.codeLength} </span>
                    <Figure path={path('codeLength')}>
                      <Length inches={run.codeLength} />
                    </Figure>
                  </>
                )}
              </td>
              <td className={css.strong}>
                {fresh && (
                  <>
                    <span className={css.narrow}>{say.cutLength} </span>
                    <Figure path={path('cutLength')}>
                      <Length inches={run.cutLength} />
                    </Figure>
                  </>
                )}
              </td>
              <td>
                {row.afci && row.afci.required !== 'no' && (
                  <>
                    <span className={css.narrow}>{say.afci} </span>
                    {say.afciSays[row.afci.required]}
                  </>
                )}
              </td>
              {ticks &&
                TICKS.map((text) => (
                  <td key={text} className={css.tick}>
                    <span className={css.square} />
                  </td>
                ))}
            </tr>
          );
        })}
      </tbody>
    </table>
  );
};
