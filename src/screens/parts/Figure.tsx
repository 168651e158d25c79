import type { ReactNode } from 'react';
import { useStale } from '../selected';
import css from './parts.module.css';

/** A figure of the result, with its path there. A figure from before the last edit is set pale. */
export const Figure = ({ path, children }: { readonly path: string; readonly children: ReactNode }) => {
  const stale = useStale();
  return (
    <span
      className={stale ? `${css.figure} ${css.stale}` : css.figure}
      data-figure={path}
      data-stale={stale || undefined}
    >
      {children}
    </span>
  );
};
