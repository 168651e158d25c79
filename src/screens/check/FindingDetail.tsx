import type { KeyNote } from '../../drawings/keyNotes';
import { RULE_IDS } from '../../standards/sections';
import { checkWords as say } from '../../words/en/check';
import { quotedSays } from '../../words/en/questions';
import { screenWords } from '../../words/en/screens';
import { EffectMark } from '../parts/EffectMark';
import { Figure } from '../parts/Figure';
import { Measured } from '../parts/Measured';
import { dollars } from '../parts/money';
import { thingName } from '../parts/names';
import parts from '../parts/parts.module.css';
import { Standing } from '../parts/Standing';
import { figurePath, type OptionView, useJob } from '../selected';
import { useActions } from '../session';
import { Confirm } from './Confirm';
import css from './check.module.css';
import { Sections } from './Sections';

interface Props {
  readonly selected: OptionView;
  readonly note: KeyNote;
  readonly notes: readonly KeyNote[];
}

/** One keyed note in full: each finding measured and required, its sections, what would satisfy it, and the look on site. */
export const FindingDetail = ({ selected, note, notes }: Props) => {
  const job = useJob();
  const { singleOut } = useActions();
  const at = notes.indexOf(note);
  const go = (by: 1 | -1) => {
    const next = notes[at + by];
    if (next) singleOut({ note: next.number });
  };
  const rule = RULE_IDS.find((id) => id === note.rule);
  return (
    <section className={css.detail} aria-label={say.detailTitle}>
      <div className={css.head}>
        <EffectMark effect={note.effect} number={note.number} size={30} />
        <b>{screenWords.effect[note.effect]}</b>
        <small>
          {note.rule} · {say.of({ number: at + 1, count: notes.length })}
        </small>
        <span className={css.steps}>
          <button type="button" className={parts.tool} disabled={at <= 0} onClick={() => go(-1)}>
            {say.previous}
          </button>
          <button type="button" className={parts.tool} disabled={at >= notes.length - 1} onClick={() => go(1)}>
            {say.next}
          </button>
        </span>
      </div>
      {note.findings.map(({ at: i, finding }) => {
        const path = figurePath(selected.at, `findings/${i}`);
        return (
          <article key={i} className={css.finding}>
            <h3>
              <Figure path={`${path}/say`}>{finding.say}</Figure>
            </h3>
            <p className={css.facts}>
              {thingName(job, finding.subject)} · {say.outcome[finding.outcome]} ·{' '}
              <Figure path={`${path}/section`}>{finding.section}</Figure>
              <Standing of={finding} />
            </p>
            {(finding.measured !== null || finding.required !== null) && (
              <p className={css.measured}>
                <Measured finding={finding} path={path} />
              </p>
            )}
            {finding.split !== null && <p>{screenWords.split({ sides: finding.split })}</p>}
            {finding.amendment !== null && <p>{screenWords.amended({ amendment: quotedSays(finding.amendment) })}</p>}
            {finding.look !== null && (
              <p className={css.look}>
                <b>{say.lookTitle}</b> {finding.look}
              </p>
            )}
            {finding.remedies.length > 0 && (
              <>
                <h4>{say.curesTitle}</h4>
                <ul className={css.cures}>
                  {finding.remedies.map((remedy, k) => (
                    <li key={remedy.say}>
                      <Figure path={`${path}/remedies/${k}/say`}>{remedy.say}</Figure>
                      {remedy.cents !== null && (
                        <b>
                          <Figure path={`${path}/remedies/${k}/cents`}>{dollars(remedy.cents)}</Figure>
                        </b>
                      )}
                    </li>
                  ))}
                </ul>
              </>
            )}
            {finding.outcome === 'cannot be told' && <Confirm rule={finding.rule} subject={finding.subject} />}
          </article>
        );
      })}
      {rule && <Sections rule={rule} />}
    </section>
  );
};
