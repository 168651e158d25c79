import { type FormEvent, useState } from 'react';
import { surveyWords as say } from '../../../words/en/survey';
import parts from '../../parts/parts.module.css';
import { length } from '../fields/spec';
import { TypedField } from '../fields/TypedField';
import { useSheet } from '../sheetState';
import { isOutline, LEAST, twoEnds } from '../taken';
import { useTaken } from '../useTaken';
import css from './panels.module.css';

const X = length('', say.xTitle);
const Y = length('', say.yTitle);
const Z = length('', say.zTitle);

/** Points taken so far, the next one typed instead of tapped, and the end of it. */
export const TakenPanel = () => {
  const { now, set } = useSheet();
  const { taken, take, back, finish, cancel } = useTaken();
  const last = taken?.points.at(-1);
  const [at, setAt] = useState<readonly [number, number]>([last?.[0] ?? 0, last?.[1] ?? 0]);
  if (!taken) return null;
  const put = (to: () => void) => {
    to();
    return null;
  };
  const add = (e: FormEvent): void => {
    e.preventDefault();
    take([at[0], at[1], now.height]);
  };
  const deep = !isOutline(taken.what) && taken.what !== 'partition';
  return (
    <form className={css.narrow} onSubmit={add} noValidate>
      <p role="status">{say.pointsTaken({ n: taken.points.length })}</p>
      <TypedField spec={X} value={at[0]} onSet={(v) => put(() => setAt([v as number, at[1]]))} />
      <TypedField spec={Y} value={at[1]} onSet={(v) => put(() => setAt([at[0], v as number]))} />
      {deep && <TypedField spec={Z} value={now.height} onSet={(v) => put(() => set({ height: v as number }))} />}
      <div className={css.buttons}>
        <button type="submit" className={parts.button}>
          {say.anyPoint}
        </button>
        {!twoEnds(taken.what) && (
          <button
            type="button"
            className={parts.go}
            disabled={taken.points.length < LEAST[taken.what]}
            onClick={finish}
          >
            {isOutline(taken.what) ? say.closeShape : say.finishRun}
          </button>
        )}
        <button type="button" className={css.quiet} disabled={taken.points.length === 0} onClick={back}>
          {say.takePointBack}
        </button>
        <button type="button" className={css.quiet} onClick={cancel}>
          {say.cancel}
        </button>
      </div>
    </form>
  );
};
