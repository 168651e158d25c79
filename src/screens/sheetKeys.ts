/** The five sheets in the order the job is done; any may be gone to at any time. */
export const SHEET_KEYS = ['survey', 'layout', 'check', 'price', 'closeout'] as const;
export type SheetKey = (typeof SHEET_KEYS)[number];

export const sheetNumber = (key: SheetKey): number => SHEET_KEYS.indexOf(key) + 1;
