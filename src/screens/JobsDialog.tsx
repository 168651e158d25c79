import type { RefObject } from 'react';
import { screenWords as say } from '../words/en/screens';
import { JobsList } from './JobsList';
import css from './jobs.module.css';
import parts from './parts/parts.module.css';

/** The jobs, over whatever sheet is open. */
export const JobsDialog = ({ ref }: { readonly ref: RefObject<HTMLDialogElement | null> }) => {
  const close = (): void => ref.current?.close();
  return (
    <dialog ref={ref} className={css.dialog} aria-labelledby="jobs-title">
      <div className={css.dialogHead}>
        <h2 id="jobs-title">{say.jobs}</h2>
        <button type="button" className={parts.button} onClick={close}>
          {say.close}
        </button>
      </div>
      <JobsList leading={false} onOpened={close} />
    </dialog>
  );
};
