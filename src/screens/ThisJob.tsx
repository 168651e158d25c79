import { useId, useState } from 'react';
import { screenWords as say } from '../words/en/screens';
import { fileNameOf } from './fileName';
import css from './jobs.module.css';
import parts from './parts/parts.module.css';
import { useJob } from './selected';
import { useActions, useHost } from './session';

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
  const save = (): void => {
    const text = fileText();
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
      <button type="button" className={parts.button} onClick={save}>
        {say.saveFile}
      </button>
    </section>
  );
};
