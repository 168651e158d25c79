import { useRef } from 'react';
import { screenWords as say } from '../words/en/screens';
import { JobsDialog } from './JobsDialog';
import { Keeping } from './Keeping';
import { PlanningBar } from './PlanningBar';
import parts from './parts/parts.module.css';
import { SlotPlace } from './Slots';
import { useActions, useJobState } from './session';
import css from './tools.module.css';
import { useUndoKeys } from './useUndoKeys';

/** The way to all jobs; where there is room for it, which one is open and when it was kept. */
const JobsTool = () => {
  const { refreshKept } = useActions();
  const dialog = useRef<HTMLDialogElement>(null);
  const open = (): void => {
    void refreshKept();
    dialog.current?.showModal();
  };
  return (
    <>
      <button type="button" className={css.jobs} onClick={open}>
        {say.jobs}
      </button>
      <PlanningBar />
      <Keeping />
      <JobsDialog ref={dialog} />
    </>
  );
};

const Undo = () => {
  const history = useJobState((s) => s.history);
  const { undo, redo } = useActions();
  const back = history?.past.at(-1)?.name;
  const again = history?.future.at(-1)?.name;
  useUndoKeys(undo, redo);
  return (
    <span className={css.undo}>
      <button type="button" className={parts.tool} disabled={back === undefined} onClick={undo}>
        {say.undo} {back !== undefined && <b title={back}>{back}</b>}
      </button>
      <button type="button" className={parts.tool} disabled={again === undefined} onClick={redo}>
        {say.redo} {again !== undefined && <b title={again}>{again}</b>}
      </button>
    </span>
  );
};

/** The tool row: jobs, the sheet's own tools, undo and redo by name, how the sheet is looked at. */
export const Tools = () => (
  <header className={css.tools}>
    <h1 className={parts.hidden}>Backboard</h1>
    <JobsTool />
    <SlotPlace of="tools" />
    <span className={css.space} />
    <Undo />
    <SlotPlace of="views" />
  </header>
);
