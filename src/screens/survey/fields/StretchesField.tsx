import { surveyWords as say } from '../../../words/en/survey';
import css from './fields.module.css';
import { length } from './spec';
import { TypedField } from './TypedField';

interface Props {
  readonly stretches: readonly (readonly [number, number])[];
  /** Length of the whole run, inches. */
  readonly whole: number;
  readonly onSet: (stretches: readonly (readonly [number, number])[]) => string | null;
}

/** From where to where along a run a hand gets at the cables, measured from the old panel. */
export const StretchesField = ({ stretches, whole, onSet }: Props) => (
  <>
    {stretches.map(([from, to], i) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: a stretch has no name but its place
      <div key={i} className={css.grid}>
        <TypedField
          spec={length('', `${say.stretch({ n: i + 1 })} ${say.fromEnd.toLowerCase()}`)}
          value={from}
          onSet={(value) => onSet(stretches.with(i, [value as number, to]))}
        />
        <TypedField
          spec={length('', say.toEnd.toLowerCase())}
          value={to}
          onSet={(value) => onSet(stretches.with(i, [from, value as number]))}
        />
        <button type="button" className={css.more} onClick={() => onSet(stretches.toSpliced(i, 1))}>
          {say.removeStretch({ n: i + 1 })}
        </button>
      </div>
    ))}
    <button
      type="button"
      className={css.more}
      onClick={() => onSet([...stretches, [stretches.at(-1)?.[1] ?? 0, whole]])}
    >
      {say.addStretch}
    </button>
  </>
);
