import type { Place } from './selection';

/** What a key does in the grid while no cell is being typed into. */
export type KeyDeed =
  | { readonly deed: 'go'; readonly to: Place; readonly extend: boolean }
  | { readonly deed: 'type'; readonly text: string | null }
  | { readonly deed: 'clear' | 'fill' | 'select all' | 'shrink' };

interface Key {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
}
export interface Extent {
  readonly rows: number;
  readonly columns: number;
  /** Rows that a page key moves. */
  readonly page: number;
}
const within = (n: number, most: number): number => Math.max(0, Math.min(most, n));

/** Null where the key is not the grid's: Tab past either end of a row leaves it, so that no keyboard is caught in it. */
export const keyDeed = (key: Key, at: Place, size: Extent): KeyDeed | null => {
  const command = key.ctrlKey || key.metaKey;
  const last = { row: size.rows - 1, column: size.columns - 1 };
  const go = (row: number, column: number, extend = key.shiftKey): KeyDeed => ({
    deed: 'go',
    to: { row: within(row, last.row), column: within(column, last.column) },
    extend,
  });
  if (key.altKey) return null;
  switch (key.key) {
    case 'ArrowUp':
      return go(command ? 0 : at.row - 1, at.column);
    case 'ArrowDown':
      return go(command ? last.row : at.row + 1, at.column);
    case 'ArrowLeft':
      return go(at.row, command ? 0 : at.column - 1);
    case 'ArrowRight':
      return go(at.row, command ? last.column : at.column + 1);
    case 'Home':
      return go(command ? 0 : at.row, 0);
    case 'End':
      return go(command ? last.row : at.row, last.column);
    case 'PageUp':
      return go(at.row - size.page, at.column);
    case 'PageDown':
      return go(at.row + size.page, at.column);
    case 'Tab': {
      const column = at.column + (key.shiftKey ? -1 : 1);
      return column < 0 || column > last.column ? null : go(at.row, column, false);
    }
    case 'Enter':
    case 'F2':
      return { deed: 'type', text: null };
    case 'Escape':
      return { deed: 'shrink' };
    case 'Delete':
    case 'Backspace':
      return { deed: 'clear' };
  }
  if (command && key.key.toLowerCase() === 'd') return { deed: 'fill' };
  if (command && key.key.toLowerCase() === 'a') return { deed: 'select all' };
  return !command && key.key.length === 1 ? { deed: 'type', text: key.key } : null;
};
