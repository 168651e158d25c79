import type { ReactNode } from 'react';
import { useStale } from '../selected';
import css from './parts.module.css';

/** From so many letters on it is a sentence, which may break into lines; a figure may not. */
const SENTENCE = 30;

/** A figure of the result, with its path there. A figure from before the last edit is set pale. */
export const Figure = ({ path, children }: { readonly path: string; readonly children: ReactNode }) => {
  const stale = useStale();
  const kind = typeof children === 'string' && children.length >= SENTENCE ? css.sentence : css.figure;
  return (
    <span className={stale ? `${kind} ${css.stale}` : kind} data-figure={path} data-stale={stale || undefined}>
      {children}
    </span>
  );
};
