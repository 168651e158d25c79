import type { Source } from './source';

/** Where a duty or a danger is stated; `standing` as of every other figure. */
const outside = (document: string, section: string, standing: Source['standing']): Source => ({
  document,
  edition: '',
  section,
  standing,
});

/** Sources of the cautions: two or more public pages for OSHA and the lead rule, one for the alarms, none for asbestos. */
export const SAFETY_SOURCES = {
  dead: outside('OSHA', '29 CFR 1910.333(a)(1), (b); 1910.147', 'confirmed'),
  arcFlash: outside('NFPA', 'NFPA 70E', 'confirmed'),
  lead: outside('EPA', '40 CFR 745, subpart E', 'confirmed'),
  asbestos: outside('', '', 'memory'),
  alarms: outside('IRC', 'IRC R314, R315', 'one source'),
  engineered: outside('IRC', 'IRC R502.8.2', 'confirmed'),
  practice: outside('', '', 'memory'),
} as const;

/** Paint of houses built before this year may hold lead; the federal rule begins at more than so much painted surface a room, sq ft. */
export const LEAD_PAINT_BEFORE = 1978;
export const LEAD_AREA_FT2 = 6;
/** Backer boards, duct wrap and tape of houses built before this may hold asbestos (from memory). */
export const ASBESTOS_BEFORE = 1981;

/** Old cable that is not handled live or bent: stop and assess. */
export const STOP_AND_ASSESS: readonly string[] = ['brittle', 'cloth', 'damaged', 'overheated'];
/** Joists that are not cut or bored without the maker’s chart or an engineer. */
export const ENGINEERED: readonly string[] = ['I-joist', 'open-web truss', 'LVL'];
