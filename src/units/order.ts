/** The one order of texts everywhere: by code unit, so that no locale changes a result. */
export const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** A new list sorted by id. */
export const byId = <T extends { readonly id: string }>(list: readonly T[]): T[] =>
  [...list].sort((a, b) => compareText(a.id, b.id));
