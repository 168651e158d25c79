import { useEffect } from 'react';
import { createPortal } from 'react-dom';
import type { QuestionRow } from '../../documents/questionSheet';
import { questionWords as say } from '../../words/en/questions';
import { screenWords } from '../../words/en/screens';
import { useJob } from '../selected';
import { QuestionTable } from './QuestionTable';
import css from './questions.module.css';

interface Props {
  readonly rows: readonly QuestionRow[];
  readonly onPrinted: () => void;
}

/** The question sheet alone, to take to the building department; it opens the printer's dialog and is gone after it. */
export const QuestionPaper = ({ rows, onPrinted }: Props) => {
  const { title, code, changedOn } = useJob();
  useEffect(() => {
    addEventListener('afterprint', onPrinted);
    print();
    return () => removeEventListener('afterprint', onPrinted);
  }, [onPrinted]);
  return createPortal(
    <div className={css.paper}>
      <h1>{say.title}</h1>
      <p>{[title || screenWords.untitled, code.place, changedOn].filter((text) => text !== '').join(' · ')}</p>
      <QuestionTable rows={rows} />
      <p>{screenWords.aid}</p>
    </div>,
    document.body,
  );
};
