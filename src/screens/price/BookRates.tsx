import { useState } from 'react';
import { bookNumber, LIMITS } from '../../documents/bookCsv';
import type { PriceBook } from '../../job/schema';
import { markupOf } from '../../pricing/onTop';
import { bookWords as say } from '../../words/en/book';
import css from './book.module.css';
import { useBook } from './useBook';

type Limits = Parameters<typeof bookNumber>[1];
const tidy = (x: number): number => Math.round(x * 1e6) / 1e6;
const cents = (x: number): number => Math.round(x * 100) / 100;

/** One rate: as typed until it is taken; what is wrong stays, with why under it. */
const Rate = ({
  label,
  text,
  note = null,
  take,
}: {
  readonly label: string;
  readonly text: string;
  readonly note?: string | null;
  readonly take: (text: string) => string | null;
}) => {
  const [typed, setTyped] = useState<string | null>(null);
  const [wrong, setWrong] = useState<string | null>(null);
  const finish = (): void => {
    if (typed === null) return;
    const why = typed === text ? null : take(typed);
    setWrong(why);
    if (why === null) setTyped(null);
  };
  return (
    <label className={css.rate}>
      <span>
        {label} {note !== null && <small>{note}</small>}
      </span>
      <input
        value={typed ?? text}
        spellCheck={false}
        autoComplete="off"
        aria-invalid={wrong !== null || undefined}
        onChange={(e) => setTyped(e.target.value)}
        onBlur={finish}
        onKeyDown={(e) => {
          e.stopPropagation();
          if (e.key === 'Enter') finish();
          if (e.key === 'Escape') {
            setTyped(null);
            setWrong(null);
          }
        }}
      />
      {wrong !== null && (
        <span role="alert" className={css.wrong}>
          {wrong}
        </span>
      )}
    </label>
  );
};

/** What is multiplied with: the labor-hour and where it comes from, overhead, profit, tax, least charge, round sum. */
export const BookRates = () => {
  const { book, change } = useBook();
  const number =
    (label: string, limits: Limits, next: (value: number) => PriceBook, scale = 1) =>
    (text: string): string | null => {
      const read = bookNumber(text.replace(/%\s*$/, ''), {
        ...limits,
        least: limits.least * scale,
        most: limits.most * scale,
      });
      if (!read.ok) return read.error;
      change(next(tidy(read.value / scale)), label);
      return null;
    };
  const text = (label: string, next: (value: string) => PriceBook) => (typed: string) => {
    change(next(typed.trim()), label);
    return null;
  };
  const percent = (share: number): string => String(tidy(share * 100));
  const { profit, wage } = book;
  const markup = markupOf(profit);
  const other =
    profit.as === 'margin'
      ? markup === null
        ? null
        : say.sameAs({ percent: (markup * 100).toFixed(1), as: 'markup' })
      : say.sameAs({ percent: ((profit.rate / (1 + profit.rate)) * 100).toFixed(1), as: 'margin' });
  const paid = (dollarsPerHour: number, burden: number): PriceBook => ({
    ...book,
    wage: { dollarsPerHour, burden },
    dollarsPerCrewHour: cents(dollarsPerHour * (1 + burden)),
  });
  return (
    <section className={css.rates} aria-label={say.rates}>
      <Rate label={say.id} text={book.id} take={text(say.id, (id) => ({ ...book, id: id || 'own' }))} />
      <Rate label={say.dated} text={book.dated} take={text(say.dated, (dated) => ({ ...book, dated }))} />
      <Rate
        label={say.wage}
        text={wage ? String(wage.dollarsPerHour) : ''}
        take={number(say.wage, LIMITS.hourly, (value) => paid(value, wage?.burden ?? 0))}
      />
      <Rate
        label={say.burden}
        text={wage ? percent(wage.burden) : ''}
        take={number(
          say.burden,
          LIMITS.share,
          (value) => paid(wage?.dollarsPerHour ?? book.dollarsPerCrewHour, value),
          100,
        )}
      />
      <Rate
        label={say.hour}
        note={wage ? say.fromWage : null}
        text={String(book.dollarsPerCrewHour)}
        take={number(say.hour, LIMITS.hourly, (value) => ({ ...book, dollarsPerCrewHour: value, wage: null }))}
      />
      <Rate
        label={say.overhead}
        text={percent(book.overheadRate)}
        take={number(say.overhead, LIMITS.share, (overheadRate) => ({ ...book, overheadRate }), 100)}
      />
      <label className={css.rate}>
        <span>{say.profitAs}</span>
        <select
          value={profit.as}
          onChange={(e) => {
            const as = e.target.value as 'margin' | 'markup';
            // the same price under its other name
            const rate = as === 'markup' ? (markup ?? profit.rate) : profit.rate / (1 + profit.rate);
            change({ ...book, profit: { as, rate: tidy(rate) } }, say.profitAs.toLowerCase());
          }}
        >
          <option value="margin">{say.margin}</option>
          <option value="markup">{say.markup}</option>
        </select>
      </label>
      <Rate
        label={say.profit}
        note={other}
        text={percent(profit.rate)}
        take={number(
          say.profit,
          profit.as === 'margin' ? LIMITS.margin : LIMITS.share,
          (rate) => ({ ...book, profit: { ...profit, rate } }),
          100,
        )}
      />
      <Rate
        label={say.tax}
        text={percent(book.tax.rate)}
        take={number(say.tax, LIMITS.share, (rate) => ({ ...book, tax: { ...book.tax, rate } }), 100)}
      />
      <Rate
        label={say.taxOn}
        text={book.tax.on.join(', ')}
        take={text(say.taxOn, (typed) => ({
          ...book,
          tax: {
            ...book.tax,
            on: typed
              .split(',')
              .map((name) => name.trim())
              .filter(Boolean),
          },
        }))}
      />
      <Rate
        label={say.minimum}
        text={String(book.minimumDollars)}
        take={number(say.minimum, LIMITS.sum, (minimumDollars) => ({ ...book, minimumDollars }))}
      />
      <Rate
        label={say.roundTo}
        text={String(book.roundToDollars)}
        take={number(say.roundTo, LIMITS.step, (roundToDollars) => ({ ...book, roundToDollars }))}
      />
    </section>
  );
};
