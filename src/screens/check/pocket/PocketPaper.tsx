import { useEffect } from 'react';
import { createPortal } from 'react-dom';
import type { CalcOutput } from '../../../calculations/types';
import { pocketWords as say } from '../../../words/en/pocket';
import { screenWords } from '../../../words/en/screens';
import { PocketAnswer } from './PocketAnswer';
import css from './pocket.module.css';

interface Props {
  readonly title: string;
  readonly job: string;
  readonly given: readonly (readonly [label: string, value: string])[];
  readonly answer: CalcOutput;
  readonly onPrinted: () => void;
}

/** The calculation on a sheet of its own, for the printer only; it opens the printer's dialog and is gone after it. */
export const PocketPaper = ({ title, job, given, answer, onPrinted }: Props) => {
  useEffect(() => {
    addEventListener('afterprint', onPrinted);
    print();
    return () => removeEventListener('afterprint', onPrinted);
  }, [onPrinted]);
  return createPortal(
    <div className={css.paper}>
      <h1>{title}</h1>
      <p>{job}</p>
      <h2>{say.given}</h2>
      <dl className={css.figures}>
        {given.map(([label, value]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <h2>{say.answer}</h2>
      <PocketAnswer answer={answer} />
      <p>{screenWords.cautions}</p>
    </div>,
    document.body,
  );
};
