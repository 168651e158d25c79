import { tasksWhen, WHENS } from '../../documents/schedule';
import type { Plan } from '../../facts/result';
import { CONDITIONS } from '../../pricing/items';
import { closeoutWords as say } from '../../words/en/closeout';
import { Figure } from '../parts/Figure';
import { figurePath } from '../selected';
import css from './papers.module.css';

/** What is done before, during and after the outage, with its hours and its caution. */
export const Tasks = ({ plan, at }: { readonly plan: Plan; readonly at: number }) => (
  <div className={css.tasks}>
    {WHENS.map((when) => (
      <section key={when}>
        <h3>{say.when[when]}</h3>
        <p className={css.caution}>{say.whenCaution[when]}</p>
        <ul>
          {tasksWhen(plan, when).map(({ task, at: i }) => (
            <li key={task.id}>
              {CONDITIONS.has(task.id) ? <span className={css.noTick} /> : <span className={css.square} />}
              <span>{task.say}</span>
              <span className={css.hours}>
                <Figure path={figurePath(at, `time/byTask/${i}/hours`)}>
                  {String(Math.round(task.hours * 100) / 100)}
                </Figure>{' '}
                {say.hours}
              </span>
            </li>
          ))}
        </ul>
      </section>
    ))}
  </div>
);
