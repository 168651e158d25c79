import type { In } from '../../units/types';
import { lengthParts } from './lengthParts';
import css from './parts.module.css';

/** 10′-6½″ with a real small fraction. */
export const Length = ({ inches, denominator = 16 }: { readonly inches: In; readonly denominator?: number }) => {
  const { whole, top, bottom } = lengthParts(inches, denominator);
  return (
    <span className={css.length}>
      {whole}
      {top !== null && (
        <>
          {whole !== '' && ' '}
          <span className={css.fraction}>{`${top}⁄${bottom}`}</span>
        </>
      )}
      ″
    </span>
  );
};
