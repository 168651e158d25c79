import { useEffect } from 'react';
import { TYPING } from './shortcuts';

/** Ctrl or ⌘ with Z, and with Shift Z or Y; what is typed in a field has its own undo. */
export const useUndoKeys = (undo: () => void, redo: () => void): void => {
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || event.defaultPrevented) return;
      if (event.target instanceof Element && event.target.closest(TYPING)) return;
      const key = event.key.toLowerCase();
      const run = key === 'y' || (key === 'z' && event.shiftKey) ? redo : key === 'z' ? undo : null;
      if (!run) return;
      event.preventDefault();
      run();
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  }, [undo, redo]);
};
