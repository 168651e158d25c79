import { type FormEvent, useId, useRef, useState } from 'react';
import { parseLength, toSixtyFourths } from '../../../units/length';
import { screenWords } from '../../../words/en/screens';
import { surveyWords as say } from '../../../words/en/survey';
import parts from '../../parts/parts.module.css';
import { useHost } from '../../session';
import { useSheet } from '../sheetState';
import { Closing } from './Closing';
import { LengthPad } from './LengthPad';
import css from './panels.module.css';
import { TurnFields, WallLeg } from './WallLeg';

/** The room wall by wall: a length, a turn, the next one; whether it closes is said all the time. */
export const WallsPanel = () => {
  const { now, set } = useSheet();
  const { look } = useHost();
  const { legs } = now;
  const [typed, setTyped] = useState('');
  const [turn, setTurn] = useState(90);
  const [refusal, setRefusal] = useState<string | null>(null);
  const input = useRef<HTMLInputElement>(null);
  const id = useId();
  const n = legs.length + 1;

  const take = (e?: FormEvent): void => {
    e?.preventDefault();
    const read = parseLength(typed);
    if (!read.ok || read.value <= 0) {
      setRefusal(read.ok ? say.notPositive : screenWords.notALength({ typed }));
      return;
    }
    set({ legs: [...legs, { length: toSixtyFourths(read.value), turn }] });
    setTyped('');
    setTurn(90);
    setRefusal(null);
    input.current?.focus();
  };
  return (
    <div className={css.columns}>
      <form className={css.entry} onSubmit={take} noValidate>
        <label htmlFor={id} className={css.entryLabel}>
          {say.wallLength({ n })}
        </label>
        <input
          id={id}
          ref={input}
          className={refusal === null ? css.typing : css.typingRefused}
          value={typed}
          autoComplete="off"
          spellCheck={false}
          inputMode={look().hand === 'field' ? 'none' : 'text'}
          aria-invalid={refusal !== null}
          aria-describedby={`${id}-say`}
          onChange={(e) => setTyped(e.target.value)}
        />
        <small id={`${id}-say`}>{refusal ?? say.understood}</small>
        <TurnFields n={n} turn={turn} onSet={setTurn} />
        {look().hand === 'field' ? (
          <LengthPad typed={typed} onType={setTyped} setSay={say.setNext} onSet={() => take()} />
        ) : (
          <button type="submit" className={parts.button}>
            {say.setNext}
          </button>
        )}
      </form>
      <div>
        {legs.length > 1 && <Closing />}
        {legs.length > 0 && (
          <>
            <h3 className={css.head}>{say.typedWalls}</h3>
            <ol className={css.legs}>
              {legs.map((leg, i) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a wall typed has no name but its place
                <WallLeg key={i} n={i + 1} leg={leg} onSet={(next) => set({ legs: legs.with(i, next) })} />
              ))}
            </ol>
            <div className={css.buttons}>
              <button type="button" className={css.quiet} onClick={() => set({ legs: legs.slice(0, -1) })}>
                {say.removeLast}
              </button>
              <button type="button" className={css.quiet} onClick={() => set({ legs: [] })}>
                {say.startOver}
              </button>
            </div>
          </>
        )}
      </div>
    </div>
  );
};
