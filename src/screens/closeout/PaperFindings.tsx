import type { Effect, Plan } from '../../facts/result';
import { closeoutWords as say } from '../../words/en/closeout';
import { EffectMark } from '../parts/EffectMark';
import { Figure } from '../parts/Figure';
import { figurePath, useJob } from '../selected';
import { useJobState } from '../session';
import css from './paper.module.css';

const SHOWN: readonly (readonly [Effect, string])[] = [
  ['stops the job', say.stopsTitle],
  ['verify in field', say.verifyTitle],
  ['extra work', say.extraTitle],
];

/** What stops the job, what is to be verified, what is extra, what the price lacks; said once where rules repeat it. */
export const PaperFindings = ({ plan, at }: { readonly plan: Plan; readonly at: number }) => {
  const job = useJob();
  const result = useJobState((s) => s.answer?.result ?? null);
  return (
    <div className={css.findings}>
      {plan.tally.stops === 0 && <p className={css.clear}>{say.noConflict}</p>}
      {SHOWN.map(([effect, title]) => {
        const of = plan.findings
          .map((finding, i) => ({ finding, i }))
          .filter(({ finding }) => finding.effect === effect)
          .filter(({ finding }, k, all) => all.findIndex((other) => other.finding.say === finding.say) === k);
        if (of.length === 0) return null;
        return (
          <section key={effect}>
            <h3>
              <EffectMark effect={effect} size={15} /> {title}
            </h3>
            <ul>
              {of.map(({ finding, i }) => (
                <li key={i}>
                  <Figure path={figurePath(at, `findings/${i}/say`)}>{finding.say}</Figure>{' '}
                  <small>{finding.section}</small>
                </li>
              ))}
            </ul>
          </section>
        );
      })}
      {plan.price.missingSay.length > 0 && (
        <section>
          <h3>{say.missingTitle}</h3>
          <ul>
            {plan.price.missingSay.map((sentence, i) => (
              <li key={plan.price.missing[i]}>
                <Figure path={figurePath(at, `price/missingSay/${i}`)}>{sentence}</Figure>
              </li>
            ))}
          </ul>
        </section>
      )}
      {result && <p>{say.notChecked({ count: result.notCovered.length })}</p>}
      {job.priceBook === 'default' && <p>{say.invented}</p>}
    </div>
  );
};
