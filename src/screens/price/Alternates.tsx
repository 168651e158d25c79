import type { Plan } from '../../facts/result';
import { pricePartWords, priceWords as say } from '../../words/en/price';
import { screenWords } from '../../words/en/screens';
import { Figure } from '../parts/Figure';
import { dollars } from '../parts/money';
import parts from '../parts/parts.module.css';
import { figurePath, useJob } from '../selected';
import { useActions } from '../session';
import css from './drivers.module.css';
import { choose, isTaken } from './takeAlternates';

type Alternate = Plan['price']['alternates'][number];

const saidOf = (plan: Plan, { required, rule }: Alternate, taken: boolean): string => {
  const asked = plan.findings.find((f) => f.rule === rule);
  const section = asked ? screenWords.cited(asked) : '';
  if (required) return say.required({ section });
  if (rule !== null)
    return say.ifAsked({ circuits: plan.afci.filter((a) => a.required === 'inspector decides').length });
  return taken ? say.mayDecline : say.mayTake;
};

/** What may be taken or left, with what it adds; a required one is locked and says by which section. */
export const Alternates = ({ plan, at }: { readonly plan: Plan; readonly at: number }) => {
  const job = useJob();
  const { edit } = useActions();
  if (plan.price.alternates.length === 0) return null;
  return (
    <section className={css.box}>
      <h3>{say.alternatesTitle}</h3>
      <ul>
        {plan.price.alternates.map((alternate, i) => (
          <li key={alternate.id} className={css.alternate}>
            <label className={`${parts.check} ${alternate.required ? css.locked : ''}`}>
              <input
                type="checkbox"
                checked={isTaken(job, alternate)}
                disabled={alternate.required}
                onChange={({ target: { checked } }) =>
                  edit(choose(job, alternate.id, checked, (checked ? say.take : say.leave)({ name: alternate.say })))
                }
              />
              <span>
                {alternate.say} <small>{saidOf(plan, alternate, isTaken(job, alternate))}</small>
                {alternate.spaces !== 0 && <small> · {pricePartWords.spaces(alternate)}</small>}
                {alternate.hours !== 0 && !alternate.required && <small> · {pricePartWords.hours(alternate)}</small>}
              </span>
            </label>
            {alternate.required ? (
              <small>{say.inPrice}</small>
            ) : (
              <b>
                <Figure path={figurePath(at, `price/alternates/${i}/cents`)}>{dollars(alternate.cents)}</Figure>
              </b>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
};
