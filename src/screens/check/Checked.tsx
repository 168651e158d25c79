import type { Plan, Proof } from '../../facts/result';
import { screenWords as say } from '../../words/en/screens';
import { Figure } from '../parts/Figure';
import { Standing } from '../parts/Standing';
import css from '../parts/table.module.css';
import { figurePath } from '../selected';
import { useJobState } from '../session';

const proofSays = (proof: Proof): string => (proof.best ? say.proofBest : say.proofAbove({ share: proof.atMostAbove }));

/** What was checked and holds, what could not be told for want of a measure, and what no rule looked at. */
export const Checked = ({ plan, at }: { readonly plan: Plan; readonly at: number }) => {
  const result = useJobState((s) => s.answer?.result ?? null);
  const holds = plan.findings.map((finding, i) => ({ finding, i })).filter(({ finding }) => finding.effect === null);
  return (
    <div className={css.columns}>
      <section>
        <h3>{say.notCheckedTitle}</h3>
        {result ? (
          <ul>
            {result.notCovered.map((entry, i) => (
              <li key={entry.rule}>
                <b>{entry.rule}</b> <Figure path={`notCovered/${i}/why`}>{entry.why}</Figure>
              </li>
            ))}
          </ul>
        ) : (
          <p>{say.notPlannedYet}</p>
        )}
      </section>
      <section>
        <h3>{say.unknownTitle}</h3>
        {result?.unknown.length === 0 && <p>{say.nothingUnknown}</p>}
        <ul>
          {result?.unknown.map((entry, i) => (
            <li key={entry.path}>
              <Figure path={`unknown/${i}/say`}>{entry.say}</Figure>{' '}
              <small>{say.blocks({ what: entry.blocks.join(', ') })}</small>
            </li>
          ))}
        </ul>
        <h3>{say.proofTitle}</h3>
        <p>{say.proofOf.splices({ proof: proofSays(plan.proof.splices) })}</p>
        <p>{say.proofOf.rows({ proof: proofSays(plan.proof.rows) })}</p>
      </section>
      <section>
        <h3>{say.holdsTitle({ count: holds.length })}</h3>
        <ul>
          {holds.map(({ finding, i }) => (
            <li key={`${finding.rule} ${finding.subject}`}>
              <b>{finding.rule}</b> <Figure path={figurePath(at, `findings/${i}/say`)}>{finding.say}</Figure>{' '}
              <small>
                {finding.section}
                <Standing of={finding} />
              </small>
            </li>
          ))}
        </ul>
      </section>
    </div>
  );
};
