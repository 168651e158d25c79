import { useEffect, useRef } from 'react';
import { screenWords as say } from '../words/en/screens';
import css from './jobs.module.css';
import parts from './parts/parts.module.css';
import { useActions, useHost, useJobState } from './session';
import { goToSheet } from './sheetHash';

interface Props {
  /** The one black button of the sheet: opening a file, where nothing else is the next thing. */
  readonly leading: boolean;
  readonly onOpened?: (() => void) | undefined;
}

/** Open a file, a demo, or a job kept in this browser. */
export const JobsList = ({ leading, onOpened }: Props) => {
  const host = useHost();
  const kept = useJobState((s) => s.kept);
  const openKey = useJobState((s) => s.openKey);
  const { openText, openKept, removeKept, refreshKept } = useActions();
  const file = useRef<HTMLInputElement>(null);
  useEffect(() => void refreshKept(), [refreshKept]);

  const opened = (good: boolean): void => {
    void refreshKept();
    if (good) onOpened?.();
  };
  const startNew = async (): Promise<void> => {
    const good = await openText(host.newJobText(), say.newJob);
    if (good) goToSheet('survey');
    opened(good);
  };
  const openFile = async (chosen: File | undefined): Promise<void> => {
    if (chosen) opened(await openText(await chosen.text(), chosen.name));
    if (file.current) file.current.value = '';
  };
  return (
    <div className={css.lists}>
      <section className={css.buttons}>
        <button type="button" className={parts.button} onClick={startNew}>
          {say.newJob}
        </button>
        <button type="button" className={leading ? parts.go : parts.button} onClick={() => file.current?.click()}>
          {say.openFile}
        </button>
        <input
          ref={file}
          type="file"
          accept=".json,application/json"
          hidden
          aria-label={say.openFile}
          onChange={(e) => void openFile(e.target.files?.[0])}
        />
      </section>
      <section>
        <h2 className={css.title}>{say.demosTitle}</h2>
        <ul>
          {host.demos.map((demo) => (
            <li key={demo.name}>
              <button
                type="button"
                className={css.row}
                onClick={async () => opened(await openText(await host.demoText(demo.name), demo.title))}
              >
                <b>{demo.title}</b>
                <small>{demo.about}</small>
              </button>
            </li>
          ))}
        </ul>
      </section>
      {kept.length > 0 && (
        <section>
          <h2 className={css.title}>{say.keptTitle}</h2>
          <ul>
            {kept.map((entry) => (
              <li key={entry.key} className={css.keptRow}>
                <button type="button" className={css.row} onClick={async () => opened(await openKept(entry.key))}>
                  <b>{entry.title || entry.job}</b>
                  <small>{say.keptAt({ day: entry.keptAt.slice(0, 10), time: host.timeOfDay(entry.keptAt) })}</small>
                </button>
                {entry.key === openKey ? (
                  <span className={css.isOpen}>{say.isOpen}</span>
                ) : (
                  <button type="button" className={css.remove} onClick={() => void removeKept(entry.key)}>
                    {say.remove}
                    <span className={parts.hidden}> {entry.title || entry.job}</span>
                  </button>
                )}
              </li>
            ))}
          </ul>
          <p className={css.quiet}>{say.keptNote}</p>
        </section>
      )}
    </div>
  );
};
