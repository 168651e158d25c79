import { useState } from 'react';
import { screenWords as say } from '../words/en/screens';
import type { Rescue } from './Crash';
import css from './crash.module.css';
import { errorReport } from './errorReport';
import parts from './parts/parts.module.css';

interface Props {
  readonly bug: unknown;
  readonly where: string | null;
  readonly open: ReturnType<Rescue['open']>;
  readonly download: Rescue['download'];
}

/** An error report as a file: what is in it can be read first; the job goes along only if ticked. */
export const ErrorReport = ({ bug, where, open, download }: Props) => {
  const [withJob, setWithJob] = useState(false);
  const trouble = { bug, where, address: location.hash, browser: navigator.userAgent, steps: open?.steps ?? [] };
  const text = errorReport({ ...trouble, job: withJob ? (open?.job ?? null) : null });
  return (
    <section className={css.report}>
      <h3>{say.crashReport}</h3>
      <p>{say.crashReportSay}</p>
      {open && (
        <label className={parts.check}>
          <input type="checkbox" checked={withJob} onChange={(e) => setWithJob(e.target.checked)} />
          {say.crashWithJob}
        </label>
      )}
      <button type="button" className={parts.button} onClick={() => download('error-report.json', text)}>
        {say.crashSaveReport}
      </button>
      <details>
        <summary>{say.crashRead}</summary>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: the text scrolls, and a keyboard must reach it */}
        <pre tabIndex={0}>{errorReport({ ...trouble, job: null })}</pre>
      </details>
    </section>
  );
};
