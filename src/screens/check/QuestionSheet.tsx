import { useState } from 'react';
import { questionRows } from '../../documents/questionSheet';
import type { Finding } from '../../facts/result';
import type { QuestionKey } from '../../standards/questions';
import { questionWords as say } from '../../words/en/questions';
import { TextField } from '../layout/TextField';
import { useTryEdit } from '../layout/useOptionEdit';
import parts from '../parts/parts.module.css';
import { useJob, useSelected } from '../selected';
import { QuestionPaper } from './QuestionPaper';
import { QuestionRow } from './QuestionRow';
import css from './questions.module.css';

const today = (): string => new Date().toISOString().slice(0, 10);
const NONE: readonly Finding[] = [];

type Waiting = Readonly<Partial<Record<QuestionKey, string | number>>>;
/** Answers of a job that still wait for a name: they outlast a look at another sheet. */
let held: { readonly job: string; readonly waiting: Waiting } = { job: '', waiting: {} };

/**
 * What is asked of the inspector, answered once: who and when stand at the top, each answer takes them along. An answer
 * given before the name waits for it and is kept.
 */
export const QuestionSheet = () => {
  const job = useJob();
  const findings = useSelected()?.plan?.findings ?? NONE;
  const tryEdit = useTryEdit();
  const [by, setBy] = useState(() => Object.values(job.code.saidBy).at(-1)?.by ?? '');
  const [on, setOn] = useState(today);
  const [note, setNote] = useState('');
  const [waiting, setState] = useState<Waiting>(() => (held.job === job.id ? held.waiting : {}));
  const [refusal, setRefusal] = useState<string | null>(() =>
    Object.keys(waiting).length > 0 ? say.whoMissing : null,
  );
  const [printing, setPrinting] = useState(false);
  const rows = questionRows(job, findings);
  const setWaiting = (next: Waiting): void => {
    held = { job: job.id, waiting: next };
    setState(next);
  };
  const record = (question: QuestionKey, answer: string | number | null, who: string): string | null =>
    tryEdit({ edit: 'answer question', question, answer, by: who, on, note: note.trim() });
  const answer = (question: QuestionKey, value: string | number): void => {
    if (by.trim() === '') {
      setWaiting({ ...waiting, [question]: value });
      setRefusal(say.whoMissing);
      return;
    }
    setRefusal(record(question, value, by));
  };
  /** The name comes: the answers that waited for it are recorded. */
  const named = (typed: string): string | null => {
    setBy(typed);
    if (typed.trim() === '') return null;
    const refused = Object.entries(waiting).flatMap(
      ([question, value]) => record(question as QuestionKey, value, typed) ?? [],
    );
    if (refused.length === 0) setWaiting({});
    setRefusal(refused[0] ?? null);
    return null;
  };
  return (
    <section className={css.sheet} aria-label={say.title}>
      <div className={css.head}>
        <h3>{say.title}</h3>
        <button type="button" className={parts.button} onClick={() => setPrinting(true)}>
          {say.print}
        </button>
      </div>
      <p className={css.lead}>{say.lead}</p>
      <div className={css.who}>
        <TextField label={say.by} value={by} onSet={named} />
        <label className={css.date}>
          {say.on} <input type="date" value={on} onChange={(e) => setOn(e.target.value)} />
        </label>
        <TextField
          label={say.note}
          value={note}
          onSet={(typed) => {
            setNote(typed);
            return null;
          }}
        />
      </div>
      {refusal !== null && (
        <p className={css.refusal} role="alert">
          {refusal}
        </p>
      )}
      <ol className={css.questions}>
        {rows.map((row) => (
          <QuestionRow
            key={row.key}
            row={row}
            waiting={waiting[row.key] ?? null}
            onAnswer={(value) => answer(row.key, value)}
            onTakeBack={() => setRefusal(record(row.key, null, ''))}
          />
        ))}
      </ol>
      {printing && <QuestionPaper rows={rows} onPrinted={() => setPrinting(false)} />}
    </section>
  );
};
