import type { Edition } from '../units/types';
import type { ByEdition, Source, Standing } from './source';

/** Short forms for the tables of section numbers. */

const NEC = 'NFPA 70 (NEC)';

/** null: that code year has no such requirement. */
export type SectionRow = ByEdition<Source | null>;

/** Sections of the four code years in order. No 2026 book was read: its numbers stay unverified, whatever is said of the others. */
export const years = (
  in2017: string | null,
  in2020: string | null,
  in2023: string | null,
  in2026: string | null,
  standing: Standing = 'confirmed',
): SectionRow => {
  const cell = (edition: Edition, section: string | null): Source | null =>
    section === null
      ? null
      : { document: NEC, edition: String(edition), section, standing: edition === 2026 ? 'unverified' : standing };
  return { 2017: cell(2017, in2017), 2020: cell(2020, in2020), 2023: cell(2023, in2023), 2026: cell(2026, in2026) };
};
export const always = (section: string, standing: Standing = 'confirmed'): SectionRow =>
  years(section, section, section, section, standing);

/** A requirement or duty outside the NEC, the same whatever the code year. */
export const outside = (document: string, section: string, standing: Standing): SectionRow => {
  const cell: Source = { document, edition: '', section, standing };
  return { 2017: cell, 2020: cell, 2023: cell, 2026: cell };
};

/** Article 300 and parts of 312 were renumbered in 2026 and the new numbers are not public. */
export const ARTICLE_300 = 'Article 300 (renumbered; see adopted text)';
export const ARTICLE_312 = 'Article 312 (renumbered; see adopted text)';
