import { screenWords as say } from '../words/en/screens';
import { DemoList } from './DemoList';
import { KeptList } from './KeptList';
import { LookTools } from './LookTools';
import { Notices } from './Notices';
import { OpenButtons } from './OpenButtons';
import { WithTerms } from './parts/Term';
import sheet from './sheet.module.css';
import css from './start.module.css';

/** No job is open: what the program is for, what to measure first, demo jobs, and a way in. */
export const StartSheet = () => (
  <div className={sheet.sheet}>
    <div className={css.frame}>
      <main className={css.work}>
        <Notices />
        <div className={css.head}>
          <h1>Backboard</h1>
          <p className={css.lead}>
            <WithTerms text={say.startLead} />
          </p>
        </div>
        <section className={css.measure} aria-labelledby="measure-title">
          <h2 id="measure-title">{say.measureTitle}</h2>
          <ol>
            {say.measureFirst.map((text) => (
              <li key={text}>
                <span>
                  <WithTerms text={text} />
                </span>
              </li>
            ))}
          </ol>
          <p className={css.caution}>{say.cautions}</p>
        </section>
        <div className={css.demos}>
          <DemoList drawn />
        </div>
      </main>
      <aside className={css.side} aria-label={say.jobs}>
        <div className={css.open}>
          <OpenButtons leading />
        </div>
        <KeptList />
        <div className={css.screen}>
          <h2>{say.screenTitle}</h2>
          <LookTools />
        </div>
      </aside>
      <footer className={`${sheet.corner} ${css.corner}`}>
        <p>{say.aid}</p>
        <b aria-hidden="true">0</b>
      </footer>
    </div>
  </div>
);
