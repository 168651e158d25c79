import { useEffect, useId, useState } from 'react';
import { jobsWords as words } from '../words/en/jobs';
import { screenWords as say } from '../words/en/screens';
import css from './jobs.module.css';
import parts from './parts/parts.module.css';
import { useActions, useHost, useJobState } from './session';

/** States of the open job to go back to; the one shown now is put by under a name. */
export const Versions = () => {
  const { timeOfDay } = useHost();
  const versions = useJobState((s) => s.versions);
  const failed = useJobState((s) => s.noVersions);
  const openKey = useJobState((s) => s.openKey);
  const { refreshVersions, nameVersion, restoreVersion } = useActions();
  const [name, setName] = useState('');
  const id = useId();
  const [shown, setShown] = useState(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another job has other versions
  useEffect(() => {
    if (shown) void refreshVersions();
  }, [shown, refreshVersions, openKey]);
  const putBy = (): void => {
    const given = name.trim();
    if (given === '') return;
    void nameVersion(given);
    setName('');
  };
  return (
    <details className={css.versions} onToggle={(e) => setShown(e.currentTarget.open)}>
      <summary>{words.versionsTitle}</summary>
      <p className={css.quiet}>{words.versionsSay}</p>
      {failed !== null && <p role="alert">{words.versionNot({ say: failed })}</p>}
      <div className={css.nameVersion}>
        <div className={parts.edit}>
          <label htmlFor={id}>{words.versionName}</label>
          <input
            id={id}
            type="text"
            autoComplete="off"
            maxLength={200}
            value={name}
            onChange={(e) => setName(e.target.value)}
            onKeyDown={(e) => {
              if (e.key === 'Enter') putBy();
            }}
          />
        </div>
        <button type="button" className={parts.button} disabled={name.trim() === ''} onClick={putBy}>
          {words.putBy}
        </button>
      </div>
      {versions.length === 0 ? (
        <p className={css.quiet}>{words.noVersions}</p>
      ) : (
        <ul>
          {versions.map(({ at, name: given }) => (
            <li key={at} className={css.version}>
              <span>
                <b>{given ?? say.keptAt({ day: at.slice(0, 10), time: timeOfDay(at) })}</b>
                <small>
                  {given === null ? words.ownVersion : say.keptAt({ day: at.slice(0, 10), time: timeOfDay(at) })}
                </small>
              </span>
              <button type="button" className={parts.button} onClick={() => void restoreVersion(at)}>
                {words.goBack}
                <span className={parts.hidden}> {given ?? at}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
    </details>
  );
};
