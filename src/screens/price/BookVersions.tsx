import { useState } from 'react';
import { booksText, readBooks, withBook } from '../../job/own';
import { bookWords as say } from '../../words/en/book';
import parts from '../parts/parts.module.css';
import { useHost } from '../session';
import css from './book.module.css';
import { useBook } from './useBook';

/** Dated books kept on this machine; a job may be priced with another, as one step that can be undone. */
export const BookVersions = () => {
  const host = useHost();
  const { book, isDefault, write } = useBook();
  const [kept, setKept] = useState(() => readBooks(host.ownText('books')));
  const [said, setSaid] = useState<string | null>(null);
  const keep = (): void => {
    const next = withBook(readBooks(host.ownText('books')), book);
    const fits = next !== null && host.keepOwnText('books', booksText(next));
    if (fits) setKept(next);
    setSaid(next === null ? say.sameDate : fits ? say.keptNow(book) : say.notKept);
  };
  return (
    <section className={css.versions}>
      <h3>{say.versions}</h3>
      {kept.length === 0 && <p className={css.note}>{say.noVersions}</p>}
      <ul>
        {kept.map((other) => {
          const mine = !isDefault && JSON.stringify(other) === JSON.stringify(book);
          return (
            <li key={`${other.id} ${other.dated}`}>
              <span>
                <b>{other.id}</b> {other.dated} {mine && <small>{say.thisOne}</small>}
              </span>
              {!mine && (
                <button type="button" className={parts.button} onClick={() => write(other, say.repriced(other))}>
                  {say.reprice}
                </button>
              )}
            </li>
          );
        })}
      </ul>
      <div className={css.bar}>
        {!isDefault && (
          <>
            <button type="button" className={parts.button} onClick={keep}>
              {say.keep}
            </button>
            <button type="button" className={parts.button} onClick={() => write('default', say.useDefault)}>
              {say.useDefault}
            </button>
          </>
        )}
      </div>
      {said !== null && (
        <p role="status" className={css.note}>
          {said}
        </p>
      )}
    </section>
  );
};
