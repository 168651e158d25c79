import type { Source } from './source';

/** Actual size of dressed lumber, in: American Softwood Lumber Standard PS 20. */
export const LUMBER: Readonly<Record<string, { readonly thicknessIn: number; readonly depthIn: number }>> = {
  '2x4': { thicknessIn: 1.5, depthIn: 3.5 },
  '2x6': { thicknessIn: 1.5, depthIn: 5.5 },
  '2x8': { thicknessIn: 1.5, depthIn: 7.25 },
  '2x10': { thicknessIn: 1.5, depthIn: 9.25 },
  '2x12': { thicknessIn: 1.5, depthIn: 11.25 },
};
export const LUMBER_SOURCE: Source = {
  document: 'American Softwood Lumber Standard',
  edition: 'PS 20',
  section: 'dressed sizes',
  standing: 'confirmed',
};

/** Joist spacing on center, in: common practice; 19.2 by one source. */
export const JOIST_SPACING_IN = { mostCommon: 16, others: [12, 19.2, 24] } as const;
