import { useId, useState } from 'react';
import type { Id } from '../../units/types';
import { checkWords as say } from '../../words/en/check';
import parts from '../parts/parts.module.css';
import { useJob } from '../selected';
import { useActions } from '../session';
import css from './check.module.css';

interface Props {
  readonly rule: string;
  readonly subject: Id;
}
const today = (): string => new Date().toISOString().slice(0, 10);

/** A look on site, or the inspector's word, written into the job: who, when, what was seen. */
export const Confirm = ({ rule, subject }: Props) => {
  const job = useJob();
  const { edit } = useActions();
  const id = useId();
  const [answer, setAnswer] = useState<'yes' | 'no'>('yes');
  const [by, setBy] = useState(job.answers.at(-1)?.by ?? job.survey.by);
  const [on, setOn] = useState(today);
  const [note, setNote] = useState('');
  const [missing, setMissing] = useState(false);
  const record = (): void => {
    if (by.trim() === '') {
      setMissing(true);
      return;
    }
    const others = job.answers.filter((a) => a.rule !== rule || a.subject !== subject);
    const value = [...others, { rule, subject, answer, by: by.trim(), on, note: note.trim(), photo: null }];
    edit({ edit: 'set value', path: '/answers', value });
  };
  return (
    <details className={css.confirm}>
      <summary>{say.confirmTitle}</summary>
      <p className={css.quiet}>{say.confirmWhy}</p>
      <div className={css.form}>
        <label htmlFor={`${id}-a`}>{say.answer}</label>
        <select id={`${id}-a`} value={answer} onChange={(e) => setAnswer(e.target.value === 'no' ? 'no' : 'yes')}>
          <option value="yes">{say.yes}</option>
          <option value="no">{say.no}</option>
        </select>
        <label htmlFor={`${id}-b`}>{say.by}</label>
        <input
          id={`${id}-b`}
          value={by}
          aria-invalid={missing}
          aria-describedby={missing ? `${id}-m` : undefined}
          onChange={(e) => {
            setBy(e.target.value);
            setMissing(false);
          }}
        />
        <label htmlFor={`${id}-o`}>{say.on}</label>
        <input id={`${id}-o`} type="date" value={on} onChange={(e) => setOn(e.target.value)} />
        <label htmlFor={`${id}-n`}>{say.note}</label>
        <input id={`${id}-n`} value={note} onChange={(e) => setNote(e.target.value)} />
      </div>
      {missing && (
        <p id={`${id}-m`} className={css.refusal} role="alert">
          {say.whoMissing}
        </p>
      )}
      <button type="button" className={parts.button} onClick={record}>
        {say.record}
      </button>
    </details>
  );
};
