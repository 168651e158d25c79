import { useId, useState } from 'react';
import { jobsWords as words } from '../words/en/jobs';
import { screenWords as say } from '../words/en/screens';
import { fileNameOf } from './fileName';
import css from './jobs.module.css';
import parts from './parts/parts.module.css';
import { useJob } from './selected';
import { useActions, useHost } from './session';
import { Versions } from './Versions';

/** The open job: its title, and the file it is saved to for good. */
export const ThisJob = () => {
  const job = useJob();
  const { edit, fileText } = useActions();
  const { download } = useHost();
  const [typed, setTyped] = useState<string | null>(null);
  const id = useId();
  const rename = (): void => {
    if (typed !== null && typed !== job.title) edit({ edit: 'rename', option: null, title: typed });
    setTyped(null);
  };
  const save = (photos: boolean): void => {
    const text = fileText(photos);
    if (text !== null) download(fileNameOf(job), text);
  };
  return (
    <section className={css.thisJob}>
      <div className={parts.edit}>
        <label htmlFor={id}>{say.jobTitle}</label>
        <input
          id={id}
          type="text"
          autoComplete="off"
          maxLength={4000}
          value={typed ?? job.title}
          onChange={(e) => setTyped(e.target.value)}
          onBlur={rename}
          onKeyDown={(e) => {
            if (e.key === 'Enter') rename();
          }}
        />
      </div>
      <div className={css.buttons}>
        <button type="button" className={parts.button} onClick={() => save(true)}>
          {say.saveFile}
        </button>
        {job.photos.some((p) => p.data !== null) && (
          <button type="button" className={parts.button} onClick={() => save(false)}>
            {words.withoutPhotos}
          </button>
        )}
      </div>
      <Versions />
    </section>
  );
};
