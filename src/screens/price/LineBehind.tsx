import type { Line, Plan } from '../../facts/result';
import { priceWords as say } from '../../words/en/price';
import { screenWords } from '../../words/en/screens';
import { Field } from '../parts/Field';
import { Figure } from '../parts/Figure';
import { dollars } from '../parts/money';
import { homeRunTag } from '../parts/names';
import { figurePath, useJob } from '../selected';
import { useActions, useJobState } from '../session';
import css from './lines.module.css';
import { isCable } from './linesInOrder';

interface Props {
  readonly plan: Plan;
  readonly at: number;
  readonly line: Line;
}

/** What is behind the line that was picked: the home runs it is for, and the rule that asks for it. */
export const LineBehind = ({ plan, at, line }: Props) => {
  const job = useJob();
  const singled = useJobState((s) => s.homeRun);
  const { singleOut } = useActions();
  const path = figurePath(at, `price/lines/${plan.price.lines.indexOf(line)}`);
  const asked = plan.findings.find((f) => f.rule === line.rule);
  return (
    <section className={css.behind} aria-label={say.lineTitle}>
      <h2>
        {line.say} <small>{say.kinds[line.kind]}</small>
      </h2>
      <Field label={say.quantity}>
        <Figure path={`${path}/quantity`}>{String(Math.round(line.quantity * 100) / 100)}</Figure>{' '}
        <small>{line.unit}</small>
      </Field>
      {line.kind !== 'overhead' && line.kind !== 'profit' && line.kind !== 'tax' && (
        <Field label={say.eachFor(line)}>
          <Figure path={`${path}/dollarsEach`}>{String(Math.round(line.dollarsEach * 100) / 100)}</Figure>
        </Field>
      )}
      <Field label={say.likely}>
        <Figure path={`${path}/likelyCents`}>{dollars(line.likelyCents)}</Figure>
      </Field>
      {isCable(line) && <p>{say.usedNote}</p>}
      {asked && (
        <p>
          <b>{say.becauseTitle}.</b> {say.because({ section: screenWords.cited(asked), say: asked.say })}
        </p>
      )}
      <p className={css.count}>
        {line.homeRuns.length === 0 ? say.behindWhole : say.behind({ count: line.homeRuns.length })}
      </p>
      <ul className={css.runs}>
        {line.homeRuns.map((id) => {
          const run = plan.runs.find((r) => r.homeRun === id);
          const circuits = job.homeRuns.find((h) => h.id === id)?.circuits ?? [];
          const serves = job.circuits.filter((c) => circuits.includes(c.id)).map((c) => c.label);
          return (
            <li key={id}>
              <button
                type="button"
                aria-pressed={singled === id}
                onClick={() => singleOut({ homeRun: singled === id ? null : id })}
              >
                <b>{homeRunTag(job, id)}</b> {serves.join(' · ')} <small>{run?.way}</small>
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
};
