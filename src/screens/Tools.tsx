import { useRef, useState } from 'react';
import { screenWords as say } from '../words/en/screens';
import { fileNameOf } from './fileName';
import { JobsDialog } from './JobsDialog';
import { useActions, useHost, useJobState } from './session';
import css from './tools.module.css';

const Keeping = () => {
  const keeping = useJobState((s) => s.keeping);
  const { timeOfDay } = useHost();
  const text = {
    none: () => '',
    waiting: () => say.keeping,
    kept: () => (keeping.phase === 'kept' ? say.kept({ time: timeOfDay(keeping.at) }) : ''),
    failed: () => say.notKept,
  }[keeping.phase]();
  return (
    <span role="status" className={css.status}>
      {text}
    </span>
  );
};

const LookTools = () => {
  const host = useHost();
  const [look, setLook] = useState(host.look);
  const change = (next: Parameters<typeof host.setLook>[0]): void => {
    host.setLook(next);
    setLook(host.look());
  };
  const { theme, hand } = look;
  return (
    <>
      <button type="button" className={css.tool} onClick={() => change({ theme: theme === 'dark' ? 'light' : 'dark' })}>
        {theme === 'dark' ? say.toLight : say.toDark}
      </button>
      <button type="button" className={css.tool} onClick={() => change({ hand: hand === 'field' ? 'desk' : 'field' })}>
        {hand === 'field' ? say.toDesk : say.toField}
      </button>
    </>
  );
};

/** Jobs, saving, undo and redo by name, and how the sheet looks. */
export const Tools = () => {
  const history = useJobState((s) => s.history);
  const { undo, redo, fileText, refreshKept } = useActions();
  const host = useHost();
  const dialog = useRef<HTMLDialogElement>(null);
  const back = history?.past.at(-1)?.name;
  const again = history?.future.at(-1)?.name;
  const openJobs = (): void => {
    void refreshKept();
    dialog.current?.showModal();
  };
  const save = (): void => {
    const text = fileText();
    if (text !== null && history) host.download(fileNameOf(history.now), text);
  };
  return (
    <header className={css.tools}>
      <h1 className={css.name}>Backboard</h1>
      <button type="button" className={css.tool} onClick={openJobs}>
        {say.jobs}
      </button>
      {history && (
        <>
          <button type="button" className={css.tool} onClick={save}>
            {say.saveFile}
          </button>
          <Keeping />
          <span className={css.space} />
          <button type="button" className={css.tool} disabled={back === undefined} onClick={undo}>
            {say.undo} {back !== undefined && <b>{back}</b>}
          </button>
          <button type="button" className={css.tool} disabled={again === undefined} onClick={redo}>
            {say.redo} {again !== undefined && <b>{again}</b>}
          </button>
        </>
      )}
      {!history && <span className={css.space} />}
      <LookTools />
      <JobsDialog ref={dialog} />
    </header>
  );
};
