import { useEffect, useState } from 'react';
import { openJob } from '../job/parse';
import type { Job } from '../job/schema';
import { PlanFromAfar } from './drawing/SmallPlan';
import css from './jobs.module.css';
import { useHost } from './session';

/** The room of a demo job as its survey has it; empty paper until it is read. */
export const DemoPlan = ({ name }: { readonly name: string }) => {
  const { demoText } = useHost();
  const [job, setJob] = useState<Job | null>(null);
  useEffect(() => {
    let wanted = true;
    demoText(name)
      .then((text) => {
        const opened = openJob(text);
        if (wanted && opened.ok) setJob(opened.value.job);
      })
      .catch(() => {}); // without its picture a demo is still offered, and opening it says what is wrong
    return () => {
      wanted = false;
    };
  }, [demoText, name]);
  const option = job?.options[0];
  return (
    <span className={css.thumb} aria-hidden="true">
      {job && option && <PlanFromAfar job={job} option={option} plan={null} size={{ width: 190, height: 104 }} />}
    </span>
  );
};
