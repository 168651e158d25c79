import { screenWords as say } from '../words/en/screens';
import css from './jobString.module.css';
import { useOwed } from './owed';
import { StopSign } from './parts/EffectMark';
import { Figure } from './parts/Figure';
import { sheetAddress } from './sheetHash';
import { SHEET_KEYS, type SheetKey, sheetNumber } from './sheetKeys';

/** A dimension line of five lengths, one a sheet: its number and name over the line, what it still owes under it. */
export const JobString = ({ open }: { readonly open: SheetKey }) => {
  const owed = useOwed();
  return (
    <nav className={css.string} aria-label={say.sheetsTitle}>
      {SHEET_KEYS.map((key) => {
        const { figure, path, say: text, stops } = owed[key];
        return (
          <a
            key={key}
            href={sheetAddress(key)}
            className={key === open ? css.on : css.length}
            aria-current={key === open ? 'page' : undefined}
          >
            <i aria-hidden="true" />
            <span className={css.name}>
              <em>{sheetNumber(key)}</em> {say.sheets[key]}
            </span>
            <span className={css.owes}>
              {stops && <StopSign size={9} />}
              {figure !== null && <Figure path={path}>{figure}</Figure>} <span>{text}</span>
            </span>
          </a>
        );
      })}
    </nav>
  );
};
