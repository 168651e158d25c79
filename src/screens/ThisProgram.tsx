import { useState } from 'react';
import { jobsWords as words } from '../words/en/jobs';
import { ErrorReport } from './ErrorReport';
import css from './jobs.module.css';
import { useRescue } from './session';

/** What the program is made of, and a report a person can save of what they find wrong. */
export const ThisProgram = () => {
  const rescue = useRescue();
  const [shown, setShown] = useState(false);
  return (
    <section className={css.screen} aria-labelledby="program-title">
      <h2 id="program-title" className={css.title}>
        {words.aboutTitle}
      </h2>
      <p>
        <a className={css.link} href="./licenses.txt" target="_blank" rel="noreferrer">
          {words.licenses}
        </a>
      </p>
      <details className={css.versions} onToggle={(e) => setShown(e.currentTarget.open)}>
        <summary>{words.report}</summary>
        {shown && (
          <ErrorReport bug={words.reportedByHand} where={null} open={rescue.open()} download={rescue.download} />
        )}
      </details>
    </section>
  );
};
