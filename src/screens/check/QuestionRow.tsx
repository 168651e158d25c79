import type { QuestionRow as Row } from '../../documents/questionSheet';
import { questionWords as say } from '../../words/en/questions';
import { ChoiceField } from '../layout/ChoiceField';
import { TextField } from '../layout/TextField';
import css from './questions.module.css';

interface Props {
  readonly row: Row;
  /** An answer that waits for the name of who gave it. */
  readonly waiting: string | number | null;
  readonly onAnswer: (answer: string | number) => void;
  readonly onTakeBack: () => void;
}
const OPEN = '';

/** One question: what is asked and why, the answer with who and when, and what turns on it. */
export const QuestionRow = ({ row, waiting, onAnswer, onTakeBack }: Props) => {
  const { answered, choices } = row;
  const now = waiting ?? answered?.answer ?? null;
  const takesInches = (typed: string): string | null => {
    const text = typed.trim();
    if (text === '') {
      if (answered) onTakeBack();
      return null;
    }
    if (!/^\d+(\.\d+)?$/.test(text) || Number(text) === 0) return say.notInches({ typed });
    onAnswer(Number(text));
    return null;
  };
  return (
    <li className={css.question}>
      <div>
        <p className={css.ask}>{row.ask}</p>
        <p className={css.why}>
          {row.why}
          {!row.asked && ` ${say.notInThisYear}`}
        </p>
      </div>
      <div className={css.answer}>
        {choices === null ? (
          <TextField numeric label={row.name} value={now === null ? '' : String(now)} onSet={takesInches} />
        ) : (
          <ChoiceField
            label={row.name}
            value={now === null ? OPEN : String(now)}
            choices={[
              { value: OPEN, say: say.notAnswered },
              ...choices.map((c) => ({ value: String(c.answer), say: c.say })),
            ]}
            onSet={(value) => {
              const chosen = choices.find((c) => String(c.answer) === value);
              if (chosen) onAnswer(chosen.answer);
              else if (answered) onTakeBack();
            }}
          />
        )}
        <p className={css.why}>
          {answered && (
            <>
              {answered.by === null ? say.nobody : say.saidBy({ by: answered.by, on: answered.on ?? '' })}
              {answered.note !== '' && `: ${answered.note}`}{' '}
            </>
          )}
          {row.waiting > 0 && `${say.waits({ count: row.waiting })} `}
          {row.quoting > 0 && say.changes({ count: row.quoting })}
        </p>
      </div>
    </li>
  );
};
