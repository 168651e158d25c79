import { useState } from 'react';
import { newerBook, readBooks } from '../../job/own';
import { bookWords as say } from '../../words/en/book';
import parts from '../parts/parts.module.css';
import { useJob } from '../selected';
import { useHost } from '../session';
import css from './book.module.css';
import { useBook } from './useBook';

/** Offers to price again where a later book of the job's name is on this machine; until then the job keeps its own. */
export const NewerBook = () => {
  const job = useJob();
  const host = useHost();
  const { book, write } = useBook();
  const [kept] = useState(() => readBooks(host.ownText('books')));
  const newer = newerBook(kept, job);
  if (!newer) return null;
  return (
    <p className={css.newer}>
      <span>{say.newer({ ...newer, mine: book.dated })}</span>
      <button type="button" className={parts.button} onClick={() => write(newer, say.repriced(newer))}>
        {say.reprice}
      </button>
    </p>
  );
};
