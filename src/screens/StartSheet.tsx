import { screenWords as say } from '../words/en/screens';
import { JobsList } from './JobsList';
import { LookTools } from './LookTools';
import { Notices } from './Notices';
import { WithTerms } from './parts/Term';
import css from './sheet.module.css';

/** An empty job: what the program is for, what to measure first, and a way in. */
export const StartSheet = () => (
  <div className={css.sheet}>
    <div className={css.frameStart}>
      <div>
        <header className={css.startHead}>
          <h1>Backboard</h1>
          <LookTools />
        </header>
        <Notices />
      </div>
      <main className={css.start}>
        <div className={css.intro}>
          <p className={css.lead}>
            <WithTerms text={say.startLead} />
          </p>
          <h2>{say.measureTitle}</h2>
          <ol className={css.measure}>
            {say.measureFirst.map((text) => (
              <li key={text}>
                <span>
                  <WithTerms text={text} />
                </span>
              </li>
            ))}
          </ol>
          <p className={css.caution}>{say.cautions}</p>
        </div>
        <JobsList leading />
      </main>
    </div>
  </div>
);
