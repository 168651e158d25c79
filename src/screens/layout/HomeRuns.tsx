import { boxNames } from '../../drawings/newWork';
import type { Plan, Run } from '../../facts/result';
import type { Job } from '../../job/schema';
import { cableName } from '../../standards/cableNames';
import { screenWords as say } from '../../words/en/screens';
import { Figure } from '../parts/Figure';
import { Length } from '../parts/Length';
import { homeRunTag } from '../parts/names';
import css from '../parts/table.module.css';
import { figurePath, useJob } from '../selected';
import { useActions, useJobState } from '../session';

/** The strictest word on AFCI among a home run's circuits, with its place in the result. */
const afciOf = (job: Job, plan: Plan, run: Run): { at: number; required: string } | null => {
  const circuits = job.homeRuns.find((h) => h.id === run.homeRun)?.circuits ?? [];
  const entries = plan.afci.map((a, at) => ({ at, ...a })).filter((a) => circuits.includes(a.circuit));
  const order = ['yes', 'inspector decides', 'cannot be told', 'no'];
  entries.sort((a, b) => order.indexOf(a.required) - order.indexOf(b.required));
  return entries[0] ?? null;
};

/** Every home run: its way, box and lengths. Its name singles it out in the drawing. */
export const HomeRuns = ({ plan, at }: { readonly plan: Plan; readonly at: number }) => {
  const job = useJob();
  const singled = useJobState((s) => s.homeRun);
  const { singleOut } = useActions();
  const names = boxNames(plan);
  return (
    <table className={css.table}>
      <caption>{say.runsTitle}</caption>
      <thead>
        <tr>
          {[say.colTag, say.colServes, say.colCable, say.colWay, say.colBox].map((text) => (
            <th scope="col" key={text}>
              {text}
            </th>
          ))}
          <th scope="col" className={css.right}>
            {say.colCode}
          </th>
          <th scope="col" className={css.right}>
            {say.colCut}
          </th>
          <th scope="col">{say.colAfciShort}</th>
        </tr>
      </thead>
      <tbody>
        {plan.runs.map((run, i) => {
          const path = (key: string) => figurePath(at, `runs/${i}/${key}`);
          const home = job.homeRuns.find((h) => h.id === run.homeRun);
          const circuits = job.circuits.filter((c) => home?.circuits.includes(c.id));
          const afci = afciOf(job, plan, run);
          const on = singled === run.homeRun;
          return (
            <tr key={run.homeRun} className={on ? css.rowOn : undefined}>
              <th scope="row" className={css.tag}>
                <button
                  type="button"
                  className={css.pick}
                  aria-pressed={on}
                  onClick={() => singleOut({ homeRun: on ? null : run.homeRun })}
                >
                  {homeRunTag(job, run.homeRun)}
                </button>
              </th>
              <td className={css.serves}>{circuits.map((c) => c.label).join(' · ')}</td>
              <td className={css.noWrap}>{home ? cableName(home.cable) : ''}</td>
              <td className={css.way}>
                <Figure path={path('way')}>{run.way}</Figure>
                {run.blockedBy.length > 0 && <small>{say.blockedBy({ things: run.blockedBy.join(', ') })}</small>}
              </td>
              <td>{run.box === null ? '' : (names.get(run.box) ?? say.oldCan)}</td>
              <td className={css.right}>
                {run.newCable !== null && (
                  <Figure path={path('codeLength')}>
                    <Length inches={run.codeLength} />
                  </Figure>
                )}
              </td>
              <td className={css.right}>
                {run.newCable !== null && (
                  <Figure path={path('cutLength')}>
                    <Length inches={run.cutLength} />
                  </Figure>
                )}
              </td>
              <td>{afci && <Figure path={figurePath(at, `afci/${afci.at}/required`)}>{afci.required}</Figure>}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
};
