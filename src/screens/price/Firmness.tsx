import type { Plan } from '../../facts/result';
import { assumedWords as assumed } from '../../words/en/assumed';
import { priceWords as say } from '../../words/en/price';
import { Figure } from '../parts/Figure';
import { figurePath, useJob } from '../selected';
import css from './drivers.module.css';

/** What has no price, and how firm the rest is. */
export const Firmness = ({ plan, at }: { readonly plan: Plan; readonly at: number }) => {
  const job = useJob();
  const { price } = plan;
  const path = (key: string) => figurePath(at, `price/${key}`);
  return (
    <>
      {price.missing.length > 0 && (
        <section className={css.missing}>
          <h3>{say.missingTitle}</h3>
          <ul>
            {price.missingSay.map((sentence, i) => (
              <li key={price.missing[i]}>
                <Figure path={path(`missingSay/${i}`)}>{sentence}</Figure>
              </li>
            ))}
          </ul>
          <p className={css.note}>{say.missingNote}</p>
        </section>
      )}
      {price.assumed.length > 0 && (
        <section className={css.box}>
          <h3>{assumed.title}</h3>
          <ul className={css.assumed}>
            {price.assumed.map((one, i) => (
              <li key={`${one.id} ${one.say}`}>
                <Figure path={path(`assumed/${i}/say`)}>{one.say}</Figure>
              </li>
            ))}
          </ul>
          <p className={css.note}>{assumed.note}</p>
        </section>
      )}
      <section className={css.box}>
        <h3>{say.rangeTitle}</h3>
        <p className={css.share}>
          <span>{say.restsOn}</span>
          <b>
            <Figure path={path('unverifiedShare')}>{`${Math.round(price.unverifiedShare * 100)} %`}</Figure>
          </b>
        </p>
        {job.priceBook === 'default' && <p className={css.note}>{say.invented}</p>}
        {job.survey.grade === 'walk-through' && <p className={css.note}>{say.walkThrough}</p>}
        {!price.complete && <p className={css.note}>{say.open}</p>}
        <p className={css.note}>{say.rangeNote}</p>
      </section>
    </>
  );
};
