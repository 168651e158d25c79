import { useEffect } from 'react';
import { screenWords as say } from '../words/en/screens';
import css from './jobs.module.css';
import parts from './parts/parts.module.css';
import { useActions, useHost, useJobState } from './session';
import { useOpening } from './useOpening';

/** Jobs kept in this browser, the latest first. */
export const KeptList = ({ onOpened }: { readonly onOpened?: () => void }) => {
  const host = useHost();
  const kept = useJobState((s) => s.kept);
  const openKey = useJobState((s) => s.openKey);
  const { removeKept, refreshKept } = useActions();
  const { openOneKept } = useOpening(onOpened);
  useEffect(() => void refreshKept(), [refreshKept]);
  if (kept.length === 0) return null;
  return (
    <section aria-labelledby="kept-title">
      <h2 id="kept-title" className={css.title}>
        {say.keptTitle}
      </h2>
      <ul>
        {kept.map((entry) => (
          <li key={entry.key} className={css.keptRow}>
            <button type="button" className={css.row} onClick={() => void openOneKept(entry.key)}>
              <b>{entry.title || say.untitled}</b>
              <small>{say.keptAt({ day: entry.keptAt.slice(0, 10), time: host.timeOfDay(entry.keptAt) })}</small>
            </button>
            {entry.key === openKey ? (
              <span className={css.isOpen}>{say.isOpen}</span>
            ) : (
              <button type="button" className={css.remove} onClick={() => void removeKept(entry.key)}>
                {say.remove}
                <span className={parts.hidden}> {entry.title || say.untitled}</span>
              </button>
            )}
          </li>
        ))}
      </ul>
      <p className={css.quiet}>{say.keptNote}</p>
    </section>
  );
};
