import { checkWords as say } from '../../words/en/check';
import { thingName } from '../parts/names';
import { useJob } from '../selected';
import { useActions } from '../session';
import css from './check.module.css';

/** What was looked at on site or asked of the inspector, each to be taken back. */
export const Recorded = () => {
  const job = useJob();
  const { edit } = useActions();
  return (
    <section className={css.block}>
      <h3>{say.recorded}</h3>
      {job.answers.length === 0 && <p className={css.quiet}>{say.noneRecorded}</p>}
      <ul>
        {job.answers.map((a) => (
          <li key={`${a.rule} ${a.subject} ${a.on}`} className={css.recorded}>
            <span>
              <b>{a.rule}</b>{' '}
              {say.recordSays({
                subject: thingName(job, a.subject),
                answer: String(a.answer),
                by: a.by,
                on: a.on,
              })}
              {a.note !== '' && <small>{a.note}</small>}
            </span>
            <button
              type="button"
              onClick={() =>
                edit({ edit: 'set value', path: '/answers', value: job.answers.filter((other) => other !== a) })
              }
            >
              {say.takeBack}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
};
