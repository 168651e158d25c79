import { type KeyNote, keyNotes } from '../../drawings/keyNotes';
import type { Plan } from '../../facts/result';
import { assumedWords as assumed } from '../../words/en/assumed';
import { closeoutWords as say } from '../../words/en/closeout';
import { Cautions } from '../parts/Cautions';
import { EffectMark } from '../parts/EffectMark';
import { Figure } from '../parts/Figure';
import { Standing } from '../parts/Standing';
import { figurePath, useJob } from '../selected';
import { useJobState } from '../session';
import { othersOf, SHOWN } from './noteTexts';
import css from './paper.module.css';

/** What stops the job, what is extra, what is to be verified, under the numbers of the drawing; what the price lacks. */
export const PaperFindings = ({ plan, at }: { readonly plan: Plan; readonly at: number }) => {
  const job = useJob();
  const result = useJobState((s) => s.answer?.result ?? null);
  const notes = keyNotes(plan.findings);
  return (
    <div className={css.findings}>
      {plan.tally.stops === 0 && <p className={css.clear}>{say.noConflict}</p>}
      {SHOWN.map(([effect, title]) => {
        const of = notes.filter((note) => note.effect === effect);
        if (of.length === 0) return null;
        return (
          <section key={effect}>
            <h3>{title}</h3>
            <ul>
              {of.map((note) => (
                <NoteLine key={note.number} note={note} at={at} />
              ))}
            </ul>
          </section>
        );
      })}
      <Cautions at="owner" />
      {plan.price.missingSay.length > 0 && (
        <section>
          <h3>{say.missingTitle}</h3>
          <ul>
            {plan.price.missingSay.map((sentence, i) => (
              <li key={plan.price.missing[i]}>
                <span />
                <Figure path={figurePath(at, `price/missingSay/${i}`)}>{sentence}</Figure>
              </li>
            ))}
          </ul>
        </section>
      )}
      {plan.price.assumed.length > 0 && (
        <section>
          <h3>{assumed.title}</h3>
          <ul>
            {plan.price.assumed.map((one, i) => (
              <li key={`${one.id} ${one.say}`}>
                <span />
                <Figure path={figurePath(at, `price/assumed/${i}/say`)}>{one.say}</Figure>
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

/** One keyed note: its first finding in full, the others by what they are about. */
const NoteLine = ({ note, at }: { readonly note: KeyNote; readonly at: number }) => {
  const job = useJob();
  const [first] = note.findings;
  if (!first) return null;
  const names = othersOf(job, note);
  return (
    <li>
      <EffectMark effect={note.effect} number={note.number} size={22} />
      <span>
        <Figure path={figurePath(at, `findings/${first.at}/say`)}>{first.finding.say}</Figure>{' '}
        <small>
          {note.section}
          <Standing of={first.finding} />
        </small>
        {names !== '' && <small> {say.also({ names })}</small>}
      </span>
    </li>
  );
};
