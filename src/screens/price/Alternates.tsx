import type { Plan } from '../../facts/result';
import type { Edit } from '../../job/edit';
import type { Job } from '../../job/schema';
import { priceWords as say } from '../../words/en/price';
import { Figure } from '../parts/Figure';
import { dollars } from '../parts/money';
import parts from '../parts/parts.module.css';
import { figurePath, useJob } from '../selected';
import { useActions } from '../session';
import css from './drivers.module.css';

type Alternate = Plan['price']['alternates'][number];

/** An alternate taken or left, as one step that undo names. */
const choose = (job: Job, { id, say: name }: Alternate, taken: boolean): Edit => {
  const known = job.alternates.some((a) => a.id === id);
  const value = known
    ? job.alternates.map((a) => (a.id === id ? { ...a, taken } : a))
    : [...job.alternates, { id, taken }];
  return {
    edit: 'set values',
    name: taken ? say.take({ name }) : say.leave({ name }),
    values: [{ path: '/alternates', value }],
  };
};

/** As the job has it now, before the planner has followed; what the job does not say is as planned. */
const isTaken = (job: Job, { id, required, taken }: Alternate): boolean =>
  required || (job.alternates.find((a) => a.id === id)?.taken ?? taken);

const saidOf = (plan: Plan, { required, rule }: Alternate, taken: boolean): string => {
  const section = plan.findings.find((f) => f.rule === rule)?.section ?? '';
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
                onChange={(e) => edit(choose(job, alternate, e.target.checked))}
              />
              <span>
                {alternate.say} <small>{saidOf(plan, alternate, isTaken(job, alternate))}</small>
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
