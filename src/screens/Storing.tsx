import { useEffect, useState } from 'react';
import { jobsWords as words } from '../words/en/jobs';
import type { KeptHow } from './host';
import css from './jobs.module.css';
import { useHost } from './session';

/** Whether the browser promised to keep jobs, and how much room they take. */
export const Storing = () => {
  const { keptHow } = useHost();
  const [how, setHow] = useState<KeptHow | null>(null);
  useEffect(() => {
    let here = true;
    void keptHow().then((answer) => {
      if (here) setHow(answer);
    });
    return () => {
      here = false;
    };
  }, [keptHow]);
  if (!how) return null;
  const { promised, usedBytes, ofBytes } = how;
  return (
    <p className={css.quiet}>
      {promised === null ? words.cannotPromise : promised ? words.promised : words.notPromised}
      {usedBytes !== null && ofBytes !== null && ` ${words.used({ used: usedBytes, of: ofBytes })}`}
    </p>
  );
};
