import { screenWords as say } from '../words/en/screens';
import { useHost, useJobState } from './session';
import css from './tools.module.css';

/** Whether the browser holds the job as it is now. */
export const Keeping = () => {
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
