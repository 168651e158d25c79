import { useId } from 'react';
import css from './layout.module.css';

interface Props<T extends string> {
  readonly label: string;
  readonly value: T;
  readonly choices: readonly { readonly value: T; readonly say: string }[];
  readonly onSet: (value: T) => void;
}

/** One of a few, in a ruled field. */
export const ChoiceField = <T extends string>({ label, value, choices, onSet }: Props<T>) => {
  const id = useId();
  return (
    <div className={css.choice}>
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} onChange={(e) => onSet(e.target.value as T)}>
        {choices.map((c) => (
          <option key={c.value} value={c.value}>
            {c.say}
          </option>
        ))}
      </select>
    </div>
  );
};
