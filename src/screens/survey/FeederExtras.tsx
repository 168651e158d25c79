import { courseLength } from '../../drawings/courses';
import { feederWords as say } from '../../words/en/feeder';
import { FeederWay } from '../parts/FeederWay';
import { lengthText } from '../parts/lengthParts';
import { useJob, useOptions } from '../selected';
import fields from './fields/fields.module.css';
import css from './survey.module.css';

/** How the feeder is measured, and what each option planned makes of it. */
export const FeederExtras = () => {
  const { feeder } = useJob();
  const planned = useOptions().flatMap(({ option, at, plan }) => (plan ? [{ option, at, plan }] : []));
  return (
    <>
      <p className={css.say}>{say.howTo}</p>
      {feeder.path.length > 1 && (
        <p className={css.say}>
          {say.inRoom} <b>{lengthText(courseLength(feeder.path))}</b>
        </p>
      )}
      {planned.length > 0 && <h3 className={fields.head}>{say.options}</h3>}
      {planned.map(({ option, at, plan }) => (
        <p key={option.id} className={css.say}>
          {option.title}: <FeederWay plan={plan} at={at} />
        </p>
      ))}
    </>
  );
};
