import { useRef, useState } from 'react';
import { type BookFault, bookCsv, readBookCsv } from '../../documents/bookCsv';
import { bookWords as say } from '../../words/en/book';
import parts from '../parts/parts.module.css';
import { AfterNotes } from '../SheetFrame';
import { useHost } from '../session';
import { BookGrid } from './BookGrid';
import { BookRates } from './BookRates';
import { BookVersions } from './BookVersions';
import css from './book.module.css';
import { useBook } from './useBook';

/** The job's price book: rates, entries, files, dated versions. */
export const BookPart = () => {
  const host = useHost();
  const { book, isDefault, write } = useBook();
  const file = useRef<HTMLInputElement>(null);
  const [faults, setFaults] = useState<readonly BookFault[]>([]);
  const read = async (chosen: File | undefined): Promise<void> => {
    if (!chosen) return;
    const next = readBookCsv(await chosen.text(), book);
    setFaults(next.ok ? [] : next.error);
    if (next.ok) write(isDefault && next.value.id === book.id ? { ...next.value, id: 'own' } : next.value, say.loaded);
    if (file.current) file.current.value = '';
  };
  return (
    <AfterNotes label={say.title}>
      <div className={css.head}>
        <p className={isDefault ? css.invented : css.note}>{isDefault ? say.isDefault : say.isOwn(book)}</p>
        <div className={css.bar}>
          <button
            type="button"
            className={parts.button}
            onClick={() =>
              host.download(`price-book.${book.id}.${book.dated}.csv`.replace(/[^\w.-]+/g, '-'), bookCsv(book))
            }
          >
            {say.save}
          </button>
          <button type="button" className={parts.button} onClick={() => file.current?.click()}>
            {say.load}
          </button>
          <input
            ref={file}
            type="file"
            accept=".csv,text/csv"
            hidden
            aria-label={say.load}
            onChange={(e) => void read(e.target.files?.[0])}
          />
        </div>
      </div>
      {faults.length > 0 && (
        <div role="alert" className={css.faults}>
          <p>{say.refused({ count: faults.length })}</p>
          <ul>
            {faults.map((f) => (
              <li key={`${f.line} ${f.column} ${f.say}`}>{say.at(f)}</li>
            ))}
          </ul>
        </div>
      )}
      <div className={css.two}>
        <BookRates />
        <BookVersions />
      </div>
      <BookGrid />
    </AfterNotes>
  );
};
