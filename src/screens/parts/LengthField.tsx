import { useId, useState } from 'react';
import { formatFeetInches, parseLength, toSixtyFourths } from '../../units/length';
import type { In } from '../../units/types';
import { screenWords as say } from '../../words/en/screens';
import css from './parts.module.css';

interface Props {
  readonly label: string;
  readonly inches: In;
  /** Null when taken, else why not. */
  readonly onSet: (inches: In) => string | null;
}

/** A length typed in any usual way. What cannot be taken stays as typed, with the reason below it. */
export const LengthField = ({ label, inches, onSet }: Props) => {
  const [typed, setTyped] = useState<string | null>(null);
  const [refusal, setRefusal] = useState<string | null>(null);
  const [before, setBefore] = useState(inches);
  const id = useId();
  if (before !== inches) {
    // changed from outside: by undo, or another option
    setBefore(inches);
    setTyped(null);
    setRefusal(null);
  }
  const set = (): void => {
    if (typed === null) return;
    const read = parseLength(typed);
    if (!read.ok) {
      setRefusal(say.notALength({ typed }));
      return;
    }
    const reason = onSet(toSixtyFourths(read.value));
    setRefusal(reason);
    if (reason === null) setTyped(null);
  };
  const leave = (): void => {
    setTyped(null);
    setRefusal(null);
  };
  return (
    <div className={refusal === null ? css.edit : css.refused}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="text"
        inputMode="text"
        autoComplete="off"
        spellCheck={false}
        value={typed ?? formatFeetInches(inches, 64)}
        aria-invalid={refusal !== null}
        aria-describedby={refusal === null ? undefined : `${id}-refusal`}
        onChange={(e) => setTyped(e.target.value)}
        onFocus={(e) => e.target.select()}
        onBlur={set}
        onKeyDown={(e) => {
          if (e.key === 'Enter') set();
          if (e.key === 'Escape') leave();
        }}
      />
      {refusal !== null && (
        <span id={`${id}-refusal`} className={css.refusal}>
          {refusal}
        </span>
      )}
    </div>
  );
};
