import { useState } from 'react';
import { dependents } from '../../job/dependents';
import { surveyWords as say } from '../../words/en/survey';
import { useJob } from '../selected';
import { useActions } from '../session';
import { nameOf } from './nameOf';
import type { Ref } from './ref';
import { useSheet } from './sheetState';
import css from './survey.module.css';

const NAMED: Readonly<Record<string, string>> = say.one;

/** Takes a thing out; where others cannot do without it they are named first, and go only when that is asked for. */
export const RemoveThing = ({ of }: { readonly of: Ref }) => {
  const job = useJob();
  const { edit } = useActions();
  const { set } = useSheet();
  const [asking, setAsking] = useState(false);
  if (of.list === '/site/outline') return <p className={css.say}>{say.wallsStay}</p>;
  const others = dependents(job, of);
  const gone = (done: boolean): void => {
    if (done) set({ selected: null });
    setAsking(false);
  };
  if (asking && others.length > 0)
    return (
      <div role="alertdialog" aria-label={say.removeQuestion({ id: nameOf(of) })} className={css.question}>
        <p>{say.removeQuestion({ id: nameOf(of) })}</p>
        <ul>
          {others.map((o) => (
            <li key={`${o.list} ${o.id}`}>
              {NAMED[o.list] ?? o.list} <b>{nameOf(o)}</b>
            </li>
          ))}
        </ul>
        <button type="button" className={css.quiet} onClick={() => gone(edit({ edit: 'remove together', ...of }))}>
          {say.removeAll({ n: others.length })}
        </button>
        <button type="button" className={css.quiet} onClick={() => setAsking(false)}>
          {say.keepIt}
        </button>
      </div>
    );
  return (
    <button
      type="button"
      className={css.quiet}
      onClick={() => (others.length > 0 ? setAsking(true) : gone(edit({ edit: 'remove record', ...of })))}
    >
      {say.remove}
    </button>
  );
};
