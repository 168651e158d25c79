import { useId, useState } from 'react';
import parts from '../parts/parts.module.css';

interface Props {
  readonly label: string;
  readonly value: string;
  /** Null when taken, else why not. */
  readonly onSet: (typed: string) => string | null;
  readonly numeric?: boolean;
}

/** A text or number typed in a ruled field. What cannot be taken stays as typed, with the reason below it. */
export const TextField = ({ label, value, onSet, numeric = false }: Props) => {
  const [typed, setTyped] = useState<string | null>(null);
  const [refusal, setRefusal] = useState<string | null>(null);
  const [before, setBefore] = useState(value);
  const id = useId();
  if (before !== value) {
    setBefore(value);
    setTyped(null);
    setRefusal(null);
  }
  const set = (): void => {
    if (typed === null || typed === value) return;
    const reason = onSet(typed);
    setRefusal(reason);
    if (reason === null) setTyped(null);
  };
  return (
    <div className={refusal === null ? parts.edit : parts.refused}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="text"
        inputMode={numeric ? 'numeric' : 'text'}
        autoComplete="off"
        value={typed ?? value}
        aria-invalid={refusal !== null}
        aria-describedby={refusal === null ? undefined : `${id}-refusal`}
        onChange={(e) => setTyped(e.target.value)}
        onBlur={set}
        onKeyDown={(e) => {
          if (e.key === 'Enter') set();
          if (e.key === 'Escape') {
            setTyped(null);
            setRefusal(null);
          }
        }}
      />
      {refusal !== null && (
        <span id={`${id}-refusal`} className={parts.refusal}>
          {refusal}
        </span>
      )}
    </div>
  );
};
