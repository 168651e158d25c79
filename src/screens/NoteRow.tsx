import { type KeyNote, remedyCents } from '../drawings/keyNotes';
import { quotedSays } from '../words/en/questions';
import { screenWords as say } from '../words/en/screens';
import css from './column.module.css';
import { EffectMark } from './parts/EffectMark';
import { Figure } from './parts/Figure';
import { Measured } from './parts/Measured';
import { dollars } from './parts/money';
import parts from './parts/parts.module.css';
import { Standing } from './parts/Standing';
import { TermsOf } from './parts/Term';
import { figurePath } from './selected';
import { useActions, useJobState } from './session';

interface Props {
  readonly note: KeyNote;
  /** The plan's place in the result. */
  readonly at: number;
}

/** One keyed note. Selected, it shows each finding, what to look at, what would satisfy it, and stands out in the drawing. */
export const NoteRow = ({ note, at }: Props) => {
  const on = useJobState((s) => s.note === note.number);
  const { singleOut } = useActions();
  const [first] = note.findings;
  if (!first) return null;
  const many = note.findings.length > 1;
  const cents = remedyCents(note);
  const path = (i: number, key: string) => figurePath(at, `findings/${i}/${key}`);
  return (
    <li className={on ? css.noteOn : css.note}>
      <EffectMark effect={note.effect} number={note.number} />
      <div>
        <button
          type="button"
          className={css.noteHead}
          aria-expanded={on}
          onClick={() => singleOut({ note: on ? null : note.number })}
        >
          <span className={parts.hidden}>{say.effect[note.effect]}: </span>
          <Figure path={path(first.at, 'say')}>{first.finding.say}</Figure>
        </button>
        <small className={css.meta}>
          {many && <>{say.andMore({ count: note.findings.length - 1 })} · </>}
          {say.effect[note.effect]} · <Figure path={path(first.at, 'section')}>{note.section}</Figure>
          <Standing of={first.finding} />
        </small>
        {on && (
          <div className={css.detail}>
            <TermsOf text={note.findings.map(({ finding }) => finding.say).join(' ')} />
            {note.findings.map(({ at: i, finding }) => (
              <div key={i}>
                {many && (
                  <p>
                    <Figure path={path(i, 'say')}>{finding.say}</Figure>
                  </p>
                )}
                {(finding.measured !== null || finding.required !== null) && (
                  <p>
                    <Measured finding={finding} path={figurePath(at, `findings/${i}`)} />
                  </p>
                )}
                {finding.look !== null && <p className={css.look}>{say.look({ look: finding.look })}</p>}
                {finding.split !== null && <p>{say.split({ sides: finding.split })}</p>}
                {finding.amendment !== null && <p>{say.amended({ amendment: quotedSays(finding.amendment) })}</p>}
                {finding.remedies.map((remedy, k) => (
                  <p key={remedy.say} className={css.remedy}>
                    <Figure path={path(i, `remedies/${k}/say`)}>{remedy.say}</Figure>
                    {remedy.cents !== null && (
                      <b>
                        <Figure path={path(i, `remedies/${k}/cents`)}>{dollars(remedy.cents)}</Figure>
                      </b>
                    )}
                  </p>
                ))}
              </div>
            ))}
          </div>
        )}
      </div>
      {cents !== null && !on && <span className={css.amount}>{say.from({ price: dollars(cents) })}</span>}
    </li>
  );
};
