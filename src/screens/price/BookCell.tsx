import { type KeyboardEvent, useState } from 'react';
import css from './book.module.css';

interface Props {
  readonly label: string;
  readonly text: string;
  readonly numeric: boolean;
  /** Takes what was typed; answers what is wrong with it, null where it was taken. */
  readonly take: (text: string) => string | null;
  readonly onPaste?: (rows: readonly string[]) => boolean;
}

/** To the cell above or below in the same column. */
const move = (from: HTMLElement, by: 1 | -1): void => {
  const cell = from.closest('td');
  const row = cell?.parentElement;
  const next = by > 0 ? row?.nextElementSibling : row?.previousElementSibling;
  const at = cell && row ? [...row.children].indexOf(cell) : -1;
  next?.children[at]?.querySelector('input')?.focus();
};

/** One cell of the book: taken on Enter or on leaving it; what is wrong stays as typed, with why beside it. */
export const BookCell = ({ label, text, numeric, take, onPaste }: Props) => {
  const [typed, setTyped] = useState<string | null>(null);
  const [wrong, setWrong] = useState<string | null>(null);
  const finish = (): boolean => {
    if (typed === null || (typed === text && wrong === null)) return true;
    const why = typed === text ? null : take(typed);
    setWrong(why);
    if (why === null) setTyped(null);
    return why === null;
  };
  const onKey = (e: KeyboardEvent<HTMLInputElement>): void => {
    e.stopPropagation();
    if (e.key === 'Escape') {
      setTyped(null);
      setWrong(null);
    }
    if (e.key === 'Enter' && finish()) move(e.currentTarget, e.shiftKey ? -1 : 1);
    if (e.key === 'ArrowDown' && finish()) move(e.currentTarget, 1);
    if (e.key === 'ArrowUp' && finish()) move(e.currentTarget, -1);
  };
  return (
    <td className={numeric ? css.number : css.text}>
      <input
        aria-label={label}
        aria-invalid={wrong !== null || undefined}
        inputMode={numeric ? 'decimal' : 'text'}
        value={typed ?? text}
        spellCheck={false}
        autoComplete="off"
        onFocus={(e) => e.currentTarget.select()}
        onChange={(e) => setTyped(e.target.value)}
        onBlur={finish}
        onKeyDown={onKey}
        onPaste={(e) => {
          const rows = e.clipboardData
            .getData('text')
            .split(/\r?\n/)
            .filter((row) => row !== '');
          if (rows.length > 1 && onPaste?.(rows)) e.preventDefault();
        }}
      />
      {wrong !== null && (
        <span role="alert" className={css.wrong}>
          {wrong}
        </span>
      )}
    </td>
  );
};
