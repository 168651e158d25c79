import { useId, useState } from 'react';
import { surveyWords as say } from '../../../words/en/survey';
import css from './fields.module.css';
import { readTyped, writeValue } from './read';
import type { Spec } from './spec';

interface Props {
  readonly spec: Spec;
  /** Shown in place of the label where the place says the rest. */
  readonly brief?: string;
  readonly value: unknown;
  /** Null when taken, else why not. */
  readonly onSet: (value: unknown) => string | null;
}

/** A measure or a word typed; what cannot be taken stays as typed with the reason below. Not known is dotted, and one key away. */
export const TypedField = ({ spec, brief, value, onSet }: Props) => {
  const [typed, setTyped] = useState<string | null>(null);
  const [refusal, setRefusal] = useState<string | null>(null);
  const [before, setBefore] = useState(value);
  const id = useId();
  if (before !== value) {
    setBefore(value);
    setTyped(null);
    setRefusal(null);
  }
  const unknown = value === 'unknown';
  const refused = (reason: string | null): boolean => {
    setRefusal(reason);
    if (reason === null) setTyped(null);
    return reason !== null;
  };
  /** Is what was typed refused? */
  const set = (): boolean => {
    if (typed === null) return false;
    const read = readTyped(spec, typed);
    return refused(read.ok ? onSet(read.value) : read.error);
  };
  return (
    <div className={refusal !== null ? css.refused : unknown && typed === null ? css.unknown : css.field}>
      <label htmlFor={id} className={css.label}>
        {brief ?? spec.label}
      </label>
      <input
        id={id}
        className={css.control}
        type="text"
        aria-label={brief === undefined ? undefined : spec.label}
        autoComplete="off"
        spellCheck={false}
        value={typed ?? writeValue(spec, value)}
        aria-invalid={refusal !== null}
        aria-describedby={refusal === null ? undefined : `${id}-why`}
        onChange={(e) => setTyped(e.target.value)}
        onFocus={(e) => e.target.select()}
        onBlur={set}
        onKeyDown={(e) => {
          if (e.key === 'Enter' && set()) e.preventDefault(); // a form around it does not go on with the value before
          if (e.key === 'Escape') {
            setTyped(null);
            setRefusal(null);
          }
        }}
      />
      {spec.unknown && !unknown && (
        <button
          type="button"
          className={css.ask}
          aria-label={say.setUnknown({ label: spec.label })}
          title={say.notKnown}
          onClick={() => refused(onSet('unknown'))}
        >
          ?
        </button>
      )}
      {refusal !== null && (
        <span id={`${id}-why`} className={css.why}>
          {refusal}
        </span>
      )}
    </div>
  );
};
