import { surveyWords as say } from '../../../words/en/survey';
import css from './panels.module.css';

const KEYS: readonly (readonly { readonly put: string; readonly say: string }[])[] = [
  [...'789'].map((d) => ({ put: d, say: d })),
  [...'456'].map((d) => ({ put: d, say: d })),
  [...'123'].map((d) => ({ put: d, say: d })),
];
const EIGHTHS = [
  { put: ' 1/8', say: '⅛' },
  { put: ' 1/4', say: '¼' },
  { put: ' 3/8', say: '⅜' },
  { put: ' 1/2', say: '½' },
  { put: ' 5/8', say: '⅝' },
  { put: ' 3/4', say: '¾' },
  { put: ' 7/8', say: '⅞' },
] as const;

interface Props {
  readonly typed: string;
  readonly onType: (typed: string) => void;
  /** The wide key that takes the length. */
  readonly setSay: string;
  readonly onSet: () => void;
}

/** A length typed with one thumb: digits, feet, inches, eighths as keys of their own. */
export const LengthPad = ({ typed, onType, setSay, onSet }: Props) => {
  const key = ({ put, say: text }: { readonly put: string; readonly say: string }) => (
    <button key={text} type="button" onClick={() => onType(typed + put)}>
      {text}
    </button>
  );
  return (
    <fieldset className={css.pad} aria-label={say.padTitle}>
      {KEYS[0]!.map(key)}
      {key({ put: "' ", say: say.padFeet })}
      {EIGHTHS.slice(0, 2).map(key)}
      {KEYS[1]!.map(key)}
      {key({ put: '"', say: say.padInches })}
      {EIGHTHS.slice(2, 4).map(key)}
      {KEYS[2]!.map(key)}
      <button type="button" onClick={() => onType(typed.replace(/\s*(\d+\/\d+|.)$/, ''))}>
        {say.padErase}
      </button>
      {EIGHTHS.slice(4, 6).map(key)}
      {key({ put: '0', say: '0' })}
      <button type="button" className={css.padSet} onClick={onSet}>
        {setSay}
      </button>
      {EIGHTHS.slice(6).map(key)}
    </fieldset>
  );
};
