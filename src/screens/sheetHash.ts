import { useSyncExternalStore } from 'react';
import { SHEET_KEYS, type SheetKey } from './sheetKeys';

/**
 * Which sheet is open stands in the address: `#price`. What follows a slash is the sheet's own (`#closeout/crew`), so
 * that going back goes back there too.
 */
const read = (): string => location.hash.slice(1);
const subscribe = (tell: () => void): (() => void) => {
  addEventListener('hashchange', tell);
  return () => removeEventListener('hashchange', tell);
};

/** The sheet named in the address; null where it names none. */
export const useSheetKey = (): SheetKey | null => {
  const [name] = useSyncExternalStore(subscribe, read).split('/');
  return SHEET_KEYS.find((key) => key === name) ?? null;
};
/** The part of the address after the sheet's name; empty where there is none. */
export const useSheetPart = (): string => useSyncExternalStore(subscribe, read).split('/').slice(1).join('/');

export const sheetAddress = (key: SheetKey, part = ''): string => (part === '' ? `#${key}` : `#${key}/${part}`);
/** Opens a sheet, or a part of one. */
export const goToSheet = (key: SheetKey, part = ''): void => {
  location.hash = sheetAddress(key, part);
};
