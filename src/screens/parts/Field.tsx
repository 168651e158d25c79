import type { ReactNode } from 'react';
import css from './parts.module.css';

/** A label and what is known, on a rule. */
export const Field = ({ label, children }: { readonly label: ReactNode; readonly children: ReactNode }) => (
  <div className={css.field}>
    <span>{label}</span>
    <span className={css.value}>{children}</span>
  </div>
);
