import type { Plan } from '../../facts/result';
import type { Terms } from '../../job/schema';
import { pricePartWords as say } from '../../words/en/price';
import { Figure } from '../parts/Figure';
import { dollars } from '../parts/money';
import parts from '../parts/parts.module.css';
import { AfterNotes } from '../SheetFrame';
import { figurePath, useJob, useSelected } from '../selected';
import { useActions } from '../session';
import beside from './beside.module.css';
import { Drivers } from './Drivers';
import css from './drivers.module.css';
import { Firmness } from './Firmness';
import lines from './lines.module.css';
import { RangePicture } from './RangePicture';

const OFFERS: readonly Terms['quote'][] = ['fixed', 'range', 'time and material'];

/** What drives low and high apart, how the price may come out, how it is offered and what is not in it. */
export const RangePart = () => {
  const selected = useSelected();
  const plan = selected?.plan;
  if (!selected || !plan) return <p className={parts.empty}>{say.notPlanned}</p>;
  const { at } = selected;
  return (
    <AfterNotes label={say.parts.range}>
      <div className={lines.pair}>
        <div>
          <RangePicture plan={plan} at={at} />
          <Drivers plan={plan} at={at} />
          <Forgetting plan={plan} at={at} />
        </div>
        <div>
          <Offered plan={plan} at={at} />
          <Risks plan={plan} at={at} />
          <Firmness plan={plan} at={at} />
        </div>
      </div>
    </AfterNotes>
  );
};

interface Props {
  readonly plan: Plan;
  readonly at: number;
}

const Offered = ({ plan, at }: Props) => {
  const job = useJob();
  const { edit } = useActions();
  const { quote } = plan.price;
  const path = (key: string) => figurePath(at, `price/quote/${key}`);
  return (
    <section className={css.box}>
      <h3>{say.offeredTitle}</h3>
      <fieldset className={beside.choices}>
        <legend className={parts.hidden}>{say.offeredTitle}</legend>
        {OFFERS.map((as) => (
          <label key={as} className={parts.check}>
            <input
              type="radio"
              name="quote"
              checked={job.terms.quote === as}
              onChange={() =>
                edit({
                  edit: 'set values',
                  name: say.offerEdit({ as: say.offered[as].toLowerCase() }),
                  values: [{ path: '/terms/quote', value: as }],
                })
              }
            />
            {say.offered[as]}
          </label>
        ))}
      </fieldset>
      <p className={css.note}>
        <Figure path={path('say')}>{quote.say}</Figure>
      </p>
      {quote.fixedCents !== null && (
        <p className={css.share}>
          <span>{say.fixedSum}</span>
          <b>
            <Figure path={path('fixedCents')}>{dollars(quote.fixedCents)}</Figure>
          </b>
        </p>
      )}
      {quote.as === 'time and material' && (
        <>
          <p className={css.share}>
            <span>{say.hourly}</span>
            <b>
              <Figure path={path('hourCents')}>{dollars(quote.hourCents)}</Figure>
            </b>
          </p>
          <p className={css.share}>
            <span>{say.materialOver}</span>
            <b>
              <Figure path={path('materialShare')}>{`${Math.round(quote.materialShare * 100)} %`}</Figure>
            </b>
          </p>
        </>
      )}
    </section>
  );
};

const Risks = ({ plan, at }: Props) => (
  <section className={css.box}>
    <h3>{say.risksTitle}</h3>
    <p className={css.note}>{plan.price.unitChanges.length === 0 ? say.noRisks : say.risksNote}</p>
    <ul>
      {plan.price.unitChanges.map((change, i) => (
        <li key={change.id} className={beside.risk}>
          <span>{change.say}</span>
          <small>{say.each(change)}</small>
          <b>
            <Figure path={figurePath(at, `price/unitChanges/${i}/cents`)}>{dollars(change.cents)}</Figure>
          </b>
        </li>
      ))}
    </ul>
  </section>
);

const Forgetting = ({ plan, at }: Props) => {
  const { circuits, cents } = plan.price.forgettingAfci;
  return (
    <section className={css.box}>
      <h3>{say.forgettingTitle}</h3>
      <p className={css.share}>
        <span>{say.forgetting({ count: circuits })}</span>
        {circuits > 0 && (
          <b>
            <Figure path={figurePath(at, 'price/forgettingAfci/cents')}>{dollars(cents)}</Figure>
          </b>
        )}
      </p>
    </section>
  );
};
