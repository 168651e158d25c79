import { useEffect } from 'react';
import { useHost } from './session';

/** Where typed characters are the person's own. */
export const TYPING =
  'input:not([type=radio], [type=checkbox]), textarea, select, [contenteditable], [role=grid], [role=spinbutton], dialog';

/**
 * Single keys, as on the sheet: `{ '1': … }`. Not while something is being typed, nor with a modifier, nor where the
 * person has switched them off (WCAG 2.1.4).
 */
export const useShortcuts = (keys: Readonly<Record<string, () => void>>): void => {
  const host = useHost();
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
      if (!host.look().keys || (event.target instanceof Element && event.target.closest(TYPING))) return;
      const run = keys[event.key.length === 1 ? event.key.toLowerCase() : event.key];
      if (!run) return;
      event.preventDefault();
      run();
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  }, [host, keys]);
};
