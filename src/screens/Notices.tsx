import { useEffect, useState } from 'react';
import { jobsWords as words } from '../words/en/jobs';
import { screenWords as say } from '../words/en/screens';
import { ErrorReport } from './ErrorReport';
import parts from './parts/parts.module.css';
import { useActions, useHost, useJobState, useRescue } from './session';
import css from './strip.module.css';

const Update = () => {
  const { onUpdate } = useHost();
  const [load, setLoad] = useState<(() => void) | null>(null);
  useEffect(() => onUpdate((ready) => setLoad(() => ready)), [onUpdate]);
  if (!load) return null;
  return (
    <div className={css.notice} role="status">
      <p>{say.updateReady}</p>
      <button type="button" className={parts.button} onClick={load}>
        {say.loadUpdate}
      </button>
    </div>
  );
};

/** What went wrong or was changed, said where it is seen, with what to do. Nothing lies over the drawing. */
export const Notices = () => {
  const refusal = useJobState((s) => s.refusal);
  const repairs = useJobState((s) => s.repairs);
  const parted = useJobState((s) => s.parted);
  const elsewhere = useJobState((s) => s.elsewhere);
  const cleared = useJobState((s) => s.cleared);
  const planning = useJobState((s) => s.planning);
  const keeping = useJobState((s) => s.keeping);
  const open = useJobState((s) => s.history !== null);
  const rescue = useRescue();
  const { dismiss, planAgain, keepNow } = useActions();
  const done = (
    <button type="button" className={parts.button} onClick={dismiss}>
      {say.dismiss}
    </button>
  );
  return (
    <div className={css.notices}>
      {refusal && (
        <div className={css.notice} role="alert">
          <div>
            <p>
              <b>
                {refusal.doing === 'opening'
                  ? say.notOpened({ name: refusal.what })
                  : say.notDone({ edit: refusal.what })}
              </b>{' '}
              {refusal.fault.error.say}
            </p>
            <p className={css.place}>
              {refusal.fault.error.path !== '' && (
                <>
                  {say.faultAt} <code>{refusal.fault.error.path}</code> ·{' '}
                </>
              )}
              {open ? say.jobKeptOpen : say.nothingChanged}
            </p>
          </div>
          {done}
        </div>
      )}
      {planning.phase === 'failed' && (
        <div className={css.notice} role="alert">
          <div>
            <p>
              <b>{say.planningFailed}</b> {say.planningFailedDetail({ detail: planning.say })}
            </p>
            <details>
              <summary>{say.crashReport}</summary>
              <ErrorReport bug={planning.say} where={null} open={rescue.open()} download={rescue.download} />
            </details>
          </div>
          <button type="button" className={parts.button} onClick={planAgain}>
            {say.planAgain}
          </button>
        </div>
      )}
      {keeping.phase === 'failed' && (
        <div className={css.notice} role="alert">
          <p>
            <b>{words.failed[keeping.why]}</b> ({keeping.say})
          </p>
          {open && (
            <button type="button" className={parts.go} onClick={rescue.save}>
              {say.saveFile}
            </button>
          )}
          <button type="button" className={parts.button} onClick={() => void keepNow()}>
            {say.keepAgain}
          </button>
        </div>
      )}
      {cleared && (
        <div className={css.notice} role="alert">
          <p>{words.cleared}</p>
          <button type="button" className={parts.go} onClick={rescue.save}>
            {say.saveFile}
          </button>
          {done}
        </div>
      )}
      {elsewhere && (
        <div className={css.notice} role="status">
          <p>{words.elsewhere}</p>
        </div>
      )}
      {parted && (
        <div className={css.notice} role="status">
          <p>{say.parted}</p>
          {done}
        </div>
      )}
      {repairs.length > 0 && (
        <div className={css.notice} role="status">
          <div>
            <p>
              <b>{say.repaired({ count: repairs.length })}</b>
            </p>
            <ul className={css.repairs}>
              {repairs.map((text) => (
                <li key={text}>{text}</li>
              ))}
            </ul>
          </div>
          {done}
        </div>
      )}
      <Update />
    </div>
  );
};
