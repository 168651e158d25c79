import { useId, useState } from 'react';
import { surveyWords as say } from '../../../words/en/survey';
import css from './fields.module.css';
import type { Choice, Spec } from './spec';

interface Props {
  readonly spec: Pick<Spec, 'label' | 'unknown'>;
  /** Shown in place of the label where the place says the rest. */
  readonly brief?: string;
  readonly of: readonly Choice[];
  readonly value: unknown;
  readonly onSet: (value: unknown) => string | null;
}

/** One of several words. A value no word stands for (an angle, a kind of an older file) is among them as it is. */
export const ChoiceField = ({ spec, brief, of, value, onSet }: Props) => {
  const [refusal, setRefusal] = useState<string | null>(null);
  const id = useId();
  const key = JSON.stringify(value);
  const known = of.some((c) => JSON.stringify(c.value) === key) || value === 'unknown';
  return (
    <div className={refusal !== null ? css.refused : value === 'unknown' ? css.unknown : css.field}>
      <label htmlFor={id} className={css.label}>
        {brief ?? spec.label}
      </label>
      <select
        id={id}
        className={css.control}
        aria-label={brief === undefined ? undefined : spec.label}
        value={key}
        onChange={(e) => setRefusal(onSet(JSON.parse(e.target.value) as unknown))}
        aria-describedby={refusal === null ? undefined : `${id}-why`}
      >
        {spec.unknown && <option value={'"unknown"'}>{say.notKnown}</option>}
        {!known && <option value={key}>{String(value)}</option>}
        {of.map((c) => (
          <option key={c.say} value={JSON.stringify(c.value)}>
            {c.say}
          </option>
        ))}
      </select>
      {refusal !== null && (
        <span id={`${id}-why`} className={css.why}>
          {refusal}
        </span>
      )}
    </div>
  );
};
