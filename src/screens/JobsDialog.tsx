import type { RefObject } from 'react';
import { screenWords as say } from '../words/en/screens';
import { DemoList } from './DemoList';
import css from './jobs.module.css';
import { KeptList } from './KeptList';
import { LookTools } from './LookTools';
import { OpenButtons } from './OpenButtons';
import parts from './parts/parts.module.css';
import { ThisJob } from './ThisJob';
import { ThisProgram } from './ThisProgram';

/** The open job, the others, and how the screen looks, over whatever sheet is open. */
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
      <ThisJob />
      <div className={css.lists}>
        <div className={css.buttons}>
          <OpenButtons leading={false} onOpened={close} />
        </div>
        <KeptList onOpened={close} />
        <DemoList drawn={false} onOpened={close} />
      </div>
      <section className={css.screen}>
        <h2 className={css.title}>{say.screenTitle}</h2>
        <div className={css.buttons}>
          <LookTools />
        </div>
      </section>
      <ThisProgram />
    </dialog>
  );
};
