import { USES } from '../../../standards/uses';
import { pocketWords as say } from '../../../words/en/pocket';
import type { PocketField } from './fields';
import css from './pocket.module.css';
import { spoken } from './shown';

interface Props {
  readonly id: string;
  readonly field: PocketField;
  readonly value: string;
  readonly onType: (value: string) => void;
}
const LINES = ['circuits', 'coils', 'pieces'];
const BETWEEN = ', ';

/** One input of a pocket calculation, kept as typed. */
export const PocketInput = ({ id, field, value, onType }: Props) => {
  const label = say.fields[field.label];
  if (field.kind === 'rooms') {
    const chosen = value === '' ? [] : value.split(BETWEEN);
    const turn = (use: string): void =>
      onType(USES.filter((u) => (u === use ? !chosen.includes(u) : chosen.includes(u))).join(BETWEEN));
    return (
      <details className={css.rooms}>
        <summary>
          <span>{label}</span> <b>{value === '' ? say.noRooms : value}</b>
        </summary>
        <fieldset>
          <legend className={css.legend}>{label}</legend>
          {USES.map((use) => (
            <label key={use}>
              <input type="checkbox" checked={chosen.includes(use)} onChange={() => turn(use)} /> {use}
            </label>
          ))}
        </fieldset>
      </details>
    );
  }
  const lines = LINES.includes(field.kind);
  return (
    <div className={lines ? css.tall : css.field}>
      <label htmlFor={id}>{label}</label>
      {field.kind === 'choice' ? (
        <select id={id} value={value} onChange={(e) => onType(e.target.value)}>
          {field.choices.map((c) => (
            <option key={String(c)} value={String(c)}>
              {spoken(c, field)}
            </option>
          ))}
        </select>
      ) : lines ? (
        <textarea id={id} value={value} rows={5} spellCheck={false} onChange={(e) => onType(e.target.value)} />
      ) : (
        <input
          id={id}
          value={value}
          autoComplete="off"
          inputMode={field.kind === 'number' ? 'decimal' : undefined}
          onChange={(e) => onType(e.target.value)}
        />
      )}
    </div>
  );
};
