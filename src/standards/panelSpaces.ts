/** Breaker spaces panelboards for dwellings are sold with. Common practice, no source; the maker's list governs. */
export const PANEL_SPACES: readonly number[] = [8, 12, 16, 20, 24, 30, 32, 40, 42, 54, 60, 66];

/** The smallest panel that has at least `spaces`, among the sizes offered; beyond them the next even number, which nobody sells. */
export const panelSpacesFor = (spaces: number, offered: readonly number[] = PANEL_SPACES): number => {
  const enough = offered.filter((size) => size >= spaces);
  return enough.length > 0 ? Math.min(...enough) : Math.ceil(spaces / 2) * 2;
};
